import { describe, expect, it } from 'vitest';
import type { CheckContext } from '../../lib/derive/checks/check.ts';
import { slotTravel } from '../../lib/derive/checks/slot-travel.ts';
import { expectPrinted } from '../printed.ts';
import { words } from './contexts.ts';
import { afterFix, at, refitted, tried } from './tried.ts';

const top = (context: CheckContext) => slotTravel.run(context)[0]!;

/** The table with slots of one length, and moved off their place by some mm along the bearer. */
function slotted(length: number | undefined, off = 0): CheckContext {
  const context = tried('reading-table');
  const assembly = refitted(context.assembly, (f) =>
    f.kind === 'slottedHole' && f.purpose === 'clearance'
      ? { ...f, length: length ?? f.length, at: [f.at[0] + f.along[0] * off, f.at[1], f.at[2]] }
      : f,
  );
  return { ...context, assembly };
}

describe('slot travel', () => {
  it('wants slots of 11.33 mm for screws 330.2 mm from the center line of a cherry top', () => {
    const found = top(tried('reading-table'));
    expectPrinted(found.limit!, '11.33', 'slot', 0.005);
    expect(found.value).toBeCloseTo(found.limit!, 9);
    expect(words(found)).toMatchInlineSnapshot(
      `"ok | top T: screws 13 in from the center line need slots 29/64 in long; all 8 slots are long enough"`,
    );
  });

  it('speaks metric', () => {
    expect(words(top(tried('meeting-table')))).toMatchInlineSnapshot(
      `"ok | top T: screws 195 mm from the center line need slots 10.7 mm long; all 8 slots are long enough"`,
    );
  });

  it('refuses slots without play and finds the margin that brings it', () => {
    const changes = { 'fixing.slotMargin': '0 in' };
    const found = top(tried('reading-table', changes));
    expect(words(found)).toMatchInlineSnapshot(
      `"change it | top T: screws 13 in from the center line need slots 29/64 in long and have 3/8 in: they leave too little play beyond the travel | fixing.slotMargin 1/16 in brings 1/16 in of play"`,
    );
    expect(afterFix(slotTravel, found.fixes[0], 'reading-table', changes)).toMatchObject([{ verdict: 'ok' }]);
    const metric = top(tried('meeting-table', { 'fixing.slotMargin': '0.5 mm' }));
    expect(words(metric)).toMatchInlineSnapshot(
      `"change it | top T: screws 195 mm from the center line need slots 10.7 mm long and have 9.6 mm: they leave too little play beyond the travel | fixing.slotMargin 2 mm brings 2 mm of play"`,
    );
  });

  it('says what a slot too short does, and in which season', () => {
    expect(words(top(slotted(5.5)))).toMatchInlineSnapshot(
      `"change it | top T: screws 13 in from the center line need slots 29/64 in long and have 13/64 in: in a dry winter they would hold the wood and split it | fixing.slotMargin 1/8 in brings 1/8 in of play"`,
    );
    // So far in that the screw cannot come back in when the top dries: 2.05 mm are wanted.
    expect(words(top(slotted(undefined, 1)))).toMatchInlineSnapshot(
      `"change it | top T: screws 13 in from the center line need slots 29/64 in long and have 7/16 in, off their place: in a dry winter they would hold the wood and split it | fixing.slotMargin 1/8 in brings 1/8 in of play"`,
    );
    expect(words(top(slotted(undefined, -1)))).toMatchInlineSnapshot(
      `"change it | top T: screws 13 in from the center line need slots 29/64 in long and have 7/16 in, off their place: in a damp summer they would stop the wood and buckle it | fixing.slotMargin 1/8 in brings 1/8 in of play"`,
    );
  });

  it('is the same on both sides and in both frames', () => {
    const one = tried('reading-table');
    const screws = one.assembly.fixings.filter((f) => f.hold === 'slotted');
    expect(screws).toHaveLength(8);
    const alone = screws.map((screw) => top({ ...one, assembly: { ...one.assembly, fixings: [screw] } }));
    expect(new Set(alone.map((f) => `${f.value!.toFixed(6)} ${f.limit!.toFixed(6)}`)).size).toBe(2);
  });

  it('asks less of quarter-sawn boards, and more of a damper house', () => {
    const limit = (changes: Readonly<Record<string, string>>): number => top(tried('reading-table', changes)).limit!;
    expect(limit({ 'moisture.sawn': 'quarter' })).toBeLessThan(limit({}));
    expect(limit({ 'moisture.high': '14 %' })).toBeGreaterThan(limit({}));
  });

  it('looks at the screws into panel legs too, once for legs alike', () => {
    const found = slotTravel.run(tried('study-table'));
    expect(found.map((f) => f.part)).toEqual(['top', 'frame-a/panel']);
    expect(at(found.slice(1), 'slot travel').because).toContain('all 4 slots are long enough');
  });

  it('has nothing to say of a stool without screws', () => {
    expect(slotTravel.run(tried('reading-stool')).map(words)).toEqual(['ok | there are no screws in slots']);
  });
});
