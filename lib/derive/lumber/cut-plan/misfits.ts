import type { Misfit } from './cut-search.ts';
import type { Grid } from './grid.ts';
import type { Pricer } from './pricer.ts';

/** Parts that fit no board even alone. */
export function misfits(grid: Grid, pricer: Pricer): Misfit[] {
  return grid.parts.flatMap((part, i) => (part.count > 0 && !fitsSome(grid, pricer, i) ? misfit(grid, i) : []));
}

function fitsSome(grid: Grid, pricer: Pricer, part: number): boolean {
  const only = grid.parts.map((_, i) => (i === part ? 1 : 0));
  pricer.prepare(only, only);
  return grid.boards.some((_, b) => pricer.best(b) > 0);
}

/** How far the part is from the board that comes nearest: least missing area, then least missing length. */
function nearestBoard({ parts, boards }: Grid, part: number) {
  const { length, width } = parts[part]!;
  const missing = boards.map((b) => ({
    id: b.ids[0]!,
    short: Math.max(0, length - b.length),
    narrow: Math.max(0, width - b.width),
  }));
  const size = (m: { short: number; narrow: number }): number => m.short * width + m.narrow * length;
  return missing.sort((x, y) => size(x) - size(y) || x.short - y.short)[0];
}

function misfit(grid: Grid, part: number): Misfit[] {
  const { step } = grid;
  const { length, width, members } = grid.parts[part]!;
  const near = nearestBoard(grid, part);
  const [short, narrow] = [(near?.short ?? 0) * step, (near?.narrow ?? 0) * step];
  return members
    .filter((m) => m.count > 0)
    .map(({ id, count }) => ({
      part: id,
      count,
      reason: near && short === 0 && narrow === 0 ? 'zones in the way' : 'too large',
      short,
      narrow,
      ...(near ? { nearest: near.id } : {}),
      wanted: { length: length * step, width: width * step },
    }));
}
