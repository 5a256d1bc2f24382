import type { Assembly } from '../../model/assembly.ts';
import type { Finding, Verdict } from '../../model/finding.ts';
import type { Part } from '../../model/part.ts';
import { formatLength, type Rounding, type UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';

/** What every check is given. */
export interface CheckContext {
  readonly assembly: Assembly;
  /** In which the sentences speak. */
  readonly units: UnitSystem;
}

/** One check: what it looks at is said in its own file. It answers at least one finding, "ok" or "not checked" included. */
export interface Check {
  readonly name: string;
  run(context: CheckContext): Finding[];
}

/** A length for a sentence, rounded to the side that does not flatter. */
export const say = ({ units }: CheckContext, mm: Mm, rounding: Rounding = 'nearest'): string =>
  formatLength(mm, units, rounding, 32);

/** "bearer B1". */
export const called = (part: Part): string => `${part.name} ${part.mark}`;

/** Verdict of a value that must not be less than a limit; between `least` and `wanted` it is worth another look. */
export function atLeastVerdict(value: number, wanted: number, least: number): Verdict {
  if (value >= wanted - SAME) return 'ok';
  return value >= least - SAME ? 'look again' : 'change it';
}

const SAME = 1e-6;
