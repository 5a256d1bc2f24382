import { describe, expect, test } from 'vitest';
import { shapesOf } from '../../lib/derive/solids/shapes.ts';
import { solidOf } from '../../lib/derive/solids/solid-of.ts';
import { triangulate } from '../../lib/derive/solids/triangulate.ts';
import { partOf } from '../../lib/model/assembly.ts';
import type { Mortise } from '../../lib/model/feature.ts';
import type { Part } from '../../lib/model/part.ts';
import { board } from '../../lib/parts/board.ts';
import { jobOf } from '../written.ts';
import { ofMesh, release } from './kernel.ts';
import { insideOut, withFlippedTriangle, withoutTriangle } from './mesh.ts';
import { asWritten, verify } from './verifier.ts';

// What the verifier must see; each fault is one that a part function, the triangulation or a writer could make.

const { assembly } = jobOf('reading-table');
const bearer = partOf(assembly, 'frame-a/bearer');
const shape = shapesOf(assembly).get(bearer.id)!;
const mesh = asWritten(bearer, shape);

const faultsOf = (planted: typeof mesh): readonly string[] => verify(bearer, shape, planted).faults;

describe('a fault in the written mesh', () => {
  test('without one there is nothing to say, and the five screw holes are five handles', () => {
    expect(faultsOf(mesh)).toEqual([]);
    expect(ofMesh(mesh.vertices, mesh.triangles).genus()).toBe(5);
    release();
  });

  test('a missing triangle', () => {
    expect(faultsOf(withoutTriangle(mesh))).toEqual([expect.stringMatching(/^not accepted: .*manifold/i)]);
  });

  test('a flipped triangle', () => {
    expect(faultsOf(withFlippedTriangle(mesh))).toEqual([expect.stringMatching(/^not accepted: .*manifold/i)]);
  });

  test('an inside-out mesh, which manifold-3d itself accepts', () => {
    expect(faultsOf(insideOut(mesh))).toContain('negative volume');
  });

  test('a corner that is 1 mm off', () => {
    const vertices = mesh.vertices.map((p, i) => (i === 0 ? ([p[0] + 20, p[1], p[2]] as const) : p));
    expect(faultsOf({ ...mesh, vertices })).toContain('volume in file');
  });

  test('a hole that is closed', () => {
    const { solid } = solidOf({ ...bearer, features: bearer.features.filter((f) => f.id !== 'a-fixing-1') });
    const closed = { solid, triangles: triangulate(solid), refused: [] };
    const verdict = verify(bearer, closed);
    expect(verdict.faults).toEqual(['volume', 'volume in file', 'genus 4 instead of 5']);
  });
});

describe('pockets that the build cannot tell', () => {
  const mortise = (id: string, at: Mortise['at'], into: Mortise['into'], along: Mortise['along']): Mortise => ({
    ...{ kind: 'mortise', id, at, into, along, length: 30, width: 10, depth: 35, ends: 'round', play: 0 },
  });
  const from = (features: readonly Mortise[]): Part =>
    board({ id: 'post', mark: 'P', kind: 'post', wood: 'cherry', length: 400, width: 60, thickness: 60, features });
  const verdictOn = (part: Part): readonly string[] => {
    const { solid, refused } = solidOf(part);
    expect(refused).toEqual([]);
    return verify(part, { solid, triangles: triangulate(solid), refused }).faults;
  };
  const front = mortise('front', [200, 30, 0], [0, 0, 1], [1, 0, 0]);

  test('two that keep clear of each other are right', () => {
    expect(verdictOn(from([front, mortise('side', [260, 0, 30], [0, 1, 0], [1, 0, 0])]))).toEqual([]);
  });

  test('two that cross inside make a closed mesh of the wrong volume', () => {
    expect(verdictOn(from([front, mortise('side', [200, 0, 30], [0, 1, 0], [1, 0, 0])]))).toEqual([
      'volume',
      'volume in file',
    ]);
  });

  test('one that comes out of the far side, too', () => {
    expect(verdictOn(from([{ ...front, depth: 65 }]))).toEqual(['volume', 'volume in file']);
  });
});
