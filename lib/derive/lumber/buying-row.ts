import type { Mm } from '../../units/mm.ts';
import type { SpeciesId } from '../../wood/species-id.ts';
import type { ThicknessClassId } from '../../wood/thickness-classes.ts';
import type { Enough } from './yard-visits.ts';

/** Boards of one class and size to look for. */
export interface BuyingRow {
  readonly marks: readonly string[];
  readonly name: string;
  readonly isStrip: boolean;
  readonly wood: SpeciesId;
  readonly pieces: number;
  /** mm: what each must have when it is milled, clean-up included. */
  readonly thickness: Mm;
  readonly width: Mm;
  readonly length: Mm;
  /** mm: the width alone once it is finished. */
  readonly finishedWidth: Mm;
  /** Absent when nothing that the yard has is thick enough. */
  readonly lumber?: ThicknessClassId;
  /** mm of thickness to spare in a dressed board; 0 when it is just enough. */
  readonly spare?: Mm;
  /** The next thicker class that the yard has: for when nothing is to spare, or there is none of the first. */
  readonly orElse?: ThicknessClassId;
  /** Net, by finished width and length and nominal thickness. */
  readonly boardFeet: number;
}

/** All of one wood and class. */
export interface ClassNeed {
  readonly wood: SpeciesId;
  readonly lumber: ThicknessClassId;
  readonly pieces: number;
  readonly boardFeet: number;
  /** By the share that ends in parts, and by what is added to the net. */
  readonly toBuyByYield: number;
  readonly toBuyByAddOn: number;
  readonly pricePerFoot: number;
  /** By the basis of the shop. */
  readonly price: number;
  /** Board feet that were enough in made-up visits to the yard; absent when boards of the grade are too small. */
  readonly enough?: Enough;
}
