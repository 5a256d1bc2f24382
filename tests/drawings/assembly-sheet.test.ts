import { describe, expect, test } from 'vitest';
import { cutList } from '../../lib/derive/cut-list/cut-list.ts';
import { type ExplodedView, explodedView, UNSHORTENED } from '../../lib/derive/drawings/exploded-view.ts';
import { assemblySheet } from '../../lib/derive/drawings/sheets/assembly.ts';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import type { Circle, Mark, Poly, Pt, Text, Vertex } from '../../lib/drawing/entity.ts';
import { flatten } from '../../lib/drawing/flatten.ts';
import { add, scale, sub, type Vec3 } from '../../lib/geometry/vec.ts';
import { visibleParts } from '../../lib/model/assembly.ts';
import { writeDxf } from '../../lib/writers/dxf.ts';
import { auditDxfs } from '../readers/dxf-audit.ts';
import { collisions } from './collisions.ts';
import { sheetsBy } from './one-sheet.ts';
import { rayCaster } from './ray-caster.ts';
import { type DesignName, jobOf, NAMES } from './sheet-jobs.ts';

const made = new Map<DesignName, Drawing>();

function drawingOf(name: DesignName): Drawing {
  const drawing = made.get(name) ?? sheetsBy(assemblySheet, jobOf(name))[0]!.drawing;
  made.set(name, drawing);
  return drawing;
}

interface Balloon {
  readonly mark: string;
  readonly circle: Circle;
  readonly leader: readonly [Pt, Pt];
}

const apart = (p: Vertex, q: Vertex): number => Math.hypot(p[0] - q[0], p[1] - q[1]);

/** Circles of a sheet with the lettering in their middle and the line that starts on them. */
function balloonsOn(drawing: Drawing): Balloon[] {
  const marks = flatten(drawing);
  const circles = marks.filter((m): m is Circle => m.kind === 'circle' && m.layer.name === 'DIMENSION');
  return circles.map((circle) => {
    const { center, radius } = circle;
    const text = marks.find((m): m is Text => m.kind === 'text' && apart(m.at, center) < 1e-6);
    const line = marks.find(
      (m): m is Poly =>
        m.kind === 'poly' && m.points.length === 2 && Math.abs(apart(m.points[0]!, center) - radius) < 1e-6,
    );
    const [a, b] = line!.points;
    return {
      mark: text?.text ?? '',
      circle,
      leader: [
        [a![0], a![1]],
        [b![0], b![1]],
      ],
    };
  });
}

/** From the view to where it stands on the sheet: wide lines of both have the same lower left corner. */
function shiftOf(drawing: Drawing, { lines }: ExplodedView): Pt {
  const corner = (points: readonly Vertex[]): Pt => [
    Math.min(...points.map((p) => p[0])),
    Math.min(...points.map((p) => p[1])),
  ];
  const outline = (m: Mark): m is Poly => m.kind === 'poly' && m.layer.name === 'OUTLINE';
  const on = corner(
    flatten(drawing)
      .filter(outline)
      .flatMap(({ points }) => points),
  );
  const off = corner(lines.filter((l) => l.outline).flatMap(({ from, to }) => [from, to]));
  return [on[0] - off[0], on[1] - off[1]];
}

/** The part that one sees at a place of the view, by casting a ray at every triangle. */
function seenAt({ solids, view }: ExplodedView): (p: Pt) => string | undefined {
  const cast = rayCaster(solids);
  const { right, up, toward } = view;
  return ([x, y]) => {
    const flat = add(scale(right, x / UNSHORTENED), scale(up, y / UNSHORTENED));
    const from: Vec3 = add(flat, scale(toward, 1e4));
    return cast(from, sub([0, 0, 0], toward))?.part;
  };
}

/** Balloons whose leader does not end on the piece of their mark. */
function astray(name: DesignName, balloons: readonly Balloon[]): string[] {
  const { assembly, shapes } = jobOf(name);
  const view = explodedView(assembly, shapes);
  const [dx, dy] = shiftOf(drawingOf(name), view);
  const seen = seenAt(view);
  return balloons
    .filter(({ mark, leader: [, [x, y]] }) => {
      const part = assembly.parts.find((one) => one.mark === mark);
      return seen([x - dx, y - dy]) !== part?.id;
    })
    .map(({ mark }) => mark);
}

const cross = ([a, b]: readonly [Pt, Pt], [c, d]: readonly [Pt, Pt]): boolean => {
  const side = (p: Pt, q: Pt, r: Pt): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
};

describe.each(NAMES)('assembly sheet: %s', (name) => {
  const drawing = drawingOf(name);
  const balloons = balloonsOn(drawing);

  test('the mark of every piece that stands by itself is in one balloon', () => {
    const marks = visibleParts(jobOf(name).assembly)
      .filter(({ kind }) => kind !== 'looseTenon')
      .map(({ mark }) => mark);
    expect(balloons.map(({ mark }) => mark).sort()).toEqual(marks.sort());
  });

  test('every leader ends on its piece, where one sees it', () => expect(astray(name, balloons)).toEqual([]));

  test('no leader crosses another', () => {
    const crossing = balloons.flatMap((a, i) => balloons.slice(i + 1).filter((b) => cross(a.leader, b.leader)));
    expect(crossing).toEqual([]);
  });

  test('no lettering stands on another, or on a line, on small paper neither', () => {
    expect(collisions(drawing)).toEqual([]);
    for (const paper of ['A', 'A4'] as const) {
      for (const sheet of sheetsBy(assemblySheet, jobOf(name), paper)) expect(collisions(sheet.drawing)).toEqual([]);
    }
  });

  test('the key counts all pieces of the cut list, and glued panels besides', () => {
    const texts = flatten(drawing).filter((m): m is Text => m.kind === 'text');
    const head = texts.find(({ text }) => text === 'qty')!;
    const column = texts.filter(({ at, text }) => Math.abs(at[0] - head.at[0]) < 1e-6 && /^\d+$/.test(text));
    const { assembly } = jobOf(name);
    const glued = assembly.parts.filter(({ members }) => members !== undefined).length;
    const sum = column.reduce((total, { text }) => total + Number(text), 0);
    expect(sum).toBe(cutList(assembly).pieces + glued);
  });
});

test('ezdxf finds nothing to mend', ({ skip }) => {
  const reports = auditDxfs(NAMES.map((name) => writeDxf(drawingOf(name))));
  if (!reports) return skip('left out: ezdxf (python3-ezdxf of Debian) is not installed');
  expect(reports.flatMap(({ errors, fixes }) => [...errors, ...fixes])).toEqual([]);
});

test('a leader that ends beside its piece is seen, and one on the wrong piece', () => {
  const [first, second, ...rest] = balloonsOn(drawingOf('reading-table'));
  const off: Balloon = { ...first!, leader: [first!.leader[0], [-1e5, -1e5]] };
  const swapped: Balloon = { ...second!, leader: rest[0]!.leader };
  expect(astray('reading-table', [off, swapped, ...rest])).toEqual([off.mark, swapped.mark]);
});
