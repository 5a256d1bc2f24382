/** Names longer than this are not compared. */
const LONGEST = 80;

/** The candidate that was probably meant, if one is near enough; the first of equals. */
export function nearMiss(typed: string, candidates: Iterable<string>): string | undefined {
  const wanted = plain(typed);
  if (wanted.length === 0 || wanted.length > LONGEST) return undefined;
  let best: string | undefined;
  let least = allowed(wanted) + 1;
  for (const candidate of candidates) {
    const distance = editDistance(wanted, plain(candidate));
    if (distance < least) {
      best = candidate;
      least = distance;
    }
  }
  return best;
}

/** The path that was probably meant: nearly the same path, or the same name in another group. */
export function nearMissPath(typed: string, paths: readonly string[]): string | undefined {
  const near = nearMiss(typed, paths);
  if (near !== undefined) return near;
  const last = nearMiss(lastName(typed), paths.map(lastName));
  return paths.find((path) => lastName(path) === last);
}

/** Edits that turn one text into the other: insert, delete, replace, swap neighbors. */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? before[j - 2]! + 1 : replaced;
      row.push(Math.min(above[j]! + 1, row[j - 1]! + 1, replaced, swapped));
    }
    before = above;
    above = row;
  }
  return above[b.length]!;
}

/** One slip in a short name, three in a long one. */
const allowed = (name: string): number => (name.length <= 4 ? 1 : name.length <= 8 ? 2 : 3);

const plain = (name: string): string => name.toLowerCase().replace(/[-_ ]/g, '');

const lastName = (path: string): string => path.slice(path.lastIndexOf('.') + 1);
