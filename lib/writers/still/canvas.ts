import type { Rgb } from '../../derive/scene/scene-data.ts';
import type { Vec2 } from '../../geometry/vec.ts';

/** Pixels to paint on: white at first, three bytes each, from above downwards. */
export interface Canvas {
  /** Fills the pixels whose middle lies inside the loops, by the even-odd rule; y down. */
  fill(loops: readonly (readonly Vec2[])[], color: Rgb): void;
  /** The mean of every square of so many pixels. */
  smaller(times: number): Uint8Array;
}

export function canvas(width: number, height: number): Canvas {
  const pixels = new Uint8Array(3 * width * height).fill(255);
  return {
    fill(loops, [r, g, b]) {
      for (const [row, crossings] of crossingsOf(loops, height)) {
        crossings.sort((p, q) => p - q);
        for (let k = 0; k + 1 < crossings.length; k += 2) {
          const from = Math.max(0, Math.ceil(crossings[k]! - 0.5));
          const to = Math.min(width, Math.ceil(crossings[k + 1]! - 0.5));
          for (let at = 3 * (row * width + from); at < 3 * (row * width + to); at += 3) {
            pixels[at] = r;
            pixels[at + 1] = g;
            pixels[at + 2] = b;
          }
        }
      }
    },
    smaller: (times) => mean(pixels, width, height, times),
  };
}

/** For every row of pixels where its middle line crosses the loops. */
function crossingsOf(loops: readonly (readonly Vec2[])[], height: number): Map<number, number[]> {
  const rows = new Map<number, number[]>();
  for (const loop of loops) {
    loop.forEach((p, k) => {
      const q = loop[(k + 1) % loop.length]!;
      const [top, end] = p[1] < q[1] ? [p, q] : [q, p];
      const last = Math.min(height, Math.ceil(end[1] - 0.5));
      for (let row = Math.max(0, Math.ceil(top[1] - 0.5)); row < last; row++) {
        const x = top[0] + ((row + 0.5 - top[1]) / (end[1] - top[1])) * (end[0] - top[0]);
        const list = rows.get(row);
        if (list) list.push(x);
        else rows.set(row, [x]);
      }
    });
  }
  return rows;
}

function mean(pixels: Uint8Array, width: number, height: number, times: number): Uint8Array {
  const [wide, tall] = [Math.floor(width / times), Math.floor(height / times)];
  const sums = new Uint32Array(3 * wide * tall);
  for (let y = 0; y < tall * times; y++) {
    const row = Math.floor(y / times) * wide;
    for (let x = 0; x < wide * times; x++) {
      const from = 3 * (y * width + x);
      const to = 3 * (row + Math.floor(x / times));
      sums[to]! += pixels[from]!;
      sums[to + 1]! += pixels[from + 1]!;
      sums[to + 2]! += pixels[from + 2]!;
    }
  }
  const means = new Uint8Array(sums.length);
  for (let k = 0; k < sums.length; k++) means[k] = Math.round(sums[k]! / (times * times));
  return means;
}
