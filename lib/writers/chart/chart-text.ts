import { CHAR_WIDTH } from '../../drawing/text-size.ts';
import { formatNumber } from '../../units/format-length.ts';
import { escapeXml } from '../svg/xml.ts';
import { CHART, INK } from './chart-look.ts';

/** Height of a capital to the font size, in common plain faces. */
const CAPITAL = 0.72;

/** Advance of a character in font sizes: rather too much than too little. */
const ADVANCE = CHAR_WIDTH * CAPITAL;

/** Width of a line of text, px. */
export const textWidth = (text: string, size: number = CHART.text): number => [...text].length * ADVANCE * size;

/** A coordinate. */
export const px = (value: number): string => formatNumber(value, 1);

export interface TextStyle {
  readonly size?: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly fill?: string;
  readonly bold?: boolean;
  /** Reads from below upwards. */
  readonly upright?: boolean;
}

/** One line of text on its baseline. */
export function textAt(text: string, x: number, y: number, style: TextStyle = {}): string {
  const { size = CHART.text, anchor = 'start', fill = INK, bold = false, upright = false } = style;
  const place = upright ? `transform="translate(${px(x)} ${px(y)}) rotate(-90)"` : `x="${px(x)}" y="${px(y)}"`;
  const weight = bold ? ' font-weight="bold"' : '';
  return `<text ${place} font-size="${size}" text-anchor="${anchor}" fill="${fill}"${weight}>${escapeXml(text)}</text>`;
}

/** Words in lines no wider than this; a single word may be wider. */
export function linesOf(text: string, width: number, size: number = CHART.text): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && textWidth(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
