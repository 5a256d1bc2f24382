import { isRipped } from '../derive/lumber/ripped.ts';
import type { StripPlan } from '../derive/lumber/strip-plan/strip-plan.ts';
import type { Assembly } from '../model/assembly.ts';
import type { SliceBody } from '../model/body.ts';
import type { Part } from '../model/part.ts';
import type { LumberPlan } from './lumber-plan.ts';

type Slice = Part & { readonly body: SliceBody };

/** The boards that each piece comes from, by mark of the piece. */
export function boardsOfPieces(plan: LumberPlan, nominal: Assembly): ReadonlyMap<string, string> {
  const strips = plan.strips?.status.plan;
  return new Map([...(strips ? boardsOfStrips(strips, nominal) : []), ...boardsOfCuts(plan)]);
}

/** The same of the parts that are cut from what the strips leave over. */
export function boardsOfCuts({ cuts }: Pick<LumberPlan, 'cuts'>): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const { progress } of cuts) {
    for (const { board, placed } of progress.plan?.boards ?? []) for (const { part } of placed) found.set(part, board);
  }
  return found;
}

/** Strips go by their place from the left edge: where as many are planned as are drawn, each has the board of its place. */
function boardsOfStrips({ strips }: StripPlan, { parts }: Assembly): [string, string][] {
  const drawn = drawnStrips(parts);
  if (drawn.length !== strips.length) return [];
  return drawn.flatMap((pieces, k) => {
    const { show, bottom } = strips[k]!;
    const layered = pieces.some(isUnder);
    return pieces.flatMap((piece): [string, string][] => {
      if (isUnder(piece)) return bottom ? [[piece.mark, bottom.mark]] : [];
      return [[piece.mark, bottom && !layered ? `${show.mark} over ${bottom.mark}` : show.mark]];
    });
  });
}

const isUnder = ({ body }: Slice): boolean => body.top > 0;

/** The pieces of each strip, from the left edge; both halves of a board that lies over the center line are one strip. */
function drawnStrips(parts: readonly Part[]): Slice[][] {
  const slices = parts.filter((part): part is Slice => part.body.kind === 'slice');
  const strips = new Map<string, Slice[]>();
  for (const slice of slices.toSorted((a, b) => a.body.from - b.body.from)) {
    const name = isRipped(slice) ? 'over the center line' : `${slice.body.from}`;
    strips.set(name, [...(strips.get(name) ?? []), slice]);
  }
  return [...strips.values()];
}
