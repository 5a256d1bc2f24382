import { describe, expect, test } from 'vitest';
import { encounters, placedPieces } from '../../lib/derive/solids/interference.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import type { Assembly } from '../../lib/model/assembly.ts';
import { jobOf } from '../written.ts';
import { overlapsOf, withMoved } from './assembled.ts';
import { assemblyOf, VARIANTS } from './variants.ts';

// Source: manifold-3d intersects the placed meshes of every near pair, pockets cut, in double precision.

describe.each(VARIANTS)('$name', (variant) => {
  test('no two pieces take the same room, tenons in their mortises included', () => {
    const looked = overlapsOf(assemblyOf(variant));
    expect(looked.overlaps).toEqual([]);
    expect(looked.pairs).toBeGreaterThan(15);
  });
});

describe('a piece in the wrong place is seen', () => {
  const { assembly } = jobOf('meeting-table');
  const shifted = (id: string, by: Vec3): Assembly =>
    withMoved(assembly, id, (frame) => ({
      ...frame,
      origin: [0, 1, 2].map((k) => frame.origin[k]! + by[k]!) as never,
    }));

  test('a post 0.01 mm too high, in the top', () => {
    const { overlaps } = overlapsOf(shifted('frame-a/post-1', [0, 0, 0.01]));
    expect(overlaps.map(({ a, b }) => [a, b].join(' in '))).toContain('frame-a/post-1 in top/strip-6');
  });

  test('a tenon 0.01 mm too deep or to one side, in its mortise', () => {
    const id = 'frame-a/upper-rail-post-1/tenon';
    expect(overlapsOf(shifted(id, [0, 1.51, 0])).overlaps).toHaveLength(1);
    expect(overlapsOf(shifted(id, [0, 0, 0.01])).overlaps).toHaveLength(1);
    expect(overlapsOf(shifted(id, [0, 1.49, 0])).overlaps).toEqual([]);
  });

  test('the check of pairs by separating axes sees a piece that is 0.02 mm off', () => {
    const off = shifted('frame-a/post-1', [0, 0, 0.02]);
    const gaps = encounters(off, placedPieces(off), 0).filter((e) => e.gap < -0.015);
    expect(gaps.map(({ a, b }) => [a, b].join(' in '))).toContain('frame-a/post-1 in top/strip-6');
  });
});
