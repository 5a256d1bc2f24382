/** Handles of everything a file refers to from elsewhere; the rest take theirs while they are written. */
export interface Handles {
  /** The next free handle of the document. */
  readonly next: () => string;
  readonly textStyle: string;
  readonly modelSpace: string;
  readonly paperSpace: string;
  readonly modelLayout: string;
  readonly paperLayout: string;
  readonly plotStyle: string;
}

/** A counter of one document: the same drawing gets the same handles. */
export function handles(): Handles {
  let last = 0;
  const next = (): string => {
    last += 1;
    return last.toString(16).toUpperCase();
  };
  return {
    next,
    textStyle: next(),
    modelSpace: next(),
    paperSpace: next(),
    modelLayout: next(),
    paperLayout: next(),
    plotStyle: next(),
  };
}
