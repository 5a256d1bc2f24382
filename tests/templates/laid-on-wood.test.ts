import { describe, expect, it } from 'vitest';
import { solidOf } from '../../lib/derive/solids/solid-of.ts';
import { templateDrawing } from '../../lib/derive/templates/template.ts';
import { templateFace } from '../../lib/derive/templates/template-face.ts';
import type { Frame } from '../../lib/geometry/frame.ts';
import type { Surface } from '../../lib/geometry/surface.ts';
import type { PrismBody } from '../../lib/model/body.ts';
import type { Part } from '../../lib/model/part.ts';
import { bearer } from '../../lib/parts/bearer.ts';
import { post } from '../../lib/parts/post.ts';
import { writeDxf } from '../../lib/writers/dxf.ts';
import { dimensionsOf, parseDxf } from '../readers/dxf-parse.ts';
import { readStl } from '../readers/stl.ts';
import { written } from '../written.ts';
import type { Vec } from './cases.ts';
import { inTable, type LaidSheet, lay } from './laid.ts';
import { type Corner, outlineOf, upperEdge } from './outline-in-file.ts';

const HEADING = { title: 'Trial piece', revision: 'A', date: '2026-11-25', units: 'mm' } as const;

/** Slopes along the table of the two planes, and across it; the ridge runs over y = 0 at x = 425. */
interface Slopes {
  readonly along: readonly [left: number, right: number];
  readonly across: readonly [left: number, right: number];
}

const underside = ({ along: [p, q], across: [r, s] }: Slopes): Surface => ({
  take: 'highest',
  planes: [
    { name: 'left', a: p, b: r, c: 700 - 425 * p },
    { name: 'right', a: q, b: -s, c: 700 - 425 * q },
  ],
});

/** No template turned over fits these: the ridge is off the middle of the pieces, and the two slopes differ. */
const UNEVEN: Slopes = { along: [0, 0], across: [0.03, 0.08] };
const COMPOUND: Slopes = { along: [0.02, -0.05], across: [0.03, 0.08] };
const SLANTING: Slopes = { along: [0.05, 0.05], across: [0.04, 0.04] };

/** Where a level piece stands in frame A, which one looks at along the table, and in frame B, turned half round. */
const FRAME_A: Frame = { origin: [400, -170, 600], x: [0, 1, 0], y: [0, 0, 1] };
const FRAME_B: Frame = { origin: [400, 250, 600], x: [0, -1, 0], y: [0, 0, 1] };

const RELIEF = { width: 20, depth: 1 };

const level = (frame: Frame, slopes: Slopes): Part =>
  bearer({
    id: 'trial',
    mark: 'X1',
    wood: 'cherry',
    length: 420,
    thickness: 50,
    fit: { underside: underside(slopes), frame, relief: RELIEF },
    endRound: 20,
  });

interface Drawn {
  readonly part: Part;
  readonly frame: Frame;
  readonly dxf: string;
  readonly sheet: LaidSheet;
}

function drawn(part: Part, frame: Frame): Drawn {
  const body = part.body as PrismBody;
  const dxf = writeDxf(templateDrawing(templateFace({ part, body, frame }, HEADING.units), HEADING));
  return { part, frame, dxf, sheet: lay(frame, body.outline) };
}

/** Corners of the solid on one of its two faces as they are seen on the sheet. */
function facePoints({ part, frame, sheet }: Drawn, z: number): (readonly [number, number])[] {
  const points = solidOf(part).solid.vertices.filter((p) => Math.abs(p[2] - z) < 1e-9);
  return points.map((p) => sheet.onSheet(inTable(frame, p)));
}

/** The largest distance from a corner of an outline to the nearest of some points, mm. */
const strayed = (outline: readonly Corner[], points: readonly (readonly [number, number])[]): number =>
  Math.max(...outline.map(([x, y]) => Math.min(...points.map((p) => Math.hypot(p[0] - x, p[1] - y)))));

const mirrored = (outline: readonly Corner[]): Corner[] => {
  const right = Math.max(...outline.map((p) => p[0]));
  return outline.map(([x, y, bulge]) => [right - x, y, -bulge]);
};

describe('a template laid on the reference face of its piece', () => {
  const pieces = [
    ['a bearer in frame A', drawn(level(FRAME_A, UNEVEN), FRAME_A)],
    ['a bearer in frame B', drawn(level(FRAME_B, UNEVEN), FRAME_B)],
    ['a bearer under a compound slope', drawn(level(FRAME_A, COMPOUND), FRAME_A)],
  ] as const;

  it.each(pieces)('%s: coincides with the face of the solid, and turned over it does not', (_, piece) => {
    const outline = outlineOf(piece.dxf);
    const face = facePoints(piece, 0);
    expect(strayed(outline, face)).toBeLessThan(1e-5);
    expect(strayed(mirrored(outline), face)).toBeGreaterThan(1);
  });

  it('follows the underside of an uneven wedge to 0.01 mm, left as left and right as right', () => {
    for (const [name, piece] of pieces) {
      const outline = outlineOf(piece.dxf);
      const { along, across } = name.includes('compound') ? COMPOUND : UNEVEN;
      const off = Array.from({ length: 43 }, (_, k) => {
        const [x, y, z] = piece.sheet.onTable(10 * k, upperEdge(outline, 10 * k));
        // The ridge wanders by up to 16 mm under a compound slope; the relief takes 10 mm on each side of it.
        if (Math.abs(y) < 30) return 0;
        return Math.abs(z - (700 + (x - 425) * along[y > 0 ? 0 : 1] + Math.abs(y) * across[y > 0 ? 0 : 1]));
      });
      expect(Math.max(...off), name).toBeLessThan(0.01);
    }
  });

  it('says where a ridge off the middle is: 250 mm from the left in frame A, 170 in frame B', () => {
    // Frame A is seen from y = 250 on the left to y = -170, frame B from y = -170 to y = 250.
    const across = ({ dxf }: Drawn): number[] =>
      dimensionsOf(parseDxf(dxf))
        .filter((dim) => (dim.dimensionType & 7) === 0 && (dim.angle ?? 0) === 0)
        .map((dim) => Math.round(dim.actualMeasurement * 1000) / 1000);
    expect(across(pieces[0][1])).toEqual([250, 420]);
    expect(across(pieces[1][1])).toEqual([170, 420]);
  });

  it('coincides with the STL file of every part of a build that it stands for', async () => {
    const build = await written('meeting-table', {}, ['model', 'stl', 'dxf']);
    const { parts, places } = build.json('model.json').assembly;
    for (const [id, template] of [
      ['frame-a/post-1', 'p1-frame-a-post-1'],
      ['frame-a/post-2', 'p2-frame-a-post-2'],
      ['frame-b/post-1', 'p1-frame-a-post-1'],
      ['frame-b/post-2', 'p2-frame-a-post-2'],
      ['frame-b/upper-rail', 'u1-frame-a-upper-rail'],
    ] as const) {
      const part = parts.find((p: { id: string }) => p.id === id);
      const { frame } = places.find((p: { part: string }) => p.part === id);
      const name = `${part.mark}-${id.replaceAll('/', '-')}`.toLowerCase();
      const sheet = lay(frame, part.body.outline);
      const near = readStl(build.bytes(`solids/${name}-mm.stl`))
        .flat()
        .filter((p) => Math.abs(p[2]) < 0.01)
        .map((p) => sheet.onSheet(inTable(frame, p as Vec)));
      const outline = outlineOf(build.text(`templates/${template}.dxf`));
      // The STL writer draws corners to a grid of 0.01 mm.
      expect(strayed(outline, near), id).toBeLessThan(0.02);
      if (part.kind === 'post') expect(strayed(mirrored(outline), near), id).toBeGreaterThan(1);
    }
  });
});

describe('a piece under a slope along the table', () => {
  const piece = drawn(level(FRAME_A, COMPOUND), FRAME_A);

  it('shows the outline of its far face, where the solid has it', () => {
    const far = outlineOf(piece.dxf, 'HIDDEN');
    expect(strayed(far, facePoints(piece, 50))).toBeLessThan(1e-5);
    expect(strayed(far, facePoints(piece, 0))).toBeGreaterThan(0.9);
  });

  /** The tilt of a plane z = a·x + b·y against a blade square to the face, whose normal is the x axis. */
  const tiltOf = (a: number, b: number): number => Math.asin(Math.abs(a) / Math.hypot(a, b, 1));
  const tilt = (a: number, b: number): string => `${Number(((tiltOf(a, b) * 180) / Math.PI).toFixed(2))} deg`;
  /** The same over 50 mm, as a tangent. */
  const over = (a: number, b: number): string => `${Number((50 * Math.tan(tiltOf(a, b))).toFixed(1))} mm`;

  it('says the bevel of each slope, from the left of the sheet', () => {
    // One who looks along the table has the side of positive y on the left.
    const [first, second] = [tilt(0.02, 0.03), tilt(-0.05, -0.08)];
    expect([first, second]).toEqual(['1.15 deg', '2.85 deg']);
    const [higher, lower] = [`far face ${over(0.02, 0.03)} higher`, `far face ${over(-0.05, -0.08)} lower`];
    const words = `from left to right: ${first}, ${higher}; ${second}, ${lower}`;
    expect(piece.dxf).toContain(`bevel of the scribed edge, ${words}`);
  });

  it('says one bevel where both slopes have the same, and the other way round in frame B', () => {
    const even = (frame: Frame): string => drawn(level(frame, SLANTING), frame).dxf;
    expect(even(FRAME_A)).toContain(
      `bevel of the scribed edge: ${tilt(0.05, 0.04)}, far face ${over(0.05, 0.04)} higher`,
    );
    expect(even(FRAME_B)).toContain(
      `bevel of the scribed edge: ${tilt(0.05, 0.04)}, far face ${over(0.05, 0.04)} lower`,
    );
  });

  it('has no bevel where the underside is level along the table', () => {
    const { dxf } = drawn(level(FRAME_A, UNEVEN), FRAME_A);
    expect(dxf).not.toContain('bevel');
    expect(parseDxf(dxf).entities.some((e) => e.layer === 'HIDDEN')).toBe(false);
  });

  it('measures both slopes, and the V between them', () => {
    const degrees = dimensionsOf(parseDxf(piece.dxf))
      .filter((dim) => (dim.dimensionType & 7) === 2)
      .map((dim) => (dim.actualMeasurement * 180) / Math.PI)
      .sort((a, b) => a - b);
    const [low, high] = [0.03, 0.08].map((slope) => (Math.atan(slope) * 180) / Math.PI) as [number, number];
    expect(degrees).toHaveLength(3);
    [low, high, 180 - low - high].forEach((value, i) => {
      expect(degrees[i]).toBeCloseTo(value, 6);
    });
  });
});

describe('a post under a slope along the table', () => {
  const frame: Frame = { origin: [400, 60, 6], x: [0, 0, 1], y: [0, -1, 0] };
  const part = post({
    id: 'post',
    mark: 'X2',
    wood: 'cherry',
    width: 80,
    thickness: 60,
    top: { underside: underside(SLANTING), frame },
  });
  const piece = drawn(part, frame);

  it('coincides with the two faces of the solid', () => {
    expect(strayed(outlineOf(piece.dxf), facePoints(piece, 0))).toBeLessThan(1e-5);
    expect(strayed(outlineOf(piece.dxf, 'HIDDEN'), facePoints(piece, 60))).toBeLessThan(1e-5);
    expect(piece.dxf).toContain('bevel of the scribed edge');
  });
});
