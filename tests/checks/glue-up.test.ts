import { describe, expect, it } from 'vitest';
import { glueUp } from '../../lib/derive/checks/glue-up.ts';
import { glueUps } from '../../lib/derive/checks/glued-boards.ts';
import { defineShop } from '../../lib/shop/shop.ts';
import { expectPrinted } from '../printed.ts';
import { words } from './contexts.ts';
import { afterFix, at, tried } from './tried.ts';

const LINE = 'clamp line';
const TAPERED = 'clamp line, tapered first';
/** Boards milled to their finished thickness, as the check values have them. */
const BARE = { 'allowance.cleanUp': '0 in' };
const CAULS_50 = { shop: defineShop({ clamps: { caul: '50 mm' } }) };

describe('clamps for the reading-room table', () => {
  const [clamps] = glueUp.run(tried('reading-table', BARE, CAULS_50));

  it('are 30 by pressure and 8 by cover, with cauls of 50 mm', () => {
    expect(clamps!.limit).toBe(30);
    expect(clamps!.because).toContain('8 is the least');
  });

  it('pull between 19.05 and 23.81 mm below the show face', () => {
    const { tapered, depths } = glueUps(tried('reading-table', BARE).assembly)[0]!;
    for (const [k, depth] of [35.71875, 42.8625, 50.00625, 57.15, 50.00625, 42.8625, 35.71875].entries()) {
      expect(depths[k]).toBeCloseTo(depth, 9);
      expect(tapered!.depths[k]).toBeCloseTo(depth, 9);
    }
    const found = at(glueUp.run(tried('reading-table', BARE, { units: 'mm' })), TAPERED);
    expectPrinted(found.limit!, '19.05', 'low end');
    expectPrinted(found.value!, '14.2875', 'middle of the edge');
    expect(found.because).toContain('19.1 to 23.8 mm');
    expect(found.because).toContain('over 14.3 mm of its depth and be pressed 2.7 times harder');
  });
});

describe('glue-up', () => {
  it('says what it finds, in inches and metric', () => {
    expect(glueUp.run(tried('reading-table')).map(words)).toMatchInlineSnapshot(`
      [
        "look again | top T: 16 of your clamps reach across it and its cauls (they must open 48 in); 7 is the least, for freshly jointed edges that close by hand, 31 is the handbook's count for a joint 2 5/16 in deep | fit the edges so that 7 clamps close them dry, or borrow 15 more",
        "look again | top T: set the clamp screws 25/32 to 31/32 in below the show face; at the middle of the edge, 3/4 in, the deepest joint would gape underneath over 7/64 in of its depth and be pressed 2.1 times harder at the show face | top.edgeThickness 1 1/4 in brings the middle of the edge into that stretch | top.thickness 2 1/16 in brings the middle of the edge into that stretch | mill all its boards 2 5/16 in thick and taper them after gluing",
        "ok | top T: were it tapered before gluing, set the clamp screws 3/4 to 15/16 in below the show face; at the middle of the edge, 9/16 in, the deepest joint would gape underneath over 9/16 in of its depth and be pressed 2.7 times harder at the show face. Better: glue flat, taper afterwards",
        "ok | top T: once it is tapered, clamps along its underside meet the edges 3.2° out of square; their jaws grip",
      ]
    `);
    expect(glueUp.run(tried('meeting-table')).map(words)).toMatchInlineSnapshot(`
      [
        "look again | top T: 16 of your clamps reach across it and its cauls (they must open 1163.2 mm); 7 is the least, for freshly jointed edges that close by hand, 30 is the handbook's count for a joint 52 mm deep | fit the edges so that 7 clamps close them dry, or borrow 14 more",
        "ok | top T: clamps 17.4 to 24.5 mm below the show face close all its joints, the middle of the edge (18.4 mm) too",
        "ok | top T: were it tapered before gluing, set the clamp screws 16.7 to 23.2 mm below the show face; at the middle of the edge, 14 mm, the deepest joint would gape underneath over 8 mm of its depth and be pressed 2.4 times harder at the show face. Better: glue flat, taper afterwards",
        "ok | top T: once it is tapered, clamps along its underside meet the edges 2.6° out of square; their jaws grip",
      ]
    `);
  });

  it('refuses a shop with too few clamps that reach, and says how many more it takes', () => {
    const few = (medium: number, caul = '2 in') =>
      defineShop({ clamps: { medium: { count: medium }, long: { count: 0 }, caul } });
    const [found] = glueUp.run(tried('reading-table', {}, { shop: few(5) }));
    expect(words(found!)).toMatchInlineSnapshot(
      `"change it | top T: 5 of your clamps reach across it and its cauls (they must open 48 in); 7 is the least, for freshly jointed edges that close by hand, 31 is the handbook's count for a joint 2 5/16 in deep | 2 more clamps that open 48 in"`,
    );
    expect(glueUp.run(tried('reading-table', {}, { shop: few(5 + 2) }))[0]!.verdict).toBe('look again');
  });

  it('knows when deeper cauls would do, and that they need clamps that open further', () => {
    const shop = (caul: string) => defineShop({ clamps: { long: { count: 6 }, medium: { count: 0 }, caul } });
    const [found] = glueUp.run(tried('reading-table', {}, { shop: shop('2 in') }));
    expect(words(found!)).toMatchInlineSnapshot(
      `"change it | top T: 6 of your clamps reach across it and its cauls (they must open 48 in); 7 is the least, for freshly jointed edges that close by hand, 31 is the handbook's count for a joint 2 5/16 in deep | 1 more clamp that opens 48 in | cauls 3 7/16 in deep: then 6 will do"`,
    );
    const caul = /^cauls (.+) deep/.exec(found!.fixes[1]!)![1]!;
    expect(glueUp.run(tried('reading-table', {}, { shop: shop(caul) }))[0]!.verdict).toBe('look again');
  });

  it('is content with clamps enough for the pressure', () => {
    const shop = defineShop({ clamps: { medium: { count: 40 } } });
    expect(glueUp.run(tried('reading-table', {}, { shop }))[0]!.verdict).toBe('ok');
  });

  it('refuses a taper too steep for any clamp line, and finds the edge that allows one', () => {
    const changes = { 'top.edgeThickness': '1/2 in', 'edgeJoint.tenons': 'no' };
    const found = at(glueUp.run(tried('reading-table', changes)), LINE);
    expect(words(found)).toMatchInlineSnapshot(
      `"change it | top T: no straight clamp line closes all its joints: the deepest, 2 5/16 in, is more than twice the shallowest, 1 in | top.edgeThickness 3/4 in brings joints of which the deepest is 1.9 times the shallowest | top.thickness 1 9/16 in brings joints of which the deepest is 2.0 times the shallowest | mill all its boards 2 5/16 in thick and taper them after gluing"`,
    );
    for (const fix of found.fixes.slice(0, -1)) {
      expect(at(afterFix(glueUp, fix, 'reading-table', changes), LINE).verdict, fix).not.toBe('change it');
    }
    expect(found.fixes.length).toBeGreaterThan(1);
  });

  it('moves the middle of the edge into the stretch that closes all joints', () => {
    const found = at(glueUp.run(tried('reading-table')), LINE);
    expect(found.verdict).toBe('look again');
    for (const fix of found.fixes.slice(0, -1)) {
      expect(at(afterFix(glueUp, fix, 'reading-table', {}), LINE).verdict, fix).toBe('ok');
    }
  });

  it('says when jaws slide on a steep taper, and how to cut the cauls', () => {
    const steep = {
      'top.edgeThickness': '3/4 in',
      'top.width': '26 in',
      'bearer.length': '24 in',
      'post.spacing': '16 in',
      'edgeJoint.tenons': 'no',
    };
    const found = at(glueUp.run(tried('reading-table', steep)), 'clamp jaws');
    expect(words(found)).toMatchInlineSnapshot(
      `"look again | top T: once it is tapered, clamps along its underside meet the edges 6.6° out of square; their jaws may slide | cut the cauls to 6.6°"`,
    );
  });

  it('takes either edge alike, and a flat top without more ado', () => {
    const strips = ['6 in', '4 in', '10 in', '8 in', '7 in', '5 in'];
    const list = (widths: readonly string[]) => ({ 'top.strips': widths.join(', ') });
    const numbers = (widths: readonly string[]) =>
      glueUp.run(tried('reading-table', list(widths))).map((f) => [f.value?.toFixed(9), f.limit?.toFixed(9)]);
    expect(numbers([...strips].reverse())).toEqual(numbers(strips));
    const flat = glueUp.run(tried('reading-table', { 'top.edgeThickness': '2 1/4 in' }));
    expect(flat.map((f) => f.check)).toEqual(['clamps']);
  });

  it('counts two layers as one board, and panel legs once', () => {
    const findings = glueUp.run(tried('study-table'));
    expect(findings.map((f) => f.part)).toEqual(['frame-a/panel', 'top', 'top', 'top', 'top']);
    expect(findings[0]!.because).toContain('panel leg L1 (2 alike)');
    const top = glueUps(tried('study-table').assembly)[1]!;
    expect(top.boards).toHaveLength(6);
    expect(Math.max(...top.depths)).toBeCloseTo(2.0625 * 25.4, 6);
  });

  it('has nothing to say of a stool of single boards', () => {
    expect(glueUp.run(tried('reading-stool')).map(words)).toEqual([
      'ok | nothing is glued up from boards side by side',
    ]);
  });
});
