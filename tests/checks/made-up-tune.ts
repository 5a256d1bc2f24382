import type { CheckContext, Tune } from '../../lib/derive/checks/check.ts';
import { handContext } from './contexts.ts';
import { boards, flat } from './trial-pieces.ts';

/** One number that a check may move, and the piece that is nothing but its value. */
export interface Lever {
  readonly now: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** Values that the rules refuse. */
  readonly refused?: (value: number) => boolean;
}

/** Values that were tried, by path, in their order. */
export type Tries = Map<string, number[]>;

const READ = /^value (\S+) (-?[\d.e+-]+)$/;

/** A context whose pieces are named after the lever that was moved: what a test measures of them is a function of it. */
export function madeUp(levers: Readonly<Record<string, Lever>>): {
  readonly context: CheckContext;
  readonly tries: Tries;
} {
  const plain = handContext(boards({ id: 'board', at: flat(0, 0, 0) }), 'mm');
  const tries: Tries = new Map();
  const named = (path: string, value: number): CheckContext => ({
    ...plain,
    assembly: { ...plain.assembly, title: `value ${path} ${value}` },
  });
  const tune: Tune = {
    value: (path) => levers[path]?.now,
    limits: (path) => levers[path]!,
    step: (path) => levers[path]!.step,
    say: (path, value) => `${path} ${value}`,
    moved(path, value) {
      const { min, max, refused } = levers[path]!;
      if (value < min || value > max) throw new RangeError(`${path} was tried at ${value}, beyond its limits`);
      tries.set(path, [...(tries.get(path) ?? []), value]);
      return refused?.(value) ? undefined : named(path, value);
    },
  };
  return { context: { ...plain, tune }, tries };
}

/** Which lever a tried piece has, and its value; undefined for the piece as it stands. */
export function readLever({ assembly }: CheckContext): { readonly path: string; readonly value: number } | undefined {
  const found = READ.exec(assembly.title);
  return found ? { path: found[1]!, value: Number(found[2]) } : undefined;
}
