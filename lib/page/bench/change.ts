/** A text before and after; the same on both sides where nothing changed. */
export interface Change {
  readonly name: string;
  readonly before: string;
  readonly after: string;
}

export interface Named {
  readonly name: string;
  readonly text: string;
}

/** What differs between two lists of named texts; what only one of them has stands against nothing. */
export function changesOf(before: readonly Named[], after: readonly Named[]): readonly Change[] {
  const old = new Map(before.map(({ name, text }) => [name, text]));
  const names = new Set(after.map(({ name }) => name));
  return [
    ...after.map(({ name, text }) => ({ name, before: old.get(name) ?? NONE, after: text })),
    ...before.filter(({ name }) => !names.has(name)).map(({ name, text }) => ({ name, before: text, after: NONE })),
  ].filter((change) => change.before !== change.after);
}

const NONE = 'none';
