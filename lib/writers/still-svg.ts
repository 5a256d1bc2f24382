import type { Picture } from '../derive/drawings/picture.ts';
import type { Rgb, SceneData } from '../derive/scene/scene-data.ts';
import type { Vec2 } from '../geometry/vec.ts';
import { formatNumber } from '../units/format-length.ts';
import { woodTones } from './still/wood-tones.ts';
import { escapeXml } from './svg/xml.ts';

export interface StillOptions {
  /** Read out for the picture. */
  readonly title: string;
  /** Set below it, bold: what must not be overlooked. */
  readonly warning?: string | undefined;
  /** Units of the picture across; default 1600. */
  readonly width?: number;
}

const number = (value: number): string => formatNumber(value, 1);

/** A still picture in the color of its wood, without lettering; larger or smaller by its view box alone. */
export function stillSvg(picture: Picture, data: SceneData, options: StillOptions): string {
  const { title, warning, width = 1600 } = options;
  const { at, tall } = stillScale(picture, width);
  const area = (loops: readonly (readonly Vec2[])[]): string => loops.map((loop) => `${path(loop.map(at))}z`).join('');
  const lines = (outline: boolean): string =>
    picture.lines
      .filter((line) => line.outline === outline)
      .map(({ from, to }) => path([at(from), at(to)]))
      .join('');
  const tones = woodTones(data);
  const foot = warning === undefined ? 0 : 64;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${number(tall + foot)}" role="img" aria-label="${escapeXml(title)}">`,
    `<title>${escapeXml(title)}</title>`,
    ...(picture.shadow.length > 0 ? [`<path d="${area(picture.shadow)}" fill="#000" fill-opacity=".09"/>`] : []),
    '<g shape-rendering="crispEdges" fill-rule="evenodd">',
    ...picture.fills.map(({ part, loops, tone }) => {
      const color = hex(tones(part, tone));
      return `<path d="${area(loops)}" fill="${color}"/>`;
    }),
    '</g>',
    '<g fill="none" stroke="#2a1c12" stroke-linecap="round">',
    `<path d="${lines(false)}" stroke-width="1" stroke-opacity=".55"/>`,
    `<path d="${lines(true)}" stroke-width="1.8" stroke-opacity=".8"/>`,
    '</g>',
    ...(warning === undefined
      ? []
      : [
          `<text x="${width / 2}" y="${number(tall + 36)}" font-family="sans-serif" font-size="28" font-weight="bold" text-anchor="middle" fill="#8c1d18">${escapeXml(warning)}</text>`,
        ]),
    '</svg>',
    '',
  ].join('\n');
}

/** Steps from point to point on a grid of whole units: half as long as places. */
function path(points: readonly Vec2[]): string {
  const grid = points.map(([x, y]) => [Math.round(x), Math.round(y)] as const);
  return grid
    .map(([x, y], k) => {
      const [fromX, fromY] = k === 0 ? [0, 0] : grid[k - 1]!;
      const [dx, dy] = [`${x - fromX}`, `${y - fromY}`];
      return `${k === 0 ? 'M' : k === 1 ? 'l' : dx.startsWith('-') ? '' : ' '}${dx}${dy.startsWith('-') ? '' : ' '}${dy}`;
    })
    .join('');
}

const hex = (color: Rgb): string => `#${color.map((c) => Math.round(c).toString(16).padStart(2, '0')).join('')}`;

/** Where a point of the view lies in a picture so wide, with some room around; y down. */
export function stillScale({ shadow, lines }: Picture, width: number) {
  const points = [...shadow.flat(), ...lines.flatMap(({ from, to }) => [from, to])];
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of points) {
    [left, right, low, high] = [Math.min(left, x), Math.max(right, x), Math.min(low, y), Math.max(high, y)];
  }
  const edge = 0.02 * width;
  // No taller than three quarters of its width, so that pictures of all views go side by side.
  const scale = Math.min((width - 2 * edge) / (right - left), (0.72 * width - 2 * edge) / (high - low));
  const side = (width - (right - left) * scale) / 2;
  return {
    tall: (high - low) * scale + 2 * edge,
    at: ([x, y]: Vec2): Vec2 => [(x - left) * scale + side, (high - y) * scale + edge],
  };
}
