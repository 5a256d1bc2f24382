/** Two strips that come from one board, ripped on the center line and glued back: their notes say so. */
export const isRipped = ({ notes }: { readonly notes: readonly string[] }): boolean =>
  notes.some((note) => note.includes('ripped on the center line'));
