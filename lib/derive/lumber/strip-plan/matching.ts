/**
 * Strips and bottom boards that fit each other, as bits: `fits[j]` the boards that serve strip j. Finds out by augmenting
 * paths whether every strip can have one of its own. Strips are added one by one; what held for the strips before is kept a row
 * a strip, so that a search can go back.
 */
export class Matching {
  /** Strip of each board, -1 free; row j is how things stand before strip j. */
  private readonly owners: Int8Array;
  private readonly boards: number;
  private seen = 0;

  constructor(boards: number, strips: number) {
    this.boards = boards;
    this.owners = new Int8Array(boards * (strips + 1));
  }

  /** Nothing is served before strip `from`. */
  start(from: number): void {
    this.owners.fill(-1, from * this.boards, (from + 1) * this.boards);
  }

  /** Strip j can be served besides those before it; one that needs no board always can. */
  add(fits: Int32Array, j: number, needsNone: boolean): boolean {
    const { boards, owners } = this;
    owners.copyWithin((j + 1) * boards, j * boards, (j + 1) * boards);
    if (needsNone) return true;
    this.seen = 0;
    return this.augment(fits, j, (j + 1) * boards);
  }

  private augment(fits: Int32Array, j: number, row: number): boolean {
    for (let open = fits[j]! & ~this.seen; open !== 0; open = fits[j]! & ~this.seen) {
      const board = 31 - Math.clz32(open & -open);
      this.seen |= 1 << board;
      const owner = this.owners[row + board]!;
      if (owner < 0 || this.augment(fits, owner, row)) {
        this.owners[row + board] = j;
        return true;
      }
    }
    return false;
  }
}
