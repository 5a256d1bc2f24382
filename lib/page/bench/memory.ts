import type { UnitSystem } from '../../units/format-length.ts';
import type { Bench } from './bench.ts';
import type { Looks } from './looks.ts';

/** What a page takes over a reload, within its tab. */
export interface Memory {
  /** Path and text of every edit. */
  readonly edits: readonly (readonly [string, string])[];
  readonly units: UnitSystem;
  readonly looks: Looks;
  readonly open: readonly string[];
  readonly scroll: number;
}

/** Another file, or the same made with other values, starts anew. */
const keyOf = ({ set }: Bench): string => `bench ${location.pathname} ${JSON.stringify(set)}`;

export function remember(bench: Bench, memory: Memory): void {
  try {
    sessionStorage.setItem(keyOf(bench), JSON.stringify(memory));
  } catch {
    // A browser that keeps nothing for files: the page then starts anew.
  }
}

/** Edits of parameters that the design does not have any more are left out. */
export function recall(bench: Bench): Memory | undefined {
  try {
    const text = sessionStorage.getItem(keyOf(bench));
    if (text === null) return undefined;
    const memory = JSON.parse(text) as Memory;
    return { ...memory, edits: memory.edits.filter(([path]) => bench.design.params.table.has(path)) };
  } catch {
    return undefined;
  }
}
