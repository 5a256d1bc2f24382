import { type Assembly, partOf } from '../../model/assembly.ts';
import { isGlueUp, type Part } from '../../model/part.ts';
import type { SceneGroup } from './scene-data.ts';

/**
 * The pieces that a scene shows, sorted by id: a top as its strips, which add up to it exactly; any other glued part
 * whole, because its cuts are made after gluing.
 */
export function sceneParts(assembly: Assembly): Part[] {
  const glued = assembly.parts.filter(isGlueUp);
  const open = new Set(
    glued
      .filter((part) => part.members.every((id) => partOf(assembly, id).body.kind === 'slice'))
      .map((part) => part.id),
  );
  const left = new Set(glued.flatMap((part) => (open.has(part.id) ? [part.id] : part.members)));
  return assembly.parts.filter((part) => !left.has(part.id));
}

const TOPS: readonly Part['kind'][] = ['top', 'strip', 'seat'];

export function groupOf(part: Part): SceneGroup {
  if (part.kind === 'looseTenon') return 'tenon';
  return TOPS.includes(part.kind) ? 'top' : 'base';
}
