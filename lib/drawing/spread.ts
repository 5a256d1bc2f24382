/** Something that wants its middle at a place on a line and takes a width there. */
export interface Wish {
  readonly middle: number;
  readonly width: number;
}

interface Cluster {
  readonly members: readonly Wish[];
  readonly middle: number;
  readonly width: number;
}

const join = (a: Cluster, b: Cluster): Cluster => {
  const members = [...a.members, ...b.members];
  const middle = members.reduce((sum, wish) => sum + wish.middle, 0) / members.length;
  return { members, middle, width: a.width + b.width };
};

const touch = (a: Cluster, b: Cluster): boolean => a.middle + a.width / 2 > b.middle - b.width / 2;

/** Middles moved apart so that the widths do not overlap, in the order given, each crowd around its common middle. */
export function spread(wishes: readonly Wish[]): readonly number[] {
  const clusters: Cluster[] = [];
  for (const wish of wishes) {
    let last: Cluster = { members: [wish], ...wish };
    for (let before = clusters.at(-1); before && touch(before, last); before = clusters.at(-1)) {
      clusters.pop();
      last = join(before, last);
    }
    clusters.push(last);
  }
  return clusters.flatMap((cluster) => {
    let start = cluster.middle - cluster.width / 2;
    return cluster.members.map(({ width }) => {
      start += width;
      return start - width / 2;
    });
  });
}
