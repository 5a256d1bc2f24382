/** Marks written out again: "T1, T4 to T6" is T1, T4, T5, T6. Runs count in the number between the letters. */
export function marksInText(text: string): string[] {
  return text.split(', ').flatMap((run) => {
    const [first, last, ...more] = run.split(' to ');
    if (!first || more.length > 0) throw new Error(`"${run}" is neither a mark nor a run of marks`);
    if (!last) return [first];
    const [, head, from, tail] = /^(\D*)(\d+)(\D*)$/.exec(first)!;
    const [, otherHead, to, otherTail] = /^(\D*)(\d+)(\D*)$/.exec(last)!;
    if (head !== otherHead || tail !== otherTail) throw new Error(`"${run}" runs from one name to another`);
    return Array.from({ length: Number(to) - Number(from) + 1 }, (_, k) => `${head}${Number(from) + k}${tail}`);
  });
}

/** Inches as the lists write them, `21 19/32`, as a number. */
export function inchesInText(text: string): number {
  const found = /^(?:(\d+)(?: |$))?(?:(\d+)\/(\d+))?$/.exec(text);
  if (!found || text === '') throw new Error(`"${text}" is no number of inches`);
  const [, whole = '0', top = '0', bottom = '1'] = found;
  return Number(whole) + Number(top) / Number(bottom);
}
