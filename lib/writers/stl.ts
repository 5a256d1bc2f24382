import jscad from '@jscad/modeling';
// @ts-expect-error the package ships no types
import * as untyped from '@jscad/stl-serializer';
import type { Vec3 } from '../geometry/vec.ts';

type Geom3 = ReturnType<typeof jscad.geometries.geom3.create>;
const { serialize } = untyped as { serialize(options: { binary: true }, ...objects: Geom3[]): ArrayBuffer[] };

/** A closed surface of triangles, mm, counter-clockwise seen from outside. */
export interface TriangleMesh {
  readonly vertices: readonly Vec3[];
  /** Three indices a triangle. */
  readonly triangles: readonly number[];
}

/** Bytes of header before the count of triangles, and of one triangle, in a binary STL file. */
const HEADER = 80;
const TRIANGLE = 50;

/**
 * A binary STL file of one or more meshes, in millimetres. The format has no field for units: the header says them.
 *
 * Coordinates are float32 and vertices are snapped together by the serializer, so corners move by up to 0.01 mm and
 * volumes by up to 1e-4.
 *
 * @throws RangeError when the serializer wrote another number of triangles than it was given.
 */
export function stl(meshes: readonly TriangleMesh[], title: string): Uint8Array {
  const geometries = meshes.map(({ vertices, triangles }) => {
    const polygons = [];
    for (let t = 0; t < triangles.length; t += 3) {
      polygons.push(jscad.geometries.poly3.create([0, 1, 2].map((k) => [...vertices[triangles[t + k]!]!] as Vec3Out)));
    }
    return jscad.geometries.geom3.create(polygons);
  });
  const bytes = join(serialize({ binary: true }, ...geometries));
  const written = new DataView(bytes.buffer).getUint32(HEADER, true);
  const given = meshes.reduce((n, m) => n + m.triangles.length / 3, 0);
  if (written !== given || bytes.length !== HEADER + 4 + given * TRIANGLE) {
    throw new RangeError(`the STL file of ${title} holds ${written} triangles instead of ${given}`);
  }
  writeHeader(bytes, `${title}, millimetres`);
  return bytes;
}

type Vec3Out = [number, number, number];

function join(blocks: readonly ArrayBuffer[]): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(blocks.reduce((n, b) => n + b.byteLength, 0));
  let at = 0;
  for (const block of blocks) {
    bytes.set(new Uint8Array(block), at);
    at += block.byteLength;
  }
  return bytes;
}

/** ASCII, cut to 80 bytes; must not begin with "solid", by which readers tell the text form. */
function writeHeader(bytes: Uint8Array, text: string): void {
  for (let k = 0; k < HEADER; k++) {
    const code = text.charCodeAt(k);
    bytes[k] = Number.isNaN(code) ? 0x20 : code < 0x20 || code > 0x7e ? 0x3f : code;
  }
}
