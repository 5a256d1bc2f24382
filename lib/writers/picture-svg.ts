import type { Picture } from '../derive/drawings/picture.ts';
import { NARROW, WIDE } from '../drawing/layers.ts';
import type { Vec2 } from '../geometry/vec.ts';
import { formatNumber } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import { escapeXml } from './svg/xml.ts';

export interface PictureSvgOptions {
  /** Set below the picture and read out for it. */
  readonly title: string;
  /** One more line: the size over all. */
  readonly caption?: string;
  /** A last line, set bold: what must not be overlooked. */
  readonly warning?: string;
  /** Paper mm that the picture itself may take; it becomes as large as both allow. */
  readonly width?: Mm;
  readonly height?: Mm;
  /** Paper mm of white around it. */
  readonly margin?: Mm;
}

/** Half a letter or A4 sheet, lying. */
const PICTURE_DEFAULTS = { width: 240, height: 160, margin: 6 } as const;

/** Wood in the shade and in the light, the floor below it, and the lines. */
const SHADE: Rgb = [188, 152, 110];
const LIT: Rgb = [250, 236, 210];
const FLOOR = '#ebebe8';
const INK = '#1a1a1a';

/** Paper mm: capitals of title and caption, and the way from one baseline to the next. */
const TITLE = 3.5;
const CAPTION = 2.5;
const LEADING = 6.5;

/** Font size to the height of a capital, in common plain faces. */
const FONT_SIZE = 1 / 0.72;

/** Paper mm by which fills reach under the lines around them, so that no white shows between two. */
const SEAM = 0.1;

type Rgb = readonly [number, number, number];

const number = (value: number): string => formatNumber(value, 2);

/**
 * A picture as SVG in true millimetres: outlines wide, edges within a part narrow.
 *
 * @throws RangeError for a picture with nothing in it.
 */
export function writePictureSvg(picture: Picture, options: PictureSvgOptions): string {
  const { title, caption, warning, width, height, margin } = {
    caption: '',
    warning: '',
    ...PICTURE_DEFAULTS,
    ...options,
  };
  if (picture.lines.length === 0) throw new RangeError(`the picture ${JSON.stringify(title)} has nothing in it`);
  const points = [...picture.shadow.flat(), ...picture.lines.flatMap((line) => [line.from, line.to])];
  const [left, right] = range(points.map((p) => p[0]));
  const [low, high] = range(points.map((p) => p[1]));
  const scale = Math.min(width / (right - left), height / (high - low));
  const [wide, tall] = [(right - left) * scale, (high - low) * scale];
  const at = ([x, y]: Vec2): string => `${number((x - left) * scale)} ${number((high - y) * scale)}`;
  const area = (loops: readonly (readonly Vec2[])[]): string =>
    loops.map((loop) => `M${loop.map(at).join('L')}Z`).join('');
  const strokes = (outline: boolean, strokeWidth: Mm): string[] => {
    const lines = picture.lines.filter((line) => line.outline === outline);
    const path = lines.map((line) => `M${at(line.from)}L${at(line.to)}`).join('');
    return path === '' ? [] : [`<path d="${path}" stroke-width="${strokeWidth}"/>`];
  };

  const lettering = [
    { text: title, size: TITLE, bold: false },
    { text: caption, size: CAPTION, bold: false },
    { text: warning, size: CAPTION, bold: true },
  ].filter(({ text }) => text !== '');
  const paper = [wide + 2 * margin, tall + 2 * margin + lettering.length * LEADING].map(number).join(' ');
  const [paperWidth, paperHeight] = paper.split(' ');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${paperWidth}mm" height="${paperHeight}mm" ` +
      `viewBox="${number(-margin)} ${number(-margin)} ${paper}" role="img">`,
    `<title>${escapeXml(title)}</title>`,
    ...picture.shadow.map((hull) => `<path d="${area([hull])}" fill="${FLOOR}"/>`),
    `<g stroke-width="${SEAM}" stroke-linejoin="round" fill-rule="evenodd">`,
    ...picture.fills.map(({ loops, tone }) => {
      const color = colorOf(tone);
      return `<path d="${area(loops)}" fill="${color}" stroke="${color}"/>`;
    }),
    '</g>',
    `<g fill="none" stroke="${INK}" stroke-linecap="round">`,
    ...strokes(false, NARROW),
    ...strokes(true, WIDE),
    '</g>',
    ...lettering.map(({ text, size, bold }, line) => {
      const [x, y] = [number(wide / 2), number(tall + margin + (line + 0.5) * LEADING)];
      const font = `font-family="sans-serif" font-size="${number(size * FONT_SIZE)}"${bold ? ' font-weight="bold"' : ''}`;
      return `<text x="${x}" y="${y}" ${font} text-anchor="middle" fill="${INK}">${escapeXml(text)}</text>`;
    }),
    '</svg>',
    '',
  ].join('\n');
}

function range(values: readonly number[]): readonly [number, number] {
  let [least, most] = [Infinity, -Infinity];
  for (const value of values) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return [least, most];
}

/** `#rrggbb` of wood at a tone. */
function colorOf(tone: number): string {
  const channels = SHADE.map((dark, k) => Math.round(dark + (LIT[k]! - dark) * tone));
  return `#${channels.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}
