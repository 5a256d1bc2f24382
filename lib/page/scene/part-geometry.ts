import { BufferAttribute, BufferGeometry } from 'three';
import { cornerNormals } from '../../derive/scene/corner-normals.ts';
import type { SceneShape } from '../../derive/scene/scene-data.ts';

/** Buffers of one shape on the screen. */
export interface PartGeometry {
  readonly faces: BufferGeometry;
  readonly edges: BufferGeometry;
  readonly seams: BufferGeometry;
  dispose(): void;
}

export function partGeometry(shape: SceneShape): PartGeometry {
  const faces = new BufferGeometry();
  faces.setAttribute('position', new BufferAttribute(corners(shape.vertices, shape.triangles), 3));
  faces.setAttribute('normal', new BufferAttribute(cornerNormals(shape), 3));
  const [edges, seams] = [lines(shape.vertices, shape.edges), lines(shape.vertices, shape.seams)];
  return {
    faces,
    edges,
    seams,
    dispose() {
      for (const geometry of [faces, edges, seams]) geometry.dispose();
    },
  };
}

function corners(vertices: Float32Array, indices: Uint32Array): Float32Array {
  const out = new Float32Array(3 * indices.length);
  let at = 0;
  for (const index of indices) {
    out[at] = vertices[3 * index]!;
    out[at + 1] = vertices[3 * index + 1]!;
    out[at + 2] = vertices[3 * index + 2]!;
    at += 3;
  }
  return out;
}

function lines(vertices: Float32Array, indices: Uint32Array): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(corners(vertices, indices), 3));
  return geometry;
}
