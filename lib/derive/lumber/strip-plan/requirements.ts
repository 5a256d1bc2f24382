import type { StripModel } from './strip-model.ts';

/**
 * Something every plan fulfills, as a sum over boards and strips, whatever the order of the strips:
 *
 *   Σ shows show[i] + Σ bottoms bottom[i] + Σ strips share[rank] · width  ≥  need + needPerReserve · reserve
 *
 * `rank` counts the strips from the widest, 0 first. A strip of one board counts `single[i]` and `singleWidth[i]` mm.
 */
export interface Requirement {
  readonly show: Float64Array;
  readonly bottom: Float64Array;
  readonly single: Float64Array;
  readonly singleWidth: Float64Array;
  readonly share: Float64Array;
  readonly need: number;
  readonly needPerReserve: number;
}

/** What plans with a reserve of at least `reserve` fulfill; the same number of requirements for every reserve. */
export const requirementsOf = (model: StripModel, reserve: number): readonly Requirement[] => [
  widthRequirement(model, reserve),
  thicknessRequirement(model),
  ...middleRequirements(model),
];

/**
 * Mm of a single board that can lie within the blank: its inner edge must keep away from the center line as far as the board is
 * too thin there, so on its side of the blank only the rest is left for it.
 */
export function singleReach(model: StripModel, i: number, reserve: number): number {
  const short = model.base + reserve - model.thick[i]!;
  if (short <= 1e-9) return model.width[i]!;
  return model.slope === 0 ? 0 : Math.min(model.width[i]!, model.half - short / model.slope);
}

/** A board may be a strip by itself somewhere in the blank. */
export const canCarryAlone = (model: StripModel, i: number, reserve: number): boolean =>
  singleReach(model, i, reserve) >= Math.max(1e-9, model.problem.settings.leastWidth - 1e-9);

/** The strips cover the blank. */
function widthRequirement(model: StripModel, reserve: number): Requirement {
  const n = model.boards.length;
  const none = new Float64Array(n);
  return {
    show: none,
    bottom: none,
    single: none,
    singleWidth: Float64Array.from(model.boards, (_, i) => singleReach(model, i, reserve)),
    share: new Float64Array(model.strips).fill(1),
    need: 2 * model.half,
    needPerReserve: 0,
  };
}

/**
 * The stacks are thick enough in all. Sort the strips by their distance from the center line: the nearest k fill the blank
 * between the inner edges of the next ones, on both sides, so the distance of strip k + 1 is at most half the sum of the k
 * widest. What the taper takes off all strips together is therefore at most slope · Σ (strips - rank - 1) / 2 · width.
 * Scaled so that the widest strip counts as in the width: steps of the multipliers are then alike.
 */
function thicknessRequirement(model: StripModel): Requirement {
  const { strips, slope, thick } = model;
  const scale = slope > 0 && strips > 1 ? 2 / (slope * (strips - 1)) : 5;
  const stack = thick.map((t) => t * scale);
  return {
    show: stack,
    bottom: stack,
    single: stack,
    singleWidth: model.width,
    share: Float64Array.from({ length: strips }, (_, rank) => (scale * slope * (strips - 1 - rank)) / 2),
    need: scale * strips * model.base,
    needPerReserve: scale * strips,
  };
}

/** Boards whose thicknesses lie closer than this, mm, are one class of single strips (tried: finer brings nothing). */
const CLASS_GAP = 4;
const MOST_CLASSES = 2;

/**
 * The middle is filled by what is thick enough for it. A board of thickness t alone keeps (base + reserve - t) / slope away from
 * the center line; the strips that may lie nearer must cover that much on both sides. One requirement for each class of single
 * boards; every strip of two layers counts as thick enough.
 */
function middleRequirements(model: StripModel): Requirement[] {
  const { slope, base, half, thick, strips } = model;
  if (slope === 0 || model.problem.settings.layers === 'two') return [];
  const none = new Float64Array(model.boards.length);
  const cap = model.problem.settings.reserveCap;
  return singleClasses(model).map((limit) => {
    const away = (reserve: number): number => (base + reserve - limit) / slope;
    const steady = away(cap) <= half;
    return {
      show: none,
      bottom: none,
      single: none,
      singleWidth: model.width.map((w, i) => (thick[i]! > limit ? w : 0)),
      share: new Float64Array(strips).fill(1),
      need: 2 * Math.min(half, away(0)),
      needPerReserve: steady ? 2 / slope : 0,
    };
  });
}

/** The thickest board of each class of boards that may be strips by themselves, but not on the center line. */
function singleClasses(model: StripModel): number[] {
  const thick = [...model.thick.keys()]
    .filter((i) => canCarryAlone(model, i, 0) && model.thick[i]! < model.base)
    .map((i) => model.thick[i]!)
    .sort((a, b) => b - a);
  return thick.filter((t, k) => k === 0 || thick[k - 1]! - t > CLASS_GAP).slice(0, MOST_CLASSES);
}
