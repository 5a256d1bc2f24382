export interface Timing {
  /** ms. */
  readonly first: number;
  readonly median: number;
  readonly fastest: number;
}

/** Times a function: the first call, then warm rounds. */
export function time(run: () => void, rounds: number): Timing {
  const once = (): number => {
    const start = performance.now();
    run();
    return performance.now() - start;
  };
  const first = once();
  const times = Array.from({ length: rounds }, once).sort((a, b) => a - b);
  return { first, median: times[rounds >> 1]!, fastest: times[0]! };
}

export const ms = (value: number): string => `${value.toFixed(value < 10 ? 2 : 1)} ms`;
