import type { Mm } from '../../units/mm.ts';
import type { CutKind } from './cut-plan/cut-plan.ts';

/** A clear rectangle of wood: a board, or what is left of one. */
export interface Rest {
  readonly width: Mm;
  readonly length: Mm;
}

/** What fits but for so little fits, mm (our convention). */
const SAME: Mm = 1e-6;

const fits = (piece: Rest, rest: Rest): boolean =>
  piece.width <= rest.width + SAME && piece.length <= rest.length + SAME;

/** Puts what is left into the rack, unless the saw takes all of it. */
export function keepRest(rack: Rest[], width: Mm, length: Mm): void {
  if (width > SAME && length > SAME) rack.push({ width, length });
}

/**
 * Takes a piece out of the rest that it leaves least over, in width or in length, `first` going right through the rest;
 * false when none is large enough.
 */
export function cutFromRack(rack: Rest[], piece: Rest, first: CutKind, kerf: Mm): boolean {
  let best = -1;
  let least = Infinity;
  for (let n = 0; n < rack.length; n++) {
    const rest = rack[n]!;
    if (!fits(piece, rest)) continue;
    const over = Math.min(rest.width - piece.width, rest.length - piece.length);
    if (over < least) [best, least] = [n, over];
  }
  if (best < 0) return false;
  const [rest] = rack.splice(best, 1) as [Rest];
  const beside = rest.width - piece.width - kerf;
  const behind = rest.length - piece.length - kerf;
  const rip = first === 'rip';
  keepRest(rack, beside, rip ? rest.length : piece.length);
  keepRest(rack, rip ? piece.width : rest.width, behind);
  return true;
}

/** Takes the widest rest of at least this length; undefined when there is none. */
export function takeLong(rack: Rest[], length: Mm): Rest | undefined {
  let best = -1;
  for (let n = 0; n < rack.length; n++) {
    if (rack[n]!.length >= length - SAME && (best < 0 || rack[n]!.width > rack[best]!.width)) best = n;
  }
  return best < 0 ? undefined : rack.splice(best, 1)[0];
}
