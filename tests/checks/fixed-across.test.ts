import { describe, expect, it } from 'vitest';
import type { CheckContext } from '../../lib/derive/checks/check.ts';
import { fixedAcross } from '../../lib/derive/checks/fixed-across.ts';
import { seasons } from '../../lib/derive/checks/seasons.ts';
import { slotTravel } from '../../lib/derive/checks/slot-travel.ts';
import { looseTenonJoint } from '../../lib/joints/loose-tenon-joint.ts';
import { composition } from '../../lib/model/composition.ts';
import { board } from '../../lib/parts/board.ts';
import { inchesInText } from '../lists/marks-in-text.ts';
import type { Changes } from '../written.ts';
import { handContext, words } from './contexts.ts';
import { flat } from './trial-pieces.ts';
import { at, refitted, tried } from './tried.ts';

/** The table with round holes instead of slots for some of its screws. */
function held(
  ids: readonly string[],
  changes: Changes = {},
  name: 'reading-table' | 'meeting-table' = 'reading-table',
): CheckContext {
  const context = tried(name, changes);
  const fixings = context.assembly.fixings.map((f) => (ids.includes(f.id) ? { ...f, hold: 'fixed' as const } : f));
  return { ...context, assembly: { ...context.assembly, fixings } };
}

const BOTH_ENDS = ['frame-a/fixing-1', 'frame-a/fixing-5'];
/** So much that the top dries by 4 % after it is fixed. */
const BY_FOUR = { 'moisture.fitting': '9 %', 'moisture.high': '11 %' };

describe('fixed across the grain', () => {
  it('is content when one screw holds and the others travel', () => {
    expect(fixedAcross.run(tried('reading-table')).map(words)).toMatchInlineSnapshot(`
      [
        "ok | no piece is held at two places across its grain: all can move with the seasons",
      ]
    `);
  });

  it('strains cherry by 8.8 MPa at 4 %, against 3.9', () => {
    const [found] = fixedAcross.run(held(BOTH_ENDS, BY_FOUR));
    // 8.787 with a modulus of 10,300 MPa; the table of the species has 10,270.
    expect(Math.abs(found!.value! / 8.787136 - 10270 / 10300)).toBeLessThan(1e-6);
    expect(found!.limit).toBeCloseTo(3.861, 3);
    expect(found!.unconfirmed).toEqual(['elastic ratio E_T/E_L of black cherry']);
    expect(words(found!)).toMatchInlineSnapshot(
      `"change it | top T: 3 screws of bearer B1 hold it at places 26 in apart across its grain; in a dry winter (5 %) that strains it by 1271 psi, and its wood holds 560 psi across the grain: it splits | let one screw hold and the others travel: a slot for 26 in is 41/64 in long"`,
    );
  });

  it('speaks metric, of the season that moves more', () => {
    const context = held(BOTH_ENDS, {}, 'meeting-table');
    expect(fixedAcross.run(context).map(words)).toMatchInlineSnapshot(`
      [
        "change it | top T: 3 screws of upper rail U1 hold it at places 390 mm apart across its grain; in a damp summer (11 %) that strains it by 11.3 MPa, and its wood holds 5.5 MPa across the grain: it buckles, and splits when it dries again | let one screw hold and the others travel: a slot for 390 mm is 15 mm long",
      ]
    `);
  });

  it('is content again when the fix is applied, and so is slot travel', () => {
    const context = held(BOTH_ENDS);
    const [found] = fixedAcross.run(context);
    const [, length] = /slot for 26 in is (\S+) in/.exec(found!.fixes[0]!)!;
    // The first screw holds; the last one, 26 in from it, gets the slot that the fix names.
    const fixings = context.assembly.fixings
      .filter((f) => BOTH_ENDS.includes(f.id))
      .map((f, k) => (k === 0 ? f : { ...f, hold: 'slotted' as const, fromCenter: 660.4 }));
    const assembly = refitted({ ...context.assembly, fixings }, (f) =>
      f.id === 'a-fixing-5' && f.kind === 'slottedHole' && f.purpose === 'clearance'
        ? { ...f, length: 25.4 * inchesInText(length!), at: [f.at[0] + f.along[0] * 0.41, f.at[1], f.at[2]] }
        : f,
    );
    const mended = { ...context, assembly };
    expect(fixedAcross.run(mended)).toMatchObject([{ verdict: 'ok' }]);
    const [slot] = slotTravel.run(mended);
    expect(slot!.value! - slot!.limit!).toBeGreaterThan(-0.05);
  });

  it('makes the width of the top something to change', () => {
    const width = at(seasons.run(held(BOTH_ENDS)), 'seasons', 'width');
    expect(words(width)).toMatchInlineSnapshot(
      `"change it | top T: from dry winter (5 %) to damp summer (11 %) it widens 19/32 in, but screws of bearer B1 hold it at 3 places and do not let it | let one place hold and the others travel in slots"`,
    );
  });

  it('is the same for the two ends of a bearer and for both frames', () => {
    const says = (ids: readonly string[]): unknown => {
      const { value, because } = fixedAcross.run(held(ids))[0]!;
      return [value, because.replace(/B[12]/, 'B')];
    };
    expect(says(['frame-a/fixing-5'])).toEqual(says(['frame-a/fixing-1']));
    expect(says(['frame-b/fixing-5'])).toEqual(says(['frame-a/fixing-1']));
  });

  it('only looks again where the house hardly changes', () => {
    const [found] = fixedAcross.run(held(BOTH_ENDS, { 'moisture.low': '7 %', 'moisture.high': '8 %' }));
    expect(found!.verdict).toBe('look again');
    expect(found!.value).toBeLessThan(found!.limit!);
  });

  it('says what it needs of a wood whose stiffness across the grain is not printed', () => {
    expect(fixedAcross.run(held(BOTH_ENDS, { 'top.wood': 'beech' })).map(words)).toMatchInlineSnapshot(`
      [
        "not checked | not checked: needs elastic ratio E_T/E_L of American beech; top T: 3 screws of bearer B1 hold it at places 26 in apart across its grain | let one screw hold and the others travel: a slot for 26 in is 15/16 in long",
      ]
    `);
  });

  it('sees tenons glued across the end of a panel', () => {
    const c = composition('Trial');
    const panel = c.place(
      board({
        kind: 'side',
        name: 'panel',
        id: 'panel',
        mark: 'A',
        wood: 'cherry',
        length: 600,
        width: 400,
        thickness: 30,
      }),
      flat(0, 0, 0),
    );
    // Its grain runs along the end of the panel.
    const batten = c.place(
      board({
        kind: 'side',
        name: 'batten',
        id: 'batten',
        mark: 'B',
        wood: 'cherry',
        length: 400,
        width: 80,
        thickness: 30,
      }),
      { origin: [680, 0, 0], x: [0, 1, 0], y: [-1, 0, 0] },
    );
    const spot = (y: number) => ({ origin: [600, y, 15] as const, x: [1, 0, 0] as const, y: [0, 1, 0] as const });
    const joint = (ys: readonly number[]) =>
      looseTenonJoint({
        id: 'end',
        kind: 'frame',
        between: [panel, batten],
        spots: ys.map(spot),
        tenon: { thickness: 10, width: 40, depth: 25, depthPlay: 1, endPlay: 0, edges: 'round' },
        wood: 'cherry',
        mark: (n) => `N${n}`,
        glueArea: 400 * 30,
      });
    c.join(joint([60, 200, 340]));
    expect(fixedAcross.run(handContext(c.done(), 'mm')).map(words)).toMatchInlineSnapshot(`
      [
        "change it | panel A: 3 tenons of batten B hold it at places 280 mm apart across its grain; in a damp summer (11 %) that strains it by 7.7 MPa, and its wood holds 3.9 MPa across the grain: it buckles, and splits when it dries again | glue it at one place and let the others travel",
      ]
    `);
  });

  it('lets a stool be whose sides move as its seat does', () => {
    expect(fixedAcross.run(tried('reading-stool'))).toMatchObject([{ verdict: 'ok' }]);
  });
});
