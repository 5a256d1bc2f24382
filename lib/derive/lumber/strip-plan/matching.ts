/**
 * Strips and bottom boards that fit each other, as bits: `fits[j]` the boards that serve strip j. Finds out by augmenting
 * paths whether every strip can have one of its own.
 */
export class Matching {
  /** Strip of each board, -1 free. */
  private readonly owner: Int8Array;
  private seen = 0;

  constructor(boards: number) {
    this.owner = new Int8Array(Math.max(1, boards)).fill(-1);
  }

  /** Strips `from` to `to` (not included) can all be served; a strip whose `fits` is 0 fails. */
  serves(fits: Int32Array, from: number, to: number, skip: readonly boolean[]): boolean {
    this.owner.fill(-1);
    for (let j = from; j < to; j++) {
      if (skip[j]) continue;
      this.seen = 0;
      if (!this.augment(fits, j)) return false;
    }
    return true;
  }

  private augment(fits: Int32Array, j: number): boolean {
    for (let open = fits[j]! & ~this.seen; open !== 0; open = fits[j]! & ~this.seen) {
      const board = 31 - Math.clz32(open & -open);
      this.seen |= 1 << board;
      const owner = this.owner[board]!;
      if (owner < 0 || this.augment(fits, owner)) {
        this.owner[board] = j;
        return true;
      }
    }
    return false;
  }
}
