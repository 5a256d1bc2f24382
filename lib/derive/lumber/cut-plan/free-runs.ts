import type { CutKind } from './cut-plan.ts';
import type { GridBoard, GridZone } from './grid.ts';

/** A stretch along a lane, in steps from the datum. */
export type Run = readonly [from: number, to: number];

/** The zones of a board, as lanes of one direction meet them. */
export interface LaneZones {
  /** Where lanes may start: behind a zone. */
  readonly starts: readonly number[];
  /** Stretches of a lane from `from` to `to` that touch no zone; undefined when it touches none. */
  free(from: number, to: number): readonly Run[] | undefined;
}

/** A zone across lanes (near to far) and along them (from to). */
interface Across {
  readonly near: number;
  readonly far: number;
  readonly along: Run;
}

/** Zones are bits of a mask: more of them cannot be told apart. */
export const MOST_ZONES = 30;

export function laneZones({ zones, length, width }: GridBoard, first: CutKind): LaneZones {
  if (zones.length > MOST_ZONES)
    throw new RangeError(`${zones.length} zones on a board; ${MOST_ZONES} can be told apart`);
  const rip = first === 'rip';
  const end = rip ? length : width;
  const across = zones.map((z: GridZone): Across => {
    return rip ? { near: z.y0, far: z.y1, along: [z.x0, z.x1] } : { near: z.x0, far: z.x1, along: [z.y0, z.y1] };
  });
  const known = new Map<number, readonly Run[]>();
  return {
    starts: across.map((z) => z.far),
    free(from, to) {
      let mask = 0;
      for (let q = 0; q < across.length; q++) {
        if (across[q]!.near < to && from < across[q]!.far) mask |= 1 << q;
      }
      if (mask === 0) return undefined;
      const runs =
        known.get(mask) ??
        between(
          across.filter((_, q) => (mask >> q) & 1).map((z) => z.along),
          end,
        );
      known.set(mask, runs);
      return runs;
    },
  };
}

/** What lies between the zones from 0 to the end. */
function between(zones: readonly Run[], end: number): Run[] {
  const free: Run[] = [];
  let from = 0;
  for (const [a, b] of [...zones].sort((x, y) => x[0] - y[0])) {
    if (a > from) free.push([from, a]);
    from = Math.max(from, b);
  }
  if (from < end) free.push([from, end]);
  return free;
}
