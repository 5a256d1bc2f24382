import { describe, expect, it } from 'vitest';
import { defectPatches } from '../../lib/derive/drawings/strip-plan-boards.ts';
import { stripPlanDrawing } from '../../lib/derive/drawings/strip-plan-drawing.ts';
import type { BoardPlace, StripPlace, StripPlan } from '../../lib/derive/lumber/strip-plan/strip-plan.ts';
import type { StripProblem } from '../../lib/derive/lumber/strip-plan/strip-problem.ts';
import { STRIP_SETTINGS } from '../../lib/derive/lumber/strip-plan/strip-settings.ts';
import { boundsOf } from '../../lib/drawing/bounds.ts';
import { flatten } from '../../lib/drawing/flatten.ts';
import type { Board } from '../../lib/model/records.ts';

const board = (mark: string, defects: Board['defects'] = []): Board => ({
  row: 1,
  mark,
  thickness: 60,
  width: 101.6,
  length: 1100,
  defects,
});

/** 100 to 150 from the reference end, 10 to 30 from the reference edge, on face A. */
const KNOT = { what: 'knot', from: 100, to: 150, near: 10, far: 30, face: 'A', depth: 5 } as const;

const boards = [board('1', [KNOT]), board('2')];
const settings = { ...STRIP_SETTINGS, strips: 2, jointing: 0.8 };
const problem: StripProblem = {
  width: 200,
  length: 1000,
  centerThickness: 50,
  edgeThickness: 25,
  boards,
  settings,
};
const place = (mark: string, more: Partial<BoardPlace> = {}): BoardPlace => ({
  mark,
  faceUp: 'A',
  barkUp: true,
  turned: false,
  startsAt: 40,
  ripOff: 0,
  shownDefects: 0,
  undersideDefects: 0,
  ...more,
});
const strip = (from: number, show: BoardPlace): StripPlace => ({
  from,
  to: from + 100,
  ripWidth: 101.6,
  thickness: 60,
  reserve: 8.4,
  show,
});

const patch = (more: Partial<BoardPlace>) =>
  defectPatches(boards[0]!, place('1', more), strip(-100, place('1', more)), problem);

// Worked by hand: the board is 101.6 wide and 1100 long, its left side lies at -100 - 0.8, the top begins 40 mm in.
describe('a defect of a board in the top', () => {
  it.each([
    ['as measured', {}, [60, 110], [-90.8, -70.8], true],
    ['turned over: from the other side, below', { faceUp: 'B' }, [60, 110], [-29.2, -9.2], false],
    ['end for end: from the other end and side', { turned: true }, [910, 960], [-29.2, -9.2], true],
    ['both', { faceUp: 'B', turned: true }, [910, 960], [-90.8, -70.8], false],
    ['ripped away from the center line', { ripOff: 5 }, [60, 110], [-95.8, -75.8], true],
  ] as const)('%s', (_, more, along, across, shows) => {
    const [found] = patch(more);
    expect(found).toMatchObject({ what: 'knot', shows });
    expect(found!.along).toEqual(along);
    expect(found!.across[0]).toBeCloseTo(across[0], 9);
    expect(found!.across[1]).toBeCloseTo(across[1], 9);
  });

  it('is left out where it is cut away, and cut to the strip where it is half cut away', () => {
    expect(patch({ startsAt: 200 })).toEqual([]);
    expect(patch({ startsAt: 120 })[0]!.along).toEqual([0, 30]);
  });
});

describe('the drawing of a strip plan', () => {
  const plan = {
    strips: [strip(-100, place('1')), strip(0, place('2', { barkUp: false, ripOff: 12.3 }))],
    reserve: 8.4,
    value: 1,
    unused: [],
  } as unknown as StripPlan;
  const heading = {
    title: 'Bench',
    revision: 'A',
    date: '2026-11-25',
    units: 'mm',
    bound: 'best possible',
    redraw: 'top.strips=100 mm, 100 mm',
  } as const;
  const drawing = stripPlanDrawing(plan, problem, { ...heading, warning: 'made in spite' });
  const texts = flatten(drawing).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

  it('says how good it is, which board goes where, what it has to spare, and what must not be overlooked', () => {
    expect(texts).toContain('least thickness to spare over the wedge 8.4 mm; best possible');
    expect(texts).toContain('1: board 1, A up, rip to 101.6 mm, top begins at 40 mm');
    expect(texts).toContain('board 1: nothing to rip off');
    expect(texts).toContain('board 2: rip 12.3 mm off the far edge');
    expect(texts).toContain('made in spite');
    expect(texts.filter((text) => text === '8.4 mm')).toHaveLength(2);
  });

  it('lies with the left edge up and the section below the plan', () => {
    const { min, max } = boundsOf(flatten(drawing), drawing.style.scale)!;
    expect(max[0]).toBeGreaterThanOrEqual(1000);
    expect(max[1]).toBeGreaterThan(100);
    expect(min[1]).toBeLessThan(-100 - 2 * 60);
  });
});
