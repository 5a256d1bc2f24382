import { type Shape, shapeKey, shapesOf } from '../../lib/derive/solids/shapes.ts';
import { areaOf, openEdges, volumeOf } from '../../lib/derive/solids/solid.ts';
import type { Assembly } from '../../lib/model/assembly.ts';
import { isPocket } from '../../lib/model/feature.ts';
import type { Part } from '../../lib/model/part.ts';
import { stl } from '../../lib/writers/stl.ts';
import { readStl } from '../readers/stl.ts';
import { booleanOf } from './boolean-of.ts';
import { type Body, ofMesh, release } from './kernel.ts';
import { joined, type Mesh } from './mesh.ts';

/** In memory volumes agree to rounding, as a share. */
export const IN_MEMORY = 1e-9;

/** A written file holds float32 and corners on a grid of about 0.01 mm: its skin lies this far off on average, mm. */
export const IN_FILES = 0.005;

/** What the verifier has against a part, in words, and how far its volumes are off. */
export interface Verdict {
  readonly part: string;
  readonly faults: readonly string[];
  /** mm³ as the kernel's boolean has it, and as the mesh in the file has it. */
  readonly truth: number;
  readonly written: number;
  /** Share by which the volume from the loops is off. */
  readonly inMemory: number;
  /** mm by which the skin of the written mesh is off, on average. */
  readonly inFile: number;
}

/** The mesh of one part, read back from the file that is written of it. */
export const asWritten = (part: Part, shape: Shape): Mesh =>
  joined(readStl(stl([{ vertices: shape.solid.vertices, triangles: shape.triangles }], part.id)));

/** The mesh as manifold-3d takes it; a mesh that is not closed and oriented is refused with a word. */
function accepted(mesh: Mesh): Body | string {
  try {
    const body = ofMesh(mesh.vertices, mesh.triangles);
    return body.status() === 'NoError' ? body : body.status();
  } catch (error) {
    return (error as Error).message;
  }
}

/** Right-through pockets make as many handles: a mug has one. */
const handles = (part: Part): number => part.features.filter((f) => isPocket(f) && f.depth === 'through').length;

/** Compares a part, as built and as written, with the same part built by manifold-3d. */
export function verify(part: Part, shape: Shape, mesh = asWritten(part, shape)): Verdict {
  const faults: string[] = [];
  const open = openEdges(shape.solid).length;
  if (open > 0) faults.push(`${open} open edges`);
  const truth = booleanOf(part).volume();
  const inMemory = Math.abs(volumeOf(shape.solid) / truth - 1);
  if (!(inMemory < IN_MEMORY)) faults.push('volume');
  const body = accepted(mesh);
  const written = typeof body === 'string' ? Number.NaN : body.volume();
  const inFile = Math.abs(written - truth) / areaOf(shape.solid);
  if (typeof body === 'string') faults.push(`not accepted: ${body}`);
  else {
    if (!(written > 0)) faults.push('negative volume');
    if (!(inFile < IN_FILES)) faults.push('volume in file');
    if (body.genus() !== handles(part)) faults.push(`genus ${body.genus()} instead of ${handles(part)}`);
  }
  release();
  return { part: part.id, faults, truth, written, inMemory, inFile };
}

/** All parts of a piece; parts of one shape once. */
export function verifyAll(assembly: Assembly): Verdict[] {
  const shapes = shapesOf(assembly);
  const once = new Map(assembly.parts.map((part) => [shapeKey(part), part]));
  return [...once.values()].map((part) => verify(part, shapes.get(part.id)!));
}
