import type { Vec2 } from './vec.ts';

/** The corners of the least convex polygon around some points, counter-clockwise; fewer than three when they lie in line. */
export function hullOf(points: readonly Vec2[]): Vec2[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const spots = sorted.filter((p, i) => i === 0 || p[0] !== sorted[i - 1]![0] || p[1] !== sorted[i - 1]![1]);
  if (spots.length < 2) return spots;
  const half = (walk: readonly Vec2[]): Vec2[] => {
    const chain: Vec2[] = [];
    for (const p of walk) {
      while (chain.length > 1 && turn(chain[chain.length - 2]!, chain[chain.length - 1]!, p) <= 0) chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(spots), ...half([...spots].reverse())];
}

const turn = (a: Vec2, b: Vec2, c: Vec2): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
