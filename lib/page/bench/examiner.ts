import type { UnitSystem } from '../../units/format-length.ts';
import type { CheckDesk } from '../worker/ask-checks.ts';
import type { Bench } from './bench.ts';
import { type Found, foundAtOnce, foundMore, isComplete, NOTHING_FOUND } from './found.ts';
import type { Piece } from './piece.ts';

/** Has pieces checked: the one at hand at once, another to compare with when there is nothing else to do. */
export interface Examiner {
  /** What is known of the piece at hand; right after `look` the quick checks, the others as they were before. */
  found(): Found;
  look(piece: Piece, units: UnitSystem): void;
  /** All of what the checks say of a piece, once it is known; it is asked for in its turn. */
  whole(piece: Piece, units: UnitSystem): Found | undefined;
}

/** Complete findings that are kept, for undo and for comparing. */
const KEPT = 40;

export function examinerOf(bench: Bench, desk: CheckDesk, changed: () => void): Examiner {
  const complete = new Map<string, Found>();
  let found: Found = NOTHING_FOUND;
  let atHand: Piece | undefined;
  let wanted: { readonly piece: Piece; readonly units: UnitSystem } | undefined;
  /** What the desk is at. */
  let asked = '';

  const keyOf = ({ values }: Piece, units: UnitSystem): string => JSON.stringify([units, values]);
  const keep = (piece: Piece, units: UnitSystem, whole: Found): void => {
    complete.set(keyOf(piece, units), whole);
    for (const key of [...complete.keys()].slice(0, -KEPT)) complete.delete(key);
  };
  /** Has the desk check a piece; tells each time more is known. */
  const examine = (piece: Piece, units: UnitSystem, start: Found, tell: (found: Found) => void): void => {
    let sum = start;
    asked = keyOf(piece, units);
    const question = { values: piece.values, units, shop: bench.shop, records: bench.records };
    desk.ask(question, (answer) => {
      sum = foundMore(sum, answer);
      if (isComplete(sum)) keep(piece, units, sum);
      tell(sum);
      changed();
    });
  };
  const quick = (piece: Piece, units: UnitSystem, before: Found): Found => {
    const { tune: _, ...context } = piece.context(units);
    return foundAtOnce(before, context);
  };
  const askForWanted = (): void => {
    if (!wanted || !isComplete(found) || asked === keyOf(wanted.piece, wanted.units)) return;
    const { piece, units } = wanted;
    wanted = undefined;
    examine(piece, units, quick(piece, units, NOTHING_FOUND), () => {});
  };
  return {
    found: () => found,
    look(piece, units) {
      atHand = piece;
      const known = complete.get(keyOf(piece, units));
      if (known) {
        found = known;
        return;
      }
      found = quick(piece, units, found);
      examine(piece, units, found, (more) => {
        if (piece !== atHand) return;
        found = more;
        askForWanted();
      });
    },
    whole(piece, units) {
      const known = complete.get(keyOf(piece, units));
      if (known) return known;
      wanted = { piece, units };
      askForWanted();
      return undefined;
    },
  };
}
