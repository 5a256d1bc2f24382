import { placedBounds } from '../derive/solids/placed-bounds.ts';
import type { Shape } from '../derive/solids/shapes.ts';
import { boundsOf, volumeOf } from '../derive/solids/solid.ts';
import { pieces, placeOf, visibleParts } from '../model/assembly.ts';
import { isGlueUp, type PartId } from '../model/part.ts';
import { boardFeet } from '../units/board-feet.ts';
import { density } from '../wood/density.ts';
import { speciesById } from '../wood/species-list.ts';
import type { Job } from './job.ts';

/** Moisture at which wood is weighed, percent: the reference of the handbook's densities. */
const WEIGHED_AT = 12;

/** Numbers of the whole piece that papers and screens quote. */
export interface Derived {
  /** mm over all, as it stands. */
  readonly overall: { readonly length: number; readonly width: number; readonly height: number };
  readonly pieces: number;
  /** mm³ of wood, every piece once, as finished. */
  readonly volume: number;
  readonly boardFeet: number;
  /** kg at 12 % moisture: everything, and the glued parts one by one. */
  readonly mass: number;
  readonly glueUps: Readonly<
    Record<string, { readonly volume: number; readonly boardFeet: number; readonly mass: number }>
  >;
}

/** As much of a job as the numbers need. */
type Measurable = Pick<Job, 'assembly'> & { readonly shapes: { get(id: PartId): Shape | undefined } };

export function derivedNumbers({ assembly, shapes }: Measurable): Derived {
  const volumes = new Map<Shape, number>();
  const volume = (id: string): number => {
    const shape = shapes.get(id)!;
    const known = volumes.get(shape) ?? volumeOf(shape.solid);
    volumes.set(shape, known);
    return known;
  };
  const mass = (id: string): number => {
    const part = assembly.parts.find((p) => p.id === id)!;
    return (volume(id) / 1e9) * density(speciesById(part.wood), WEIGHED_AT).value;
  };
  const all = pieces(assembly);
  const total = sum(all.map((p) => volume(p.id)));
  const bounds = boundsOf(
    visibleParts(assembly).flatMap((p) => {
      const { min, max } = placedBounds(placeOf(assembly, p.id), shapes.get(p.id)!.solid.vertices);
      return [min, max];
    }),
  );
  const [length, width, height] = [0, 1, 2].map((k) => bounds.max[k as 0]! - bounds.min[k as 0]!) as [
    number,
    number,
    number,
  ];
  return {
    overall: { length, width, height },
    pieces: all.length,
    volume: total,
    boardFeet: boardFeet(total),
    mass: sum(all.map((p) => mass(p.id))),
    glueUps: Object.fromEntries(
      assembly.parts
        .filter(isGlueUp)
        .map((p) => [p.id, { volume: volume(p.id), boardFeet: boardFeet(volume(p.id)), mass: mass(p.id) }]),
    ),
  };
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
