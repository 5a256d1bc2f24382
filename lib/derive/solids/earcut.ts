import pack from 'earcut';

/**
 * Triangles of a flat polygon with holes.
 *
 * @param flat x and y of every corner, outer loop first.
 * @param holes the index of the first corner of each hole.
 * @returns three corner indices a triangle, all turning the same way as one another.
 */
export const earcut = (flat: readonly number[], holes: readonly number[] = []): number[] =>
  pack(flat as number[], holes as number[]);
