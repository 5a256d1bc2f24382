import { describe, expect, it } from 'vitest';
import { screwHold } from '../../lib/derive/checks/screw-hold.ts';
import { words } from './contexts.ts';
import { afterFix, at, GOLDEN, LIGHTER, refitted, tried } from './tried.ts';

const LIFTED = 'lifted by the top';
const FAR = 'far bearer';
const THREE = { 'fixing.perSide': '1' };

describe('screw hold', () => {
  it('carries 406 N when the table is lifted by its top, 593 N a screw', () => {
    const found = at(screwHold.run(tried('reading-table', GOLDEN)), 'screw hold', LIFTED);
    expect(Math.abs(found.value! / 405.5622 - 1)).toBeLessThan(LIGHTER);
    expect(Math.abs(found.limit! / (10 * 593.1844) - 1)).toBeLessThan(1e-4);
  });

  it('holds the far bearer against 14.5 N', () => {
    const found = at(screwHold.run(tried('reading-table', GOLDEN)), 'screw hold', FAR);
    // 110 kg are 1079.1 N; a quarter of the difference to 1079 N comes on top.
    expect(Math.abs(found.value! - 14.532)).toBeLessThan(0.05);
    expect(Math.abs(found.limit! / (5 * 593.1844) - 1)).toBeLessThan(1e-4);
  });

  it('says so, in inches and metric', () => {
    expect(screwHold.run(tried('reading-table')).map(words)).toMatchInlineSnapshot(`
      [
        "ok | top T: lifted by the top, its 10 screws carry 97 lb (2 times the base); they may carry 1354 lb",
        "ok | top T: 243 lb on the very end lift it off bearer B2 with 3.4 lb; its screws may carry 677 lb",
      ]
    `);
    expect(screwHold.run(tried('meeting-table')).map(words)).toMatchInlineSnapshot(`
      [
        "ok | top T: lifted by the top, its 10 screws carry 59 kg (2 times the base); they may carry 1118 kg",
        "ok | top T: with 110 kg on the very end it still lies on upper rail U2 with 8.6 kg; its screws may carry 559 kg",
      ]
    `);
  });

  it('refuses screws that are too weak to lift by, and finds thread enough', () => {
    const against = { loads: { lift: 10 } };
    const changes = { ...THREE, 'fixing.gauge': '8', 'fixing.penetration': '1/2 in' };
    const found = at(screwHold.run(tried('reading-table', changes, against)), 'screw hold', LIFTED);
    expect(words(found)).toMatchInlineSnapshot(
      `"change it | top T: lifted by the top, its 6 screws carry 485 lb (10 times the base); they may carry 350 lb | fixing.penetration 3/4 in brings them to 93 % of what they may carry | fixing.perSide 2 brings them to 83 % of what they may carry"`,
    );
    expect(found.fixes.length).toBeGreaterThan(0);
    for (const fix of found.fixes) {
      const after = afterFix(screwHold, fix, 'reading-table', changes, against);
      expect(at(after, 'screw hold', LIFTED).verdict, fix).toBe('ok');
    }
  });

  it('refuses an overhang that pulls the far bearer off, and finds where the frames may stand', () => {
    const changes = { 'frame.inset': '34 in', 'fixing.penetration': '1/4 in', 'fixing.perSide': '1' };
    const against = { loads: { person: 150 } };
    const found = at(screwHold.run(tried('reading-table', changes, against)), 'screw hold', FAR);
    expect(words(found)).toMatchInlineSnapshot(
      `"change it | top T: 331 lb on the very end lift it off bearer B2 with 646 lb; its screws may carry 101 lb | frame.inset 20 9/16 in brings a pull that its screws may carry | fixing.penetration 1 5/8 in brings a pull that its screws may carry"`,
    );
    expect(found.fixes.length).toBeGreaterThan(0);
    for (const fix of found.fixes) {
      const after = afterFix(screwHold, fix, 'reading-table', changes, against);
      expect(at(after, 'screw hold', FAR).verdict, fix).toBe('ok');
    }
  });

  it('looks again at a frame on three screws, and asks for one more a side', () => {
    const found = at(screwHold.run(tried('reading-table', THREE)), 'screws a frame');
    expect(words(found)).toMatchInlineSnapshot(
      `"look again | top T: 3 screws hold it on a frame; 4 is the least wanted, so that one may fail | fixing.perSide 2 brings 5 screws a frame"`,
    );
    expect(afterFix(screwHold, found.fixes[0], 'reading-table', THREE).map((f) => f.check)).not.toContain(
      'screws a frame',
    );
  });

  it('counts nothing on screws in end grain', () => {
    const context = tried('reading-table');
    const assembly = refitted(context.assembly, (f, part) =>
      part === 'top' && f.kind === 'bore' && f.id.startsWith('a-') ? { ...f, into: [1, 0, 0] } : f,
    );
    const found = at(screwHold.run({ ...context, assembly }), 'screw hold', LIFTED);
    expect(found.limit).toBeCloseTo(at(screwHold.run(context), 'screw hold', LIFTED).limit! / 2, 6);
    expect(found.because).toContain('as 5 of them stand in end grain and count for nothing');
  });

  it('says what it needs: the gravity of the wood, or a top', () => {
    const mahogany = screwHold.run(tried('reading-table', { 'top.wood': 'mahogany' }));
    expect(mahogany.map(words)).toEqual(['not checked | not checked: needs specific gravity at 12 % of true mahogany']);
    const context = tried('reading-table');
    const parts = context.assembly.parts.map((p) =>
      p.id === 'top' ? { ...p, body: context.assembly.parts.find((q) => q.id === 'stretcher')!.body } : p,
    );
    const topless = screwHold.run({ ...context, assembly: { ...context.assembly, parts } });
    expect(topless.map((f) => f.because)).toEqual(['not checked: needs a top of one panel on a base']);
  });

  it('has nothing to say of a stool without screws', () => {
    expect(screwHold.run(tried('reading-stool')).map(words)).toEqual(['ok | there are no screws to pull out']);
  });
});
