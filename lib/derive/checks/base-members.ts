import { type Frame, toOuter, turnOut } from '../../geometry/frame.ts';
import type { Vec3 } from '../../geometry/vec.ts';
import { type Assembly, placeOf, visibleParts } from '../../model/assembly.ts';
import type { Part, PartId } from '../../model/part.ts';
import { speciesById } from '../../wood/species-list.ts';
import { SHEAR_MODULUS_FALLBACK } from '../../wood/stiffness.ts';
import type { BarMaterial } from './solvers/frame-model.ts';

/** A piece of the base as a straight bar along its grain. */
export interface BaseBar {
  readonly part: Part;
  readonly frame: Frame;
  /** mm: its length, and its section along its own y and z, the least depth of a scribed piece. */
  readonly length: number;
  readonly alongY: number;
  readonly alongZ: number;
  readonly material: BarMaterial;
  /** MPa across the grain; undefined when the wood has no such value. */
  readonly across: number | undefined;
}

/** A bar, or which value of its wood is not known. */
export type BarOutcome =
  | { readonly bar: BaseBar; readonly missing?: never }
  | { readonly missing: string; readonly bar?: never };

/** The pieces of the base that bend: all but the top, tenons and pads. */
export function baseParts(assembly: Assembly): Part[] {
  const tops = new Set(
    assembly.parts.filter((p) => p.body.kind === 'panel').flatMap((p) => [p.id, ...(p.members ?? [])]),
  );
  return visibleParts(assembly).filter((p) => !tops.has(p.id) && p.kind !== 'looseTenon' && p.kind !== 'pad');
}

export function baseBar(assembly: Assembly, part: Part): BarOutcome {
  const wood = speciesById(part.wood);
  if (!wood.moe) return { missing: `the stiffness of ${wood.name}` };
  const e = wood.moe.value;
  const ratios = [wood.gltOverEl, wood.glrOverEl].flatMap((r) => (r ? [r.value] : []));
  const g = e * (ratios.length > 0 ? Math.min(...ratios) : SHEAR_MODULUS_FALLBACK.value);
  const { length, thickness } = part.finished;
  return {
    bar: {
      part,
      frame: placeOf(assembly, part.id),
      length,
      alongY: leastDepth(part),
      alongZ: thickness,
      material: { e, g },
      across: wood.etOverEl ? e * wood.etOverEl.value : undefined,
    },
  };
}

/** Depth of the piece where it is least deep, over the middle of its length, mm: a V weakens a bearer there. */
function leastDepth(part: Part): number {
  const { body, finished } = part;
  if (body.kind !== 'prism' || finished.length <= finished.width) return finished.width;
  const upper = body.outline.filter((p) => p.surface?.startsWith('underside') || p.surface?.startsWith('relief'));
  return upper.length > 0 && isLevel(part) ? Math.min(...upper.map((p) => p.y)) : finished.width;
}

/** Pieces that lie under the top carry the V on their long edge; posts have it on their end. */
const isLevel = (part: Part): boolean => part.kind === 'bearer' || part.kind === 'cleat' || part.kind === 'rail';

/** A point of the axis of a bar, `x` mm from its reference end, in the table's frame. */
export const axisPoint = (bar: BaseBar, x: number): Vec3 => toOuter(bar.frame, [x, bar.alongY / 2, bar.alongZ / 2]);

/** The direction of the bar's z axis in the table's frame. */
export const barZ = (bar: BaseBar): Vec3 => turnOut(bar.frame, [0, 0, 1]);

export const barName = (id: PartId, k: number): string => `${id} ${k}`;
