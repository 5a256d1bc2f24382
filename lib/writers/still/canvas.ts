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
  // For every row what is painted there, in its order: from this pixel, up to that one, the color as one number.
  const rows = Array.from({ length: height }, (): number[] => []);
  const crossings = Array.from({ length: height }, (): number[] => []);
  return {
    fill(loops, [r, g, b]) {
      const color = ((r & 255) << 16) | ((g & 255) << 8) | (b & 255);
      const [first, last] = putCrossings(loops, crossings);
      for (let row = first; row < last; row++) {
        const across = crossings[row]!;
        if (across.length > 2) across.sort((p, q) => p - q);
        for (let k = 0; k + 1 < across.length; k += 2) {
          const from = Math.min(across[k]!, across[k + 1]!);
          const to = Math.max(across[k]!, across[k + 1]!);
          rows[row]!.push(Math.max(0, Math.ceil(from - 0.5)), Math.min(width, Math.ceil(to - 0.5)), color);
        }
        across.length = 0;
      }
    },
    smaller: (times) => mean(rows, width, times),
  };
}

/** Puts down for every row of pixels where its middle line crosses the loops; answers the rows that have such places. */
function putCrossings(loops: readonly (readonly Vec2[])[], crossings: readonly number[][]): Vec2 {
  let [least, most] = [crossings.length, 0];
  for (const loop of loops) {
    let p = loop.at(-1)!;
    for (const q of loop) {
      const [top, end] = p[1] < q[1] ? [p, q] : [q, p];
      const first = Math.max(0, Math.ceil(top[1] - 0.5));
      const last = Math.min(crossings.length, Math.ceil(end[1] - 0.5));
      const lean = end[0] - top[0];
      const tall = end[1] - top[1];
      for (let row = first; row < last; row++) crossings[row]!.push(top[0] + ((row + 0.5 - top[1]) / tall) * lean);
      if (first < last) [least, most] = [Math.min(least, first), Math.max(most, last)];
      p = q;
    }
  }
  return [least, most];
}

const WHITE = 0xffffff;

/** Paints so many rows at a time, and takes the mean of every square of pixels. */
function mean(rows: readonly (readonly number[])[], width: number, times: number): Uint8Array {
  const [wide, tall] = [Math.floor(width / times), Math.floor(rows.length / times)];
  const means = new Uint8Array(3 * wide * tall).fill(255);
  const strip = Array.from({ length: times }, () => new Uint32Array(width));
  for (let y = 0; y < tall; y++) {
    const here = rows.slice(y * times, (y + 1) * times);
    if (here.every((spans) => spans.length === 0)) continue;
    here.forEach((spans, row) => {
      paint(spans, strip[row]!);
    });
    putMeans(strip, means.subarray(3 * y * wide, 3 * (y + 1) * wide));
  }
  return means;
}

/** One row of pixels: white, and over it what is painted there. */
function paint(spans: readonly number[], row: Uint32Array): void {
  row.fill(WHITE);
  for (let k = 0; k < spans.length; k += 3) {
    const to = spans[k + 1]!;
    const color = spans[k + 2]!;
    for (let at = spans[k]!; at < to; at++) row[at] = color;
  }
}

/** Writes the mean of each square of pixels, three bytes each. */
function putMeans(strip: readonly Uint32Array[], means: Uint8Array): void {
  const times = strip.length;
  const count = times * times;
  for (let at = 0, left = 0; at < means.length; at += 3, left += times) {
    let r = 0;
    let g = 0;
    let b = 0;
    for (const row of strip) {
      for (let x = left; x < left + times; x++) {
        const color = row[x]!;
        r += color >> 16;
        g += (color >> 8) & 255;
        b += color & 255;
      }
    }
    means[at] = Math.round(r / count);
    means[at + 1] = Math.round(g / count);
    means[at + 2] = Math.round(b / count);
  }
}
