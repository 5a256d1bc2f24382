/** Marks as one looks for them on the bench: figures by their value, then the rest by its letters. */
export const byMark = (a: string, b: string): number => {
  const [one, other] = [Number(a), Number(b)];
  const [isNumber, isOther] = [!Number.isNaN(one), !Number.isNaN(other)];
  if (isNumber && isOther && one !== other) return one - other;
  if (isNumber !== isOther) return isNumber ? -1 : 1;
  return a < b ? -1 : a > b ? 1 : 0;
};

/** Marks in that order with commas between; what stands for none. */
export const marksList = (marks: readonly string[], none = 'none'): string => marks.toSorted(byMark).join(', ') || none;
