/** One wrong command line. In what it is given and what it says, OUT and FILES stand for folders of the test. */
export interface BadInput {
  readonly name: string;
  readonly args: readonly string[];
  /** Default 2. */
  readonly exit?: number;
  /** Parts of what is told on stderr, in this order. */
  readonly says: readonly string[];
}

/** Whether the parts stand in a text, one after the other; answers the first that does not. */
export function firstMissing(text: string, parts: readonly string[]): string | undefined {
  let from = 0;
  return parts.find((part) => {
    const at = text.indexOf(part, from);
    from = at + part.length;
    return at < 0;
  });
}
