import type { GridZone } from './grid.ts';

/**
 * So many zones at most, by covering the two that lie best together with one until they are few enough. No less is avoided
 * than before, so a plan stays clear of every zone.
 */
export function mergeZones(zones: readonly GridZone[], most: number): GridZone[] {
  const now = [...zones];
  while (now.length > most) {
    const [i, j] = nearestPair(now);
    const both = cover(now[i]!, now[j]!);
    now.splice(j, 1);
    now.splice(i, 1, both);
  }
  return now;
}

const area = ({ x0, x1, y0, y1 }: GridZone): number => (x1 - x0) * (y1 - y0);

const cover = (a: GridZone, b: GridZone): GridZone => ({
  x0: Math.min(a.x0, b.x0),
  x1: Math.max(a.x1, b.x1),
  y0: Math.min(a.y0, b.y0),
  y1: Math.max(a.y1, b.y1),
});

/** The two, the earlier first, whose cover takes the least clear wood; of equals the first. */
function nearestPair(zones: readonly GridZone[]): readonly [number, number] {
  let [best, pair] = [Infinity, [0, 1] as readonly [number, number]];
  for (let i = 0; i < zones.length; i++) {
    for (let j = i + 1; j < zones.length; j++) {
      const lost = area(cover(zones[i]!, zones[j]!)) - area(zones[i]!) - area(zones[j]!);
      if (lost < best) [best, pair] = [lost, [i, j]];
    }
  }
  return pair;
}
