import { describe, expect, it } from 'vitest';
import { cutsInStock } from '../../lib/derive/checks/cuts-in-stock.ts';
import type { Bore, Feature, Mortise } from '../../lib/model/feature.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { contextOf, handContext, words } from './contexts.ts';
import { boards, flat } from './trial-pieces.ts';

/** A hole of 10 mm into the reference face of a board 200 x 100 x 30. */
const bore = (id: string, x: number, depth: number): Bore => ({
  kind: 'bore',
  id,
  at: [x, 50, 0],
  into: [0, 0, 1],
  diameter: 10,
  depth,
  purpose: 'pilot',
});

/** A mortise with square ends, 20 x 10, 15 deep into the reference edge. */
const mortise = (id: string, x: number): Mortise => ({
  kind: 'mortise',
  id,
  at: [x, 0, 15],
  into: [0, 1, 0],
  along: [1, 0, 0],
  length: 20,
  width: 10,
  depth: 15,
  ends: 'square',
  play: 0,
});

const run = (features: readonly Feature[], units: 'in' | 'mm' = 'in'): Finding[] =>
  cutsInStock.run(handContext(boards({ id: 'board', at: flat(0, 0, 0), features }), units));

describe('cuts in stock', () => {
  it('is content with 3 mm of wood behind a hole, and not with 2.9', () => {
    expect(run([bore('hole', 100, 27)])).toMatchObject([{ verdict: 'ok' }]);
    const [thin] = run([bore('hole', 100, 27.1)]);
    expect(thin).toMatchObject({ verdict: 'look again', where: 'hole', limit: 3 });
    expect(thin!.value).toBeCloseTo(2.9, 9);
  });

  it('measures to the side of the piece: the hole has its points on the true circle', () => {
    // From x = 7 a radius of 5 leaves 2 mm to the end.
    const [thin] = run([bore('hole', 7, 10)]);
    expect(thin!.value).toBeCloseTo(2, 9);
    expect(thin!.because).toContain('of wood to the reference end');
  });

  it('measures to other cuts: two mortises 22 mm apart from middle to middle leave 2 mm', () => {
    const findings = run([mortise('left', 80), mortise('right', 102)]);
    expect(findings).toMatchObject([{ verdict: 'look again', where: 'right' }]);
    expect(findings[0]!.value).toBeCloseTo(2, 9);
    expect(run([mortise('left', 80), mortise('right', 103)])).toMatchObject([{ verdict: 'ok' }]);
  });

  it('finds a hole that comes through, and a cut that cannot be made', () => {
    const through = run([bore('hole', 100, 31)]);
    expect(through).toMatchObject([{ verdict: 'change it', where: 'hole' }]);
    const over = run([bore('hole', 3, 10)]);
    expect(over).toMatchObject([{ verdict: 'change it', where: 'hole' }]);
    expect(over[0]!.value).toBeUndefined();
  });

  it('says so, in inches and in millimetres', () => {
    expect(run([bore('hole', 100, 28)]).map(words)).toMatchInlineSnapshot(`
      [
        "look again | board X1: cut hole leaves 1/16 in of wood to the far face; 1/8 in is wanted | move it or make it smaller by 1/16 in",
      ]
    `);
    expect(run([bore('hole', 100, 28)], 'mm').map(words)).toMatchInlineSnapshot(`
      [
        "look again | board X1: cut hole leaves 2 mm of wood to the far face; 3 mm is wanted | move it or make it smaller by 1 mm",
      ]
    `);
    expect(run([bore('hole', 100, 31.5)]).map(words)).toMatchInlineSnapshot(`
      [
        "change it | board X1: cut hole breaks through the far face by 1/16 in | move it or make it smaller by 3/16 in",
      ]
    `);
    expect(run([bore('hole', 100, 31.5)], 'mm').map(words)).toMatchInlineSnapshot(`
      [
        "change it | board X1: cut hole breaks through the far face by 1.5 mm | move it or make it smaller by 4.5 mm",
      ]
    `);
    expect(run([bore('hole', 3, 10)]).map(words)).toMatchInlineSnapshot(`
      [
        "change it | board X1: cut hole cannot be made; its mouth runs over the border of reference-face | move it or make it smaller",
      ]
    `);
    expect(run([bore('hole', 100, 10)]).map(words)).toMatchInlineSnapshot(`
      [
        "ok | board X1: its cut has at least 3/32 in of wood around",
      ]
    `);
    expect(run([]).map(words)).toEqual(['ok | there are no mortises, holes or slots']);
  });

  it('has fixes that work: 1 mm less deep, or moved by 1 mm', () => {
    expect(run([bore('hole', 100, 28)], 'mm')[0]!.fixes).toEqual(['move it or make it smaller by 1 mm']);
    expect(run([bore('hole', 100, 28 - 1)], 'mm')).toMatchObject([{ verdict: 'ok' }]);
    expect(run([bore('hole', 7 + 1, 10)], 'mm')).toMatchObject([{ verdict: 'ok' }]);
    expect(run([bore('hole', 100, 31.5)], 'mm')[0]!.fixes).toEqual(['move it or make it smaller by 4.5 mm']);
    expect(run([bore('hole', 100, 31.5 - 4.5)], 'mm')).toMatchObject([{ verdict: 'ok' }]);
  });

  it('finds nothing in the designs', () => {
    for (const name of ['reading-table', 'meeting-table', 'study-table', 'reading-stool'] as const) {
      expect(cutsInStock.run(contextOf(name)).filter((f) => f.verdict !== 'ok')).toEqual([]);
    }
  });
});
