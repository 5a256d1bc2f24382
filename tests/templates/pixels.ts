import type { PdfWord, Raster } from '../readers/pdf-tools.ts';

export const DPI = 300;
/** Pixels in a millimetre. */
export const PX = DPI / 25.4;

export type Pixel = readonly [x: number, y: number];

const isInk = ({ width, height, gray }: Raster, x: number, y: number): boolean =>
  x >= 0 && y >= 0 && x < width && y < height && gray[y * width + x]! < 160;

/** From a pixel of ink, how far ink goes on in one direction. */
function reach(raster: Raster, [x, y]: Pixel, dx: number, dy: number): number {
  let n = 0;
  while (isInk(raster, x + (n + 1) * dx, y + (n + 1) * dy)) n++;
  return n;
}

/** Middle of ink along one axis in a band, weighted by how dark it is: better than a pixel. */
export function inkMiddle(
  raster: Raster,
  axis: 'x' | 'y',
  around: Pixel,
  half: number,
  from: number,
  to: number,
): number {
  let [sum, weight] = [0, 0];
  for (let along = from; along <= to; along++) {
    for (let by = -half; by <= half; by++) {
      const [x, y] = axis === 'x' ? [around[0] + by, along] : [along, around[1] + by];
      const dark = 255 - (raster.gray[y * raster.width + x] ?? 255);
      sum += dark * (axis === 'x' ? x : y);
      weight += dark;
    }
  }
  return sum / weight + 0.5;
}

/** A cross with arms of 5 mm as it was found in the pixels. */
export interface FoundCross {
  readonly at: Pixel;
  readonly number: string;
}

/** Every cross of a page with the number that stands to its upper right. */
export function findCrosses(raster: Raster, words: readonly PdfWord[]): FoundCross[] {
  const arm = 5 * PX;
  const found: FoundCross[] = [];
  for (let y = 0; y < raster.height; y++) {
    for (let x = 0; x < raster.width; x++) {
      if (!isInk(raster, x, y)) continue;
      const right = reach(raster, [x, y], 1, 0);
      if (Math.abs(right - 2 * arm) < 3 && !isInk(raster, x - 1, y)) {
        const middle: Pixel = [Math.round(x + right / 2), y];
        const [up, down] = [reach(raster, middle, 0, -1), reach(raster, middle, 0, 1)];
        if (Math.abs(up - arm) < 4 && Math.abs(down - arm) < 4) found.push(refined(raster, middle, words));
      }
      x += right;
    }
  }
  return found.filter((one, i) => found.findIndex((other) => near(one.at, other.at)) === i);
}

const near = (a: Pixel, b: Pixel): boolean => Math.hypot(a[0] - b[0], a[1] - b[1]) < 10;

/** Middles of the two lines from their arms outside the ring. */
function refined(raster: Raster, rough: Pixel, words: readonly PdfWord[]): FoundCross {
  const [inner, outer] = [Math.round(3.2 * PX), Math.round(4.6 * PX)];
  const [x, y] = rough;
  const at: Pixel = [
    (inkMiddle(raster, 'x', rough, 4, y - outer, y - inner) + inkMiddle(raster, 'x', rough, 4, y + inner, y + outer)) /
      2,
    (inkMiddle(raster, 'y', rough, 4, x - outer, x - inner) + inkMiddle(raster, 'y', rough, 4, x + inner, x + outer)) /
      2,
  ];
  const scale = DPI / 72;
  const number = words.find(
    ({ text, left, bottom }) =>
      /^\d+$/.test(text) &&
      Math.abs(left * scale - at[0] - 2.5 * PX) < 1.5 * PX &&
      Math.abs(bottom * scale - at[1]) < 4 * PX,
  );
  return { at, number: number?.text ?? '?' };
}

/** Middles of lines 0.5 mm wide that run straight for a length, by their place along the other axis. */
export function wideLines(raster: Raster, axis: 'x' | 'y', length: number): number[] {
  const [across, along] = axis === 'x' ? [raster.width, raster.height] : [raster.height, raster.width];
  const ink = (a: number, b: number): boolean => (axis === 'x' ? isInk(raster, a, b) : isInk(raster, b, a));
  const runs = Array.from({ length: across }, (_, a) => longest((b) => ink(a, b), along));
  const found: number[] = [];
  for (let a = 0; a < across; ) {
    let n = 0;
    while (a + n < across && runs[a + n]!.size >= length * PX) n++;
    if (n >= 4 && n <= 8) {
      const { from, size } = runs[a + Math.floor(n / 2)]!;
      const middle = a + Math.floor(n / 2);
      const around: Pixel = axis === 'x' ? [middle, 0] : [0, middle];
      found.push(inkMiddle(raster, axis, around, 6, from + Math.round(size * 0.4), from + Math.round(size * 0.6)));
    }
    a += Math.max(1, n);
  }
  return found;
}

function longest(ink: (b: number) => boolean, count: number): { from: number; size: number } {
  let best = { from: 0, size: 0 };
  for (let b = 0, from = 0; b <= count; b++) {
    if (b < count && ink(b)) continue;
    if (b - from > best.size) best = { from, size: b - from };
    from = b + 1;
  }
  return best;
}

/** Where ink begins and ends in a band of rows or columns, from a place on without a gap. */
export function inkRun(raster: Raster, axis: 'x' | 'y', start: number, band: readonly [number, number]): number {
  const has = (a: number): boolean => {
    for (let b = band[0]; b <= band[1]; b++) {
      if (axis === 'x' ? isInk(raster, a, b) : isInk(raster, b, a)) return true;
    }
    return false;
  };
  const step = axis === 'x' ? 1 : -1;
  let from = Math.round(start);
  while (!has(from)) from += step;
  let to = from;
  while (has(to + step)) to += step;
  return Math.abs(to - from) + 1;
}
