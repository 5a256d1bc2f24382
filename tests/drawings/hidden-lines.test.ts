import { describe, expect, test } from 'vitest';
import { hiddenLines } from '../../lib/derive/drawings/hidden-lines.ts';
import { toView, VIEWS, viewFrom } from '../../lib/derive/drawings/view.ts';
import type { ViewLine } from '../../lib/derive/drawings/view-line.ts';
import type { Bore } from '../../lib/model/feature.ts';
import { placedBlock, throughRail, withPockets } from './scenes.ts';

const lengthOf = ({ from, to }: ViewLine): number => Math.hypot(to[0] - from[0], to[1] - from[1]);

/** One line in words, in whole hundredths: part, kind, place. */
function inWords({ part, kind, outline, from, to }: ViewLine): string {
  const number = (n: number): string => `${Math.round(n * 100) / 100 + 0}`;
  const look = kind === 'hidden' ? 'hidden' : outline ? 'outline' : 'inner';
  return `${part} ${look} ${from.map(number).join(' ')} - ${to.map(number).join(' ')}`;
}

describe('hiddenLines', () => {
  test('a cube in isometric shows 9 edges and hides 3, each shortened by the root of 2/3', () => {
    const lines = hiddenLines([placedBlock('cube', [1, 1, 1], [0, 0, 0])], VIEWS.isometric);
    expect(lines.filter((l) => l.kind === 'visible' && l.outline)).toHaveLength(6);
    expect(lines.filter((l) => l.kind === 'visible' && !l.outline)).toHaveLength(3);
    expect(lines.filter((l) => l.kind === 'hidden')).toHaveLength(3);
    for (const line of lines) expect(lengthOf(line)).toBeCloseTo(Math.sqrt(2 / 3), 12);
    // The far corner (0, 1, 0) lies behind the near one (1, 0, 1): right (1 + 0) / √2, up (-1 + 0 + 2) / √6.
    const middle = lines.filter((l) =>
      [l.from, l.to].some((p) => Math.hypot(p[0] - Math.SQRT1_2, p[1] - 1 / Math.sqrt(6)) < 1e-9),
    );
    expect(middle.map((l) => l.kind).sort()).toEqual(['hidden', 'hidden', 'hidden', 'visible', 'visible', 'visible']);
  });

  test('two blocks, one half behind the other, as worked out by hand', () => {
    // Seen along (0, 0.6, -0.8): right = x, up = 0.8 y + 0.6 z, toward the viewer = -0.6 y + 0.8 z.
    //
    // Near block, x 0-100, y 0-50, z 0-40. Its front (y = 0) stands from up 0 to 0.6 * 40 = 24, its top goes on to
    // 0.8 * 50 + 24 = 64. Its ends are seen edge-on and leave one line each, 0 to 64. Hidden: the lower back edge at
    // up 0.8 * 50 = 40.
    //
    // Far block, x 60-160, y 60-110, z 0-100. Front from up 0.8 * 60 = 48 to 48 + 0.6 * 100 = 108, top on to
    // 0.8 * 110 + 60 = 148. Lower back edge at up 88.
    //
    // Where both overlap, x 60-100 and up 48-64, one sees the near block's top: at up 48 it has y = (48 - 24) / 0.8 = 30
    // and depth -18 + 32 = 14, the far block's foot has depth -36. So the far block's foot is hidden from 60 to 100 and
    // its end from up 48 to 64.
    const lines = hiddenLines(
      [placedBlock('near', [100, 50, 40], [0, 0, 0]), placedBlock('far', [100, 50, 100], [60, 60, 0])],
      viewFrom([0, -0.6, 0.8]),
    );
    expect(lines.map(inWords).sort()).toEqual(
      [
        'near outline 0 0 - 100 0',
        'near inner 0 24 - 100 24',
        'near outline 0 64 - 100 64',
        'near outline 0 0 - 0 64',
        'near outline 100 0 - 100 64',
        'near hidden 0 40 - 100 40',
        'far outline 100 48 - 160 48',
        'far inner 60 108 - 160 108',
        'far outline 60 148 - 160 148',
        'far outline 60 64 - 60 148',
        'far outline 160 48 - 160 148',
        'far hidden 60 48 - 100 48',
        'far hidden 60 48 - 60 64',
        'far hidden 60 88 - 160 88',
      ].sort(),
    );
  });

  test('a cube behind a slab is hidden where the slab is', () => {
    // In front view the slab hides the cube below 60; the cube stands from 20 to 120 across and 0 to 100 up.
    const slab = placedBlock('slab', [300, 20, 60], [0, 0, 0]);
    const cube = placedBlock('cube', [100, 100, 100], [20, 50, 0]);
    const of = (part: string, solids: (typeof slab)[]): string[] =>
      hiddenLines(solids, VIEWS.front)
        .filter((l) => l.part === part)
        .map(inWords)
        .sort();
    expect(of('cube', [slab, cube])).toEqual([
      'cube hidden 120 0 - 120 60',
      'cube hidden 20 0 - 20 60',
      'cube outline 120 60 - 120 100',
      'cube outline 20 100 - 120 100',
      'cube outline 20 60 - 20 100',
    ]);
    // Its foot lies behind the lower edge of the slab: one line on paper, drawn as the slab's.
    expect(of('slab', [slab, cube])).toContain('slab outline 0 0 - 300 0');
    expect(of('cube', [cube])).toHaveLength(4);
  });

  test('a higher slab hides the cube wholly, and hidden lines can be left out', () => {
    const solids = [
      placedBlock('cube', [100, 100, 100], [20, 50, 0]),
      placedBlock('slab', [300, 20, 160], [0, 0, -20]),
    ];
    const lines = hiddenLines(solids, VIEWS.front);
    expect(lines.filter((l) => l.part === 'cube').map((l) => l.kind)).toEqual(['hidden', 'hidden', 'hidden', 'hidden']);
    expect(hiddenLines(solids, VIEWS.front, { hidden: false })).toEqual(lines.filter((l) => l.kind === 'visible'));
  });

  test('where two parts stand flush the joint between them shows, and what lies behind it does not', () => {
    // An edge of the third block runs exactly behind the joint: nothing shines through, the line is there once.
    const solids = [
      placedBlock('left', [100, 20, 50], [0, 0, 0]),
      placedBlock('right', [100, 20, 50], [100, 0, 0]),
      placedBlock('behind', [60, 20, 30], [100, 40, 10]),
    ];
    const upright = hiddenLines(solids, VIEWS.front).filter(
      (l) => Math.abs(l.from[0] - 100) < 1e-9 && l.from[0] === l.to[0],
    );
    expect(upright.map(inWords)).toEqual(['left outline 100 0 - 100 50']);
  });

  test('the wall of a square hole has corners, though it is one surface', () => {
    // Mouth on x = 0, y 8-32, z 95-145, 20 deep. Seen from (-1, -0.6, 0.5) the lowest far corner runs from (0, 32, 95) to
    // (20, 32, 95). A ray from its inner end leaves the mouth at y = 32 - 12 = 20 and z = 95 + 10 = 105: it is open.
    const view = viewFrom([-1, -0.6, 0.5]);
    const [post] = throughRail();
    const ends = ([0, 20] as const).map((x) => toView(view, [x, 32, 95]));
    const corner = hiddenLines([post!], view, { hidden: false }).filter((line) =>
      ends.every(([x, y]) => [line.from, line.to].some((p) => Math.hypot(p[0] - x, p[1] - y) < 1e-9)),
    );
    expect(corner.map((l) => l.outline)).toEqual([false]);
  });

  test('repeats itself to the last bit, without a negative zero', () => {
    const once = hiddenLines(throughRail(), VIEWS.isometric);
    expect(hiddenLines(throughRail(), VIEWS.isometric)).toStrictEqual(once);
    expect(once.flatMap((l) => [...l.from, ...l.to]).filter((n) => Object.is(n, -0))).toEqual([]);
  });

  test('sees a pocket that was cut after the first view', () => {
    const [post] = throughRail();
    const before = hiddenLines([post!], VIEWS.isometric).length;
    const bore: Bore = {
      kind: 'bore',
      id: 'bore',
      at: [30, 0, 40],
      into: [0, 1, 0],
      diameter: 10,
      depth: 5,
      purpose: 'pilot',
    };
    withPockets(post!.solid, [bore]);
    expect(hiddenLines([post!], VIEWS.isometric).length).toBeGreaterThan(before);
  });

  test('takes no solids at all, and refuses one that is open', () => {
    expect(hiddenLines([], VIEWS.plan)).toEqual([]);
    const open = placedBlock('box', [1, 1, 1], [0, 0, 0]);
    open.solid.faces.pop();
    expect(() => hiddenLines([open], VIEWS.plan)).toThrow('has no face beyond it');
  });
});
