import type { Vec2 } from '../../geometry/vec.ts';
import type { Assembly } from '../../model/assembly.ts';
import type { PanelBody } from '../../model/body.ts';
import { missing } from '../../wood/confidence.ts';
import { FIELD_LABELS } from '../../wood/field-labels.ts';
import type { SpeciesField } from '../../wood/species.ts';
import { speciesById } from '../../wood/species-list.ts';
import { shearRatio } from './shear-ratio.ts';
import { type GridCounts, gridLines, LEAST_TO_EDGE } from './solvers/plate/grid.ts';
import { isHeld } from './solvers/plate/held.ts';
import type { PlateSupport, PlateWood } from './solvers/plate/plate.ts';
import { type FactoredPlate, factorPlate } from './solvers/plate/solve.ts';
import { type Bearing, type TableModel, tableModel } from './table-model.ts';

/** A top on its bearings, ready to be leaned on anywhere. */
export interface LeanedTop {
  readonly model: TableModel;
  readonly plate: FactoredPlate;
  /** The bearings that count as supports. */
  readonly bearings: readonly Bearing[];
  /** Values of the wood it rests on. */
  readonly fields: readonly SpeciesField[];
  readonly assumptions: readonly string[];
}

export type LeanedTopOutcome =
  | { readonly top: LeanedTop; readonly needs?: never }
  | { readonly needs: string; readonly top?: never };

/** The top as a plate of its real thickness, held along its bearings both up and down. Table frame, mm. */
export function leanedTop(assembly: Assembly, counts: GridCounts): LeanedTopOutcome {
  const model = tableModel(assembly);
  if (!model) return { needs: 'a top of one panel on a base' };
  const wood = plateWood(assembly, model);
  if ('needs' in wood) return wood;
  const { length, width } = model.body;
  const bearings = supports(model);
  const half = width / 2;
  const held = bearings.map(lineOf);
  const ends = held.flatMap((line) => [line.from[1], line.to[1]]).filter((y) => Math.abs(y) < half);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const least = LEAST_TO_EDGE.value;
  const xs = gridLines({
    from: 0,
    to: length,
    through: [...held.flatMap((line) => [line.from[0], line.to[0]]), length / 2],
    count: counts.along,
  });
  const ys = gridLines({
    from: -half,
    to: half,
    through: [...ends, 0],
    count: counts.across,
    least: [
      { from: -half, to: low, count: least },
      { from: high, to: half, count: least },
    ],
  });
  const shape = { grid: { xs, ys }, wood: wood.wood, thickness: model.thickness, supports: held };
  if (!isHeld(shape)) return { needs: 'bearings that hold the top against tilting' };
  return { top: { model, plate: factorPlate(shape), bearings, fields: wood.fields, assumptions: wood.assumptions } };
}

/** The line on which a bearing holds the top: its middle line. */
function lineOf({ x, from, to, along }: Bearing): PlateSupport {
  if (!along) return { from: [x, from], to: [x, to] };
  const y = (from + to) / 2;
  return { from: [along[0], y], to: [along[1], y] };
}

/** Bearings that lie this close behind a screwed one do not hold the top down and are left out, mm (our convention). */
const BEHIND = 100;

function supports({ bearings, body }: TableModel): Bearing[] {
  return bearings
    .filter(
      (b) =>
        b.screwed ||
        !bearings.some((s) => s.screwed && Math.abs(s.x - b.x) < BEHIND && s.from < b.to - 1 && s.to > b.from + 1),
    )
    .map((b) => ({ ...b, ...within(b, body) }));
}

/** The part of a bearing that lies under the top. */
function within({ from, to, along }: Bearing, { length, width }: PanelBody): Partial<Bearing> {
  const half = width / 2;
  return {
    from: Math.max(from, -half),
    to: Math.min(to, half),
    ...(along ? { along: [Math.max(along[0], 0), Math.min(along[1], length)] as const } : {}),
  };
}

function plateWood(
  assembly: Assembly,
  { top }: TableModel,
):
  | { readonly wood: PlateWood; readonly fields: readonly SpeciesField[]; readonly assumptions: readonly string[] }
  | { readonly needs: string } {
  const species = speciesById(top.wood);
  const flat = assembly.climate.sawn !== 'quarter';
  const ratio = flat ? 'etOverEl' : 'erOverEl';
  const poisson = flat ? 'poissonLT' : 'poissonLR';
  const needed: SpeciesField[] = ['moe', ratio, poisson];
  const lacking = missing(species, needed);
  if (lacking.length > 0) return { needs: `${lacking.map((f) => FIELD_LABELS[f]).join(' and ')} of ${species.name}` };
  const value = (field: SpeciesField): number => species[field]!.value;
  const along = value('moe');
  const field = flat ? 'gltOverEl' : 'glrOverEl';
  const shear = shearRatio(species, field);
  return {
    wood: { along, across: along * value(ratio), shear: along * shear.value, poisson: value(poisson) },
    fields: [...needed, field],
    assumptions: shear.assumptions,
  };
}

/** A kind of place where people lean, and all such places of the table, in its frame. */
export interface LeaningPlace {
  readonly name: string;
  readonly spots: readonly Vec2[];
}

/** Places where people lean (our convention). */
export function leaningPlaces({ model, bearings }: LeanedTop): LeaningPlace[] {
  const { length, width } = model.body;
  const edges = [width / 2, -width / 2];
  const overBearings = bearings.flatMap((b) => (b.along ? [] : [b.x]));
  const onEdges = (...xs: readonly number[]): Vec2[] => xs.flatMap((x) => edges.map((y): Vec2 => [x, y]));
  return [
    { name: 'the middle of a long edge', spots: onEdges(length / 2) },
    { name: 'a corner', spots: onEdges(0, length) },
    {
      name: 'the middle of an end',
      spots: [
        [0, 0],
        [length, 0],
      ],
    },
    { name: 'the middle of the top', spots: [[length / 2, 0]] },
    { name: 'a long edge over the frame', spots: onEdges(...new Set(overBearings)) },
  ];
}
