import { describe, expect, it } from 'vitest';
import ownShop from '../../designs/shop.ts';
import { shopLimits } from '../../lib/derive/checks/shop-limits.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { defineShop, type ShopGiven } from '../../lib/shop/shop.ts';
import { type Changes, DESIGN_NAMES, type DesignName } from '../written.ts';
import { changeOf, contextOf } from './site-context.ts';

type Machines = NonNullable<ShopGiven['machines']>;

const limits = (machines: Machines, changes: Changes = {}, name: DesignName = 'reading-table'): Finding[] =>
  shopLimits.run(contextOf(name, changes, { shop: defineShop({ machines: { bitLength: '3 in', ...machines } }) }));

/** What one machine says; of one kind of piece when it says more. */
function at(check: string, findings: readonly Finding[], piece = ''): Finding {
  const found = findings.find((f) => f.check === check && f.because.startsWith(piece));
  if (!found) throw new Error(`there is no ${check} of ${piece}`);
  return found;
}

/** A machine that is too small, what it says, and that the fix of the design passes. */
interface Case {
  readonly check: string;
  readonly machines: Machines;
  readonly piece: string;
  readonly verdict: string;
  readonly because: string;
  readonly fixes: readonly string[];
}

const CASES: readonly Case[] = [
  {
    check: 'jointer',
    machines: { jointerWidth: '5 in' },
    piece: 'stretcher',
    verdict: 'look again',
    because: 'stretcher S1: 5 3/16 in wide, and the jointer takes 5 in',
    fixes: ['flatten its face in the planer, shimmed on a sled', 'stretcher.depth 4 13/16 in brings 5 in'],
  },
  {
    check: 'jointer',
    machines: { jointerWidth: '5 in', planerWidth: '5 in' },
    piece: 'strip',
    verdict: 'look again',
    because: 'strip T1 to T8: 5 3/16 in wide, and the jointer takes 5 in',
    fixes: ['rip it in two, face both, glue it back', 'top.width 38 1/2 in brings 5 in'],
  },
  {
    check: 'planer width',
    machines: { planerWidth: '5 in' },
    piece: 'lower rail',
    verdict: 'look again',
    because: 'lower rail R1, R2: 5 3/16 in wide, and the planer takes 5 in',
    fixes: ['rip it in two, plane both, glue it back', 'lowerRail.depth 4 13/16 in brings 5 in'],
  },
  {
    check: 'planer height',
    machines: { planerHeight: '2 in' },
    piece: 'strip',
    verdict: 'look again',
    because: 'strip T3 to T6: up to 2 5/16 in thick, and the planer opens to 2 in',
    fixes: ['plane two layers, then glue them together', 'top.thickness 1 15/16 in brings 2 in'],
  },
  {
    check: 'saw depth',
    machines: { sawDepth: '2 in' },
    piece: 'post',
    verdict: 'look again',
    because: 'post P1 to P4: 2 3/4 in thick, and the table saw cuts 2 in',
    fixes: ['saw it from both faces', 'post.thickness 2 in brings 2 in'],
  },
  {
    check: 'saw depth',
    machines: { sawDepth: '1 in' },
    piece: 'bearer',
    verdict: 'look again',
    because: 'bearer B1, B2: 2 1/4 in thick, and the table saw cuts 1 in',
    fixes: ['cut it on the bandsaw and plane the cut', 'bearer.thickness 1 in brings 1 in'],
  },
  {
    check: 'bandsaw height',
    machines: { bandsawHeight: '2 in' },
    piece: 'bearer',
    verdict: 'change it',
    because: 'bearer B1, B2: 2 1/4 in thick, and the bandsaw cuts 2 in; nothing here reaches further',
    fixes: ['bearer.thickness 2 in brings 2 in'],
  },
  {
    check: 'flush-trim bit',
    machines: { bitLength: '2 in' },
    piece: 'bearer',
    verdict: 'look again',
    because: 'bearer B1, B2: 2 1/4 in thick, and the longest bit cuts 2 in',
    fixes: [
      'flush-trim from both faces: past the middle along the template, then turn it and follow the cut edge',
      'bearer.thickness 2 in brings 2 in',
    ],
  },
  {
    check: 'flush-trim bit',
    machines: { bitLength: '1 1/8 in' },
    piece: 'foot',
    verdict: 'change it',
    because: 'foot F1, F2: 2 1/4 in thick, and the longest bit cuts 1 1/8 in; nothing here reaches further',
    fixes: ['foot.thickness 1 1/8 in brings 1 1/8 in'],
  },
  {
    check: 'mortise depth',
    machines: { mortiseDepth: '1 1/4 in' },
    piece: 'mortises in bearer',
    verdict: 'change it',
    because: 'mortises in bearer B1 are 1 1/2 in deep; 1 1/4 in can be cut',
    fixes: ['frameJoint.tenonDepth 1 1/4 in brings 1 1/4 in'],
  },
  {
    check: 'mortise depth',
    machines: { mortiseDepth: '3/4 in' },
    piece: 'mortises in strip',
    verdict: 'change it',
    because: 'mortises in strip T1 are 1 in deep; 3/4 in can be cut',
    fixes: ['edgeJoint.slotDepth 3/4 in brings 3/4 in'],
  },
];

describe('a machine that is too small', () => {
  it.each(CASES)('$check: $because', ({ check, machines, piece, verdict, because, fixes }) => {
    const found = at(check, limits(machines), piece);
    expect([found.verdict, found.because, ...found.fixes]).toEqual([verdict, because, ...fixes]);
    const mended = limits(machines, changeOf(found.fixes.at(-1)));
    // Now no finding of that piece is over the limit.
    expect(mended.filter((f) => f.check === check && f.because.startsWith(piece) && f.verdict !== 'ok')).toEqual([]);
  });
});

describe('machines that are large enough', () => {
  it('tell what takes most of them', () => {
    const found = limits({});
    const said = [
      'jointer',
      'planer width',
      'planer height',
      'saw depth',
      'bandsaw height',
      'flush-trim bit',
      'mortise depth',
    ].map((check) => at(check, found));
    expect(said.map((f) => f.verdict)).toEqual(said.map(() => 'ok'));
    expect(said.map((f) => f.because)).toEqual([
      'strip T1, T8: 5 3/16 in wide, the most of all pieces; the jointer takes 8 in',
      'strip T1, T8: 5 3/16 in wide, the most of all pieces; the planer takes 12 in',
      'post P1 to P4: 2 3/4 in thick, the most of all pieces; the planer opens to 6 in',
      'post P1 to P4: 2 3/4 in thick, the most of all pieces; the table saw cuts 3 1/8 in',
      'bearer B1: 2 1/4 in thick, the most of all pieces; the bandsaw cuts 10 in',
      'bearer B1: 2 1/4 in thick, the most of all pieces; the longest bit cuts 3 in',
      'the deepest mortises, in bearer B1, are 1 1/2 in deep; 2 in can be cut',
    ]);
  });

  it('speak metric in a metric shop', () => {
    expect(at('flush-trim bit', limits({ bitLength: '2 in' }, {}, 'meeting-table')).because).toBe(
      'post P1 to P4: 70 mm thick, and the longest bit cuts 50.8 mm',
    );
  });

  it('ask nothing of tenons, pads and square pieces at the template', () => {
    for (const name of DESIGN_NAMES) {
      const found = limits({ sawDepth: '1 in', bitLength: '1/4 in' }, {}, name);
      expect(found.filter((f) => /^(loose tenon|pad) /.test(f.because))).toEqual([]);
      expect(
        found.filter((f) => f.check === 'flush-trim bit' && /^(stretcher|lower rail|side) /.test(f.because)),
      ).toEqual([]);
    }
  });

  it('make all designs of the repository in its own shop', () => {
    for (const name of DESIGN_NAMES) {
      const found = shopLimits.run(contextOf(name, {}, { shop: ownShop }));
      expect(found.filter((f) => f.verdict === 'change it' || f.verdict === 'not checked')).toEqual([]);
      expect(found.filter((f) => f.verdict === 'look again' && f.fixes.length === 0)).toEqual([]);
    }
  });
});
