/** Whatever waits with the least key first; what came last comes first among equals, which goes deep early, so that a search repeats itself. */
export class Heap<T extends { readonly key: number }> {
  private readonly items: T[] = [];
  private readonly stamps: number[] = [];
  private stamp = 0;

  get size(): number {
    return this.items.length;
  }

  /** The least key, Infinity when nothing waits. */
  get least(): number {
    return this.items.length === 0 ? Number.POSITIVE_INFINITY : this.items[0]!.key;
  }

  push(item: T): void {
    this.items.push(item);
    this.stamps.push(this.stamp++);
    let at = this.items.length - 1;
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (!this.before(at, up)) break;
      this.swap(at, up);
      at = up;
    }
  }

  pop(): T {
    const first = this.items[0]!;
    const last = this.items.pop()!;
    const stamp = this.stamps.pop()!;
    if (this.items.length > 0) {
      this.items[0] = last;
      this.stamps[0] = stamp;
      this.sink();
    }
    return first;
  }

  private sink(): void {
    const count = this.items.length;
    for (let at = 0; ; ) {
      let low = at;
      for (const down of [2 * at + 1, 2 * at + 2]) if (down < count && this.before(down, low)) low = down;
      if (low === at) return;
      this.swap(at, low);
      at = low;
    }
  }

  private before(a: number, b: number): boolean {
    const gap = this.items[a]!.key - this.items[b]!.key;
    return gap < 0 || (gap === 0 && this.stamps[a]! > this.stamps[b]!);
  }

  private swap(a: number, b: number): void {
    [this.items[a], this.items[b]] = [this.items[b]!, this.items[a]!];
    [this.stamps[a], this.stamps[b]] = [this.stamps[b]!, this.stamps[a]!];
  }
}
