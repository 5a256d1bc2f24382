/** Texts that were given for parameters beside the design, by path, as they were typed. */
export type Edits = ReadonlyMap<string, string>;

export const NO_EDITS: Edits = new Map();

/** The edits with one text more, or another one; undefined puts the value of the design back. */
export function withEdit(edits: Edits, path: string, text: string | undefined): Edits {
  const next = new Map(edits);
  if (text === undefined) next.delete(path);
  else next.set(path, text);
  return next;
}

export const sameEdits = (a: Edits, b: Edits): boolean =>
  a.size === b.size && [...a].every(([path, text]) => b.get(path) === text);
