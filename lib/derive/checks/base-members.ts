import { type Frame, toOuter, turnOut } from '../../geometry/frame.ts';
import type { OutlinePoint } from '../../geometry/outline.ts';
import type { Vec3 } from '../../geometry/vec.ts';
import { type Assembly, placeOf, visibleParts } from '../../model/assembly.ts';
import type { Part, PartKind } from '../../model/part.ts';
import { FIELD_LABELS } from '../../wood/field-labels.ts';
import { speciesById } from '../../wood/species-list.ts';
import { type ShearRatio, shearRatio } from './shear-ratio.ts';
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
  /** MPa across the grain. */
  readonly across: number;
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
  const { moe, etOverEl } = wood;
  if (!moe || !etOverEl) return { missing: `${FIELD_LABELS[moe ? 'etOverEl' : 'moe']} of ${wood.name}` };
  const e = moe.value;
  const { length, thickness } = part.finished;
  return {
    bar: {
      part,
      frame: placeOf(assembly, part.id),
      length,
      alongY: leastDepth(part),
      alongZ: thickness,
      material: { e, g: e * Math.min(...twistRatios(part).map((r) => r.value)) },
      across: e * etOverEl.value,
    },
  };
}

/** The shear moduli that resist twist; the lower of the two counts (our convention). */
export function twistRatios({ wood }: Part): ShearRatio[] {
  return (['gltOverEl', 'glrOverEl'] as const).map((field) => shearRatio(speciesById(wood), field));
}

/** Pieces that lie level: a V on their upper edge, or a hollow on their lower one, takes of their depth. */
const LEVEL: ReadonlySet<PartKind> = new Set(['bearer', 'cleat', 'rail', 'foot']);

/** Depth of the piece where it is least deep, mm: a V weakens a bearer there, a hollow a foot. */
function leastDepth({ kind, body, finished }: Part): number {
  if (body.kind !== 'prism' || !LEVEL.has(kind)) return finished.width;
  const sides = [body.outline, body.far ?? []].flatMap((outline) =>
    outline.map((from, i) => ({ from, to: outline[(i + 1) % outline.length]! })),
  );
  const scribed = sides.filter(({ from }) => /^(underside|relief)/.test(from.surface ?? ''));
  const heights = scribed.flatMap(({ from, to }) => [from.y, to.y]);
  return Math.min(finished.width, ...heights) - Math.max(0, ...sides.map(hollow));
}

/** How far an arch between two points of an outline goes into the wood, mm. */
const hollow = ({ from, to }: { readonly from: OutlinePoint; readonly to: OutlinePoint }): number =>
  from.surface === 'arch' ? (Math.abs(from.bulge ?? 0) * Math.hypot(to.x - from.x, to.y - from.y)) / 2 : 0;

/** A point of the axis of a bar, `x` mm from its reference end, in the table's frame. */
export const axisPoint = (bar: BaseBar, x: number): Vec3 => toOuter(bar.frame, [x, bar.alongY / 2, bar.alongZ / 2]);

/** The direction of the bar's z axis in the table's frame. */
export const barZ = (bar: BaseBar): Vec3 => turnOut(bar.frame, [0, 0, 1]);
