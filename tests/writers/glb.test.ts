import { createRequire } from 'node:module';
import { NodeIO } from '@gltf-transform/core';
import { describe, expect, it } from 'vitest';
import { volumeOf } from '../../lib/derive/solids/solid.ts';
import type { Point, Triangle } from '../readers/stl.ts';
import { ofMesh, release } from '../solids/kernel.ts';
import { joined } from '../solids/mesh.ts';
import { DESIGN_NAMES, written } from '../written.ts';

/** The validator of the Khronos Group; the package ships no types. */
const validator = createRequire(import.meta.url)('gltf-validator') as {
  validateBytes(bytes: Uint8Array): Promise<{
    issues: { numErrors: number; numWarnings: number; messages: { severity: number }[] };
  }>;
};

/** mm³ by which a mesh in float32 metres may be off, as a share. */
const IN_FILE = 2e-5;

/** Determinant of the upper left of a matrix in columns: 1 for a turn, -1 for a mirror. */
const turn = (m: readonly number[]): number =>
  m[0]! * (m[5]! * m[10]! - m[9]! * m[6]!) -
  m[4]! * (m[1]! * m[10]! - m[9]! * m[2]!) +
  m[8]! * (m[1]! * m[6]! - m[5]! * m[2]!);

describe.each(DESIGN_NAMES)('model.glb of %s', (name) => {
  it('has nothing that the validator of the Khronos Group objects to', async () => {
    const bytes = (await written(name, {}, ['glb'])).bytes('model.glb');
    const { issues } = await validator.validateBytes(bytes);
    expect(issues.messages.filter(({ severity }) => severity < 3)).toEqual([]);
    expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0]);
  });

  it('has a node for every part, a closed mesh of the right volume, in metres with Y up', async () => {
    const build = await written(name, {}, ['glb']);
    const document = await new NodeIO().readBinary(build.bytes('model.glb'));
    const nodes = document.getRoot().listNodes();
    let top = 0;
    for (const node of nodes) {
      const { id } = node.getExtras() as { id: string };
      const position = node.getMesh()!.listPrimitives()[0]!.getAttribute('POSITION')!;
      const matrix = node.getWorldMatrix();
      // Corners are the same to the last bit only in the frame of the part.
      const point = (k: number): Point => position.getElement(k, []).map((m) => 1000 * m) as unknown as Point;
      const soup = Array.from(
        { length: position.getCount() / 3 },
        (_, t): Triangle => [point(3 * t), point(3 * t + 1), point(3 * t + 2)],
      );
      const { vertices, triangles } = joined(soup);
      const volume = ofMesh(vertices, triangles).volume() * turn(matrix);
      const truth = volumeOf(build.job.shapes.get(id)!.solid);
      expect(Math.abs(volume / truth - 1), id).toBeLessThan(IN_FILE);
      const up = ([x, y, z]: Point): number => matrix[1]! * x + matrix[5]! * y + matrix[9]! * z + 1000 * matrix[13]!;
      top = Math.max(top, ...vertices.map(up));
      release();
    }
    const height = Math.max(...[...build.job.assembly.places].map(({ frame }) => frame.origin[2]));
    expect(top).toBeCloseTo(height, 1);
    expect(new Set(nodes.map((n) => n.getName())).size).toBe(nodes.length);
  });
});
