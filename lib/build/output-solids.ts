import { shapeKey } from '../derive/solids/shapes.ts';
import { type Frame, toOuter } from '../geometry/frame.ts';
import { placeOf, visibleParts } from '../model/assembly.ts';
import type { Part } from '../model/part.ts';
import { stl, type TriangleMesh } from '../writers/stl.ts';
import { pieceFileName } from './file-names.ts';
import { warningOf } from './forced.ts';
import type { Job } from './job.ts';
import type { Files } from './output.ts';
import { type SoundShape, soundShapes } from './sound-shapes.ts';

/**
 * One file a part, in its own frame; loose tenons of one shape share a file. And the whole piece as it stands. A part
 * whose cuts cannot be made as drawn (a forced build) is written uncut.
 */
export function solidFiles(job: Job): Files {
  const { assembly, design } = job;
  const solids = soundShapes(job);
  const files: Files = new Map();
  const tenons = new Set<string>();
  // The header of the format is short: a word in front is sure to be in it.
  const mark = warningOf(job) === undefined ? '' : '"change it": ';
  for (const part of assembly.parts) {
    if (part.kind === 'looseTenon' && !addNew(tenons, shapeKey(part))) continue;
    const title = `${mark}${design.title} ${part.mark} ${part.name}`;
    files.set(`solids/${pieceFileName(part)}-mm.stl`, stl([meshOf(solids.get(part.id)!)], title));
  }
  const whole = visibleParts(assembly).map((part: Part) => meshOf(solids.get(part.id)!, placeOf(assembly, part.id)));
  files.set('solids/assembly-mm.stl', stl(whole, `${mark}${design.title}`));
  return files;
}

function addNew(seen: Set<string>, key: string): boolean {
  if (seen.has(key)) return false;
  seen.add(key);
  return true;
}

const meshOf = ({ solid, triangles }: SoundShape, frame?: Frame): TriangleMesh => ({
  vertices: frame ? solid.vertices.map((p) => toOuter(frame, p)) : solid.vertices,
  triangles,
});
