import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gluePlan, jointsAtOnce } from '../../lib/derive/checks/glue-stages.ts';
import type { GlueUp } from '../../lib/derive/checks/glued-boards.ts';
import { shopLimits } from '../../lib/derive/checks/shop-limits.ts';
import type { Finding } from '../../lib/model/finding.ts';
import type { Part } from '../../lib/model/part.ts';
import { defineShop, type ShopGiven } from '../../lib/shop/shop.ts';
import type { Changes, DesignName } from '../written.ts';
import { contextOf } from './site-context.ts';

const INCH = 25.4;

const glue = (given: ShopGiven, name: DesignName = 'reading-table', changes: Changes = {}): Finding[] =>
  shopLimits
    .run(contextOf(name, changes, { shop: defineShop(given) }))
    .filter((f) => ['planer and glue-up', 'gluing time'].includes(f.check));

/** A panel of boards so many inches wide. */
function panel(widths: readonly number[]): GlueUp {
  const boards = widths.map((w) => ({ width: w * INCH, thickness: 50 }));
  const width = boards.reduce((sum, b) => sum + b.width, 0);
  return { part: { name: 'panel' } as Part, alike: 1, length: 2000, width, boards, depths: [] };
}

const stages = (widths: readonly number[], shop: ShopGiven, trim = 0): string[] =>
  gluePlan(panel(widths), defineShop(shop), trim).stages.map(
    (s) => `${s.from} to ${s.to}, ${+(s.width / INCH).toFixed(3)} in, ${s.joints} at once`,
  );

const EIGHT = [5, 5, 5, 5, 5, 5, 5, 5];

describe('the stages of a glue-up', () => {
  it('are three of two boards for eight boards of 5 in and a 12 in planer: pairs, halves, the joint in the middle', () => {
    expect(stages(EIGHT, {})).toEqual([
      '8 to 4, 10 in, 1 at once',
      '4 to 2, 20 in, 1 at once',
      '2 to 1, 40 in, 1 at once',
    ]);
  });

  it('take what a wider planer and a slower glue allow, three joints at most, never across the middle', () => {
    const slow = { machines: { planerWidth: '24 in' }, gluing: { openTime: 60 } };
    expect(stages(EIGHT, slow)).toEqual(['8 to 2, 20 in, 3 at once', '2 to 1, 40 in, 1 at once']);
    // A 20 in planer takes no half that is still to be trimmed.
    expect(stages(EIGHT, { ...slow, machines: { planerWidth: '20 in' } }, 0.22 * INCH)[0]).toBe(
      '8 to 4, 15 in, 2 at once',
    );
  });

  it('pass the planer by when it takes single boards only', () => {
    expect(gluePlan(panel(EIGHT), defineShop({ machines: { planerWidth: '8 in' } }), 0).planed.boards).toBe(1);
    expect(gluePlan(panel(EIGHT), defineShop({ machines: { planerWidth: '4 in' } }), 0).planed.boards).toBe(0);
  });

  it('close as many joints at once as 70 % of the open time takes', () => {
    expect(jointsAtOnce(defineShop())).toBe(2);
    expect(jointsAtOnce(defineShop({ gluing: { openTime: 5 } }))).toBe(1);
    expect(jointsAtOnce(defineShop({ gluing: { openTime: 3 } }))).toBe(0);
    expect(jointsAtOnce(defineShop({ gluing: { openTime: 120 } }))).toBe(3);
  });

  it('always end in one piece, each from what the one before made, all joints glued once', () => {
    const width = fc.double({ min: 1, max: 9, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(width, { minLength: 2, maxLength: 16 }),
        fc.boolean(),
        fc.double({ min: 4, max: 30, noNaN: true }),
        fc.double({ min: 1, max: 40, noNaN: true }),
        (half, mirrored, planer, openTime) => {
          const widths = mirrored ? [...half, ...[...half].reverse()] : half;
          const shop = defineShop({ machines: { planerWidth: planer * INCH }, gluing: { openTime } });
          const plan = gluePlan(panel(widths), shop, 0);
          expect(plan.stages[0]!.from).toBe(widths.length);
          expect(plan.stages.at(-1)!.to).toBe(1);
          plan.stages.slice(1).forEach((s, k) => {
            expect(s.from).toBe(plan.stages[k]!.to);
          });
          for (const s of plan.stages) {
            expect(s.to).toBeLessThan(s.from);
            expect(s.joints).toBeLessThanOrEqual(Math.max(1, plan.atOnce));
          }
          expect(plan.stages.at(-1)!.width / INCH).toBeCloseTo(
            widths.reduce((a, b) => a + b, 0),
            6,
          );
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('what it says of a glue-up', () => {
  it('goes through the planer in parts, in stages that the glue allows', () => {
    expect(glue({}).map((f) => [f.verdict, f.because])).toEqual([
      [
        'ok',
        'top T is 40 3/16 in wide before trimming and the planer takes 12 in: plane and taper it in 4 parts of up to 2 boards, 10 3/16 in wide, then join those',
      ],
      [
        'ok',
        'top T: 7 joints at once take 17.5 min, and 7 min are 70 % of the open time: glue it up in 3 stages: 8 boards to 4, 10 in wide; 4 to 2, 20 in wide; 2 to 1',
      ],
    ]);
  });

  it('goes through a wide planer whole', () => {
    const [planer, time] = glue({ machines: { planerWidth: '48 in' }, gluing: { openTime: 30 } });
    expect(planer!.because).toBe(
      'top T is 40 3/16 in wide before trimming: it goes through the planer whole, which takes 48 in',
    );
    expect(time!.because).toBe(
      'top T: 7 joints at once take 17.5 min, and 21 min are 70 % of the open time, but one person closes 3: glue it up in 2 stages: 8 boards to 2, 20 in wide; 2 to 1',
    );
  });

  it('has strips tapered before gluing when only they go through', () => {
    const [found] = glue({ machines: { planerWidth: '8 in' } });
    expect(found!.verdict).toBe('look again');
    expect(found!.because).toBe(
      'top T is 40 3/16 in wide before trimming and the planer takes 8 in: not even two boards go through together',
    );
    expect(found!.fixes).toEqual(['taper strips before gluing, and flush the joints by hand']);
    expect(
      glue({ machines: { planerWidth: '8 in' } }, 'reading-table', {
        'top.strips': '16',
        'edgeJoint.slotDepth': '3/4 in',
      })[0]!.verdict,
    ).toBe('ok');
  });

  it('wants narrower boards when not even one goes through', () => {
    const [found] = glue({ machines: { planerWidth: '5 in' } });
    expect(found!.verdict).toBe('change it');
    expect(found!.because).toBe(
      'top T is 40 3/16 in wide before trimming and the planer takes 5 in: a single board is 5 3/16 in wide',
    );
    expect(found!.fixes).toEqual(['make it of at least 9 boards']);
    const [mended] = glue({ machines: { planerWidth: '5 in' } }, 'reading-table', { 'top.strips': '10' });
    expect(mended!.verdict).toBe('look again');
  });

  it('wants a slower glue when one joint takes too long, and that will do', () => {
    const found = glue({ gluing: { openTime: 3 } })[1]!;
    expect(found).toMatchObject({ verdict: 'change it', value: 2.5, unit: 'min' });
    expect(found.because).toBe('top T: one joint takes 2.5 min, and 2.1 min are 70 % of the open time');
    expect(found.fixes).toEqual(['use a glue with an open time of at least 3.6 min']);
    expect(glue({ gluing: { openTime: 3.6 } })[1]!.verdict).toBe('ok');
  });

  it('plans panel legs too', () => {
    const [planer, time] = glue({}, 'study-table');
    expect(planer!.because).toMatch(/^panel leg L1 \(2 alike\) is .* plane it in 3 parts of up to 2 boards, /);
    expect(time!.because).toMatch(/glue it up in 2 stages: 5 boards to 3, .*; 3 to 1$/);
  });
});
