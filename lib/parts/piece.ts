import type { Body } from '../model/body.ts';
import type { Feature } from '../model/feature.ts';
import type { Allowance, Part, PartId, PartKind, Size } from '../model/part.ts';
import type { Mm } from '../units/mm.ts';
import type { SpeciesId } from '../wood/species-id.ts';

/** What every part function asks. */
export interface PieceOptions {
  readonly id: PartId;
  /** Pencilled on the wood, unique in the piece. */
  readonly mark: string;
  /** Default: the kind of part. */
  readonly name?: string;
  readonly wood: SpeciesId;
  /** Added to the finished size for milling; default `DEFAULT_ALLOWANCE`. */
  readonly allowance?: Allowance;
  readonly notes?: readonly string[];
}

/** 3/16 in width, 2 in length, nothing in thickness: makers' published habits, all editable (common practice). */
export const DEFAULT_ALLOWANCE: Allowance = { thickness: 0, width: 4.7625, length: 50.8 };

/** What the piece is milled to before it gets its final shape. */
export const roughSize = (finished: Size, allowance: Allowance = DEFAULT_ALLOWANCE): Size => ({
  thickness: finished.thickness + allowance.thickness,
  width: finished.width + allowance.width,
  length: finished.length + allowance.length,
});

/** What a part function settles besides what it was asked for. */
export interface Made {
  readonly kind: PartKind;
  /** What it is called when the options do not say. */
  readonly name: string;
  readonly finished: Size;
  readonly body: Body;
  readonly features?: readonly Feature[];
  /** When the options do not say. */
  readonly notes?: readonly string[];
}

/** A part from what was asked and what was made of it; its rough size follows from the allowance. */
export const partFrom = (options: PieceOptions, made: Made): Part => ({
  id: options.id,
  mark: options.mark,
  name: options.name ?? made.name,
  kind: made.kind,
  wood: options.wood,
  finished: made.finished,
  rough: roughSize(made.finished, options.allowance),
  body: made.body,
  features: made.features ?? [],
  notes: options.notes ?? made.notes ?? [],
});

/** @throws RangeError naming the field, when a size is not a positive number of mm. */
export function needPositive(part: PartId, sizes: Readonly<Record<string, Mm>>): void {
  for (const [field, value] of Object.entries(sizes)) {
    if (!(value > 0 && Number.isFinite(value))) {
      throw new RangeError(`${part}: ${field} is ${value} mm; it must be more than 0`);
    }
  }
}
