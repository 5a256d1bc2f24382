import { describe, expect, test } from 'vitest';
import { openEdges, type Solid, volumeOf } from '../../lib/derive/solids/solid.ts';
import { blankOf, solidOf } from '../../lib/derive/solids/solid-of.ts';
import { triangulate } from '../../lib/derive/solids/triangulate.ts';
import type { Outline } from '../../lib/geometry/outline.ts';
import type { Bore, Mortise, Pocket, SlottedHole } from '../../lib/model/feature.ts';
import type { Part } from '../../lib/model/part.ts';
import { board } from '../../lib/parts/board.ts';
import { verify } from './verifier.ts';

const from = (features: readonly Pocket[], outline?: Outline): Part => {
  const part = board({
    ...{ id: 'piece', mark: 'A', kind: 'rail', wood: 'cherry', length: 300, width: 80, thickness: 50 },
    features,
  });
  return outline ? { ...part, body: { kind: 'prism', thickness: 50, outline } } : part;
};

/** A V in its upper edge, in the middle. */
const VEE: Outline = [
  { x: 0, y: 0, surface: 'below' },
  { x: 300, y: 0, surface: 'right' },
  { x: 300, y: 80, surface: 'right slope' },
  { x: 150, y: 70, surface: 'left slope' },
  { x: 0, y: 80, surface: 'left' },
];

/** A step in its upper edge, 1 mm high. */
const STEP: Outline = [
  { x: 0, y: 0, surface: 'below' },
  { x: 300, y: 0, surface: 'right' },
  { x: 300, y: 80, surface: 'upper' },
  { x: 160, y: 80, surface: 'riser' },
  { x: 160, y: 79, surface: 'lower' },
  { x: 0, y: 79, surface: 'left' },
];

const bore = (id: string, x: number, depth: Bore['depth'], diameter = 10): Bore => ({
  ...{ kind: 'bore', id, at: [x, 0, 25], into: [0, 1, 0], diameter, depth, purpose: 'clearance' },
});

const slot = (id: string, x: number, length: number): SlottedHole => ({
  ...{ kind: 'slottedHole', id, at: [x, 0, 25], into: [0, 1, 0], along: [1, 0, 0], length, width: 8 },
  ...{ depth: 'through', purpose: 'clearance' },
});

const mortise: Mortise = {
  ...{ kind: 'mortise', id: 'mortise', at: [300, 60, 25], into: [-1, 0, 0], along: [0, 0, 1], length: 30, width: 10 },
  ...{ depth: 40, ends: 'round', play: 0 },
};

const faultsOf = (part: Part): readonly string[] => {
  const { solid, refused } = solidOf(part);
  expect(refused).toEqual([]);
  return verify(part, { solid, triangles: triangulate(solid), refused }).faults;
};

// Source: manifold-3d builds the same.
describe('pockets that are cut', () => {
  test('blind, through, sunk, square and round', () => {
    const sunk = { ...bore('sunk', 200, 20, 20), purpose: 'counterbore' } as const;
    const shank = { ...bore('shank', 200, 'through'), at: [200, 20, 25] } as const;
    expect(faultsOf(from([bore('blind', 40, 30), slot('slot', 100, 40), sunk, shank, mortise], undefined))).toEqual([]);
    expect(faultsOf(from([{ ...mortise, ends: 'square' }]))).toEqual([]);
  });

  test('across a ridge, coming out of it or going into it', () => {
    expect(faultsOf(from([bore('out', 150, 'through')], VEE))).toEqual([]);
    expect(faultsOf(from([slot('long', 155, 40)], VEE))).toEqual([]);
    const down = { ...bore('in', 150, 30), at: [150, 70, 25], into: [0, -1, 0] } as const;
    expect(faultsOf(from([down], VEE))).toEqual([]);
  });
});

describe('pockets that are refused leave the solid as it was', () => {
  const refusedOf = (part: Part): [string, Solid] => {
    const { solid, refused } = solidOf(part);
    expect(refused).toHaveLength(1);
    return [refused[0]!.because, solid];
  };
  const expectUntouched = (solid: Solid, part: Part): void => {
    const blank = blankOf(part);
    expect(openEdges(solid)).toEqual([]);
    expect(volumeOf(solid)).toBe(volumeOf(blank));
    expect(solid.faces.length).toBe(blank.faces.length);
  };

  test.each([
    ['no face under it', { ...mortise, at: [299, 60, 25] }, undefined, 'there is no face under its mouth'],
    ['over the end', { ...mortise, at: [300, 77, 25] }, undefined, 'its mouth runs over the border of far-end'],
    ['over two edges', bore('wide', 100, 30, 60), undefined, 'its mouth runs over the border of reference-edge'],
    ['out over a step', slot('step', 160, 40), STEP, 'its far end runs over the border of lower'],
    ['out beyond the end', { ...slot('end', 290, 40) }, undefined, 'its mouth runs over the border of reference-edge'],
  ] as const)('%s', (_, pocket, outline, because) => {
    const part = from([pocket as Pocket], outline);
    const [said, solid] = refusedOf(part);
    expect(said).toBe(because);
    expectUntouched(solid, part);
  });

  test('a slot that comes out of a slope it only grazes', () => {
    // The slot lies in the low end; the slope above falls by 1 in 20 and cuts its upper side.
    const slope: Outline = [
      { x: 0, y: 0, surface: 'below' },
      { x: 300, y: 0, surface: 'low end' },
      { x: 300, y: 64, surface: 'slope' },
      { x: 0, y: 79, surface: 'high end' },
    ];
    const part = from([mortise], slope);
    const [said, solid] = refusedOf(part);
    expect(said).toBe('its mouth runs over the border of low end');
    expectUntouched(solid, part);
  });
});
