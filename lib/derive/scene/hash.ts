/** FNV-1a over 32-bit words (Fowler, Noll, Vo), from a given start. */
export function hashWords(words: Uint32Array, start = 0x811c9dc5): number {
  let hash = start;
  for (const word of words) hash = Math.imul(hash ^ word, 0x01000193);
  return (hash ^ (hash >>> 15)) >>> 0;
}

/** A number from 0 to 1 that depends on nothing but a name and a number. */
export function chanceOf(name: string, which: number): number {
  let hash = 0x811c9dc5;
  for (const text of [name, String(which)]) {
    for (const char of text) hash = Math.imul(hash ^ char.codePointAt(0)!, 0x01000193);
  }
  return (Math.imul((hash ^ (hash >>> 15)) >>> 0, 0x9e3779b1) >>> 0) / 2 ** 32;
}
