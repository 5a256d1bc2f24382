/** An opening in the skin of a solid. */
export interface Mouth {
  /** One index for each point of the ring that was opened. */
  readonly points: number[];
  /** Where an edge of the solid crosses the ring: the extra index that follows ring point k. */
  readonly crossings: ReadonlyMap<number, number>;
}
