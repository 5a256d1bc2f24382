import { describe, expect, it } from 'vitest';
import { stripPlanTable } from '../../lib/build/strip-plan-table.ts';
import { ripSide } from '../../lib/derive/lumber/rip-side.ts';
import { faceUp } from '../../lib/derive/lumber/strip-plan/faces.ts';
import { lyingOf } from '../../lib/derive/lumber/strip-plan/lying.ts';
import type { StripPlace, StripPlan } from '../../lib/derive/lumber/strip-plan/strip-plan.ts';
import type { Board } from '../../lib/model/records.ts';

/** A flaw along the reference edge, 1 mm to 3 mm from it, and one along the far edge, through the board. */
const WIDTH = 120;
const flaw = { what: 'flaw', from: 0, to: 1000, face: 'through', depth: 40 } as const;
const board: Board = {
  row: 1,
  mark: '1',
  thickness: 40,
  width: WIDTH,
  length: 1000,
  bark: 'B',
  defects: [
    { ...flaw, near: 1, far: 3 },
    { ...flaw, near: WIDTH - 3, far: WIDTH - 1 },
  ],
};

/**
 * What is left of the flaws, reference edge first, in a strip of 80 mm: by where the search puts them from the left edge, of
 * which `cut` mm are ripped away.
 */
const left = (flip: 0 | 1, turned: boolean, cut: number): boolean[] => {
  const { near, far } = lyingOf(board, WIDTH, 0, flip, turned);
  return [0, 1].map((k) => far[k]! > cut && near[k]! < cut + 80);
};

const STRIPS = [
  { where: 'left of the center line', from: -200, to: -120, cut: 40 },
  { where: 'up to the center line', from: -80, to: 0, cut: 40 },
  { where: 'from the center line on', from: 0, to: 80, cut: 0 },
  { where: 'over the center line', from: -50, to: 30, cut: 20 },
] as const;

describe('the edge that is ripped off', () => {
  for (const { where, from, to, cut } of STRIPS) {
    it.each([
      [0, false],
      [0, true],
      [1, false],
      [1, true],
    ] as const)(`${where}: bark down is %i, turned is %s`, (flip, turned) => {
      const side = ripSide({ faceUp: faceUp(board, flip), turned }, { from, to });
      const [atReference, atFar] = left(flip, turned, cut);
      expect(side).toBe(!atReference && !atFar ? 'each' : atFar ? 'reference' : 'far');
    });
  }
});

describe('the strip plan table', () => {
  const place = {
    faceUp: 'A',
    barkUp: true,
    turned: false,
    startsAt: 10,
    shownDefects: 0,
    undersideDefects: 0,
  } as const;
  const strip = (
    from: number,
    to: number,
    show: Partial<StripPlace['show']>,
    bottom?: Partial<StripPlace['show']>,
  ) => ({
    ...{ from, to, ripWidth: to - from + 2, thickness: 50, reserve: 4 },
    show: { ...place, mark: '1', ripOff: 0, ...show },
    ...(bottom ? { bottom: { ...place, mark: '9', ripOff: 0, ...bottom } } : {}),
  });
  const plan = {
    strips: [
      strip(-150, -50, { ripOff: 30 }, { ripOff: 12.5, turned: true }),
      strip(-50, 50, { ripOff: 8 }),
      strip(50, 150, { ripOff: 20, faceUp: 'B' }),
      strip(150, 250, {}),
    ],
  } as unknown as StripPlan;
  const { columns, rows } = stripPlanTable(plan, 'mm');
  const cells = (head: string): (string | undefined)[] =>
    rows.map((row) => row[columns.findIndex((column) => column.head === head)]);

  it('says how much comes off a board and off which edge, of the board below, too', () => {
    expect(cells('rip (mm)')).toEqual(['30', '8', '20', '0']);
    expect(cells('off')).toEqual(['off the reference edge', 'half off each edge', 'off the reference edge', '']);
    expect(cells('rip it (mm)')).toEqual(['12.5', '', '', '']);
    expect(cells('off it')).toEqual(['off the far edge', '', '', '']);
    for (const row of rows) expect(row).toHaveLength(columns.length);
  });
});
