import { formatInches } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import type { Entity } from './drawing.ts';
import type { Pt } from './entity.ts';
import { heightThatFits, linesWithin } from './fit-text.ts';
import { LAYERS } from './layers.ts';
import type { PaperSet } from './paper.ts';
import { projectionSymbol } from './projection-symbol.ts';
import type { SheetHeading } from './sheet.ts';

/** Size of the title block in paper mm: 180 wide, ISO 7200, from memory; three rows of 10. */
export const TITLE_WIDTH: Mm = 180;
const ROW: Mm = 10;
export const TITLE_HEIGHT: Mm = 3 * ROW;

/** One field; places count from the lower left corner of the block, paper mm. */
interface Cell {
  readonly label: string;
  readonly value: string;
  readonly left: Mm;
  readonly width: Mm;
  /** From below. */
  readonly row: 0 | 1 | 2;
}

/** Room for the sign of the projection, and the widths of the cells beside it: our convention; they add up to 180 mm. */
const SYMBOL: Mm = 26;

const LENGTHS: { readonly [L in SheetHeading['lengths']]: string } = { in: 'inches', mm: 'mm', both: 'inches (mm)' };

/** `1:10`, and for an inch set what an inch rule calls it. */
export function scaleText(scale: number, set: PaperSet): string {
  if (scale === 1) return '1:1, full size';
  const foot = (12 / scale) * 25.4;
  return set === 'us' && scale > 2 ? `1:${scale} (${formatInches(foot, { mark: '"' })} to the foot)` : `1:${scale}`;
}

const cells = (title: string, scale: number, of: SheetHeading): readonly Cell[] => [
  { label: 'owner', value: of.owner, left: 0, width: 66, row: 2 },
  { label: 'piece', value: of.piece, left: 66, width: 114, row: 2 },
  { label: 'title', value: title, left: SYMBOL, width: 92, row: 1 },
  { label: 'number', value: of.number, left: SYMBOL + 92, width: 32, row: 1 },
  { label: 'revision', value: of.revision, left: SYMBOL + 124, width: 30, row: 1 },
  { label: 'date', value: of.date, left: SYMBOL, width: 32, row: 0 },
  {
    label: 'scale',
    value: of.unscaled ? 'none' : scaleText(scale, of.paper.set),
    left: SYMBOL + 32,
    width: 60,
    row: 0,
  },
  { label: 'lengths', value: LENGTHS[of.lengths], left: SYMBOL + 92, width: 32, row: 0 },
  { label: 'sheet', value: `${of.sheet} of ${of.of}`, left: SYMBOL + 124, width: 30, row: 0 },
];

/** From a border to lettering, our convention; heights of labels and values, the series of ISO 3098-1; paper mm. */
const PAD: Mm = 1.5;
const LABEL: Mm = 1.8;
const VALUES = [3.5, 2.5, 1.8] as const;

/** Frame lines, labels and values of the block whose lower left corner is `corner`; model mm at a scale. */
export function titleBlock(title: string, heading: SheetHeading, scale: number, corner: Pt): readonly Entity[] {
  const at = (x: Mm, y: Mm): Pt => [corner[0] + x * scale, corner[1] + y * scale];
  const line = (a: Pt, b: Pt): Entity => ({ kind: 'poly', layer: LAYERS.TEXT, points: [a, b], closed: false });
  const text = (content: string, x: Mm, y: Mm, height: Mm): Entity => ({
    kind: 'text',
    layer: LAYERS.TEXT,
    text: content,
    at: at(x, y),
    height,
  });
  const fields = cells(title, scale, heading).flatMap(({ label, value, left, width, row }): Entity[] => {
    const low = row * ROW;
    const lettering = valueLines(value, width - 2 * PAD);
    return [
      line(at(left, low), at(left, low + ROW)),
      text(label, left + PAD, low + ROW - PAD - LABEL, LABEL),
      ...lettering.lines.map((part, k) =>
        text(part, left + PAD, low + PAD + (lettering.lines.length - 1 - k) * 1.4 * lettering.height, lettering.height),
      ),
    ];
  });
  return [
    {
      kind: 'poly',
      layer: LAYERS.FRAME,
      closed: false,
      points: [at(0, 0), at(0, TITLE_HEIGHT), at(TITLE_WIDTH, TITLE_HEIGHT)],
    },
    line(at(0, 2 * ROW), at(TITLE_WIDTH, 2 * ROW)),
    line(at(SYMBOL, ROW), at(TITLE_WIDTH, ROW)),
    ...fields,
    ...projectionSymbol(heading.projection, at(SYMBOL / 2, ROW), 7 * scale),
  ];
}

/** As large as fits; the smallest letters on two lines, the first one beside the label; what is longer yet is cut short. */
function valueLines(value: string, width: Mm): { readonly lines: readonly string[]; readonly height: Mm } {
  const height = heightThatFits(value, VALUES, width);
  if (height !== undefined) return { lines: [value], height };
  const [first = '', second = '', ...rest] = linesWithin(value, width, LABEL);
  return { lines: [first, rest.length > 0 ? `${second.slice(0, -3)}...` : second], height: LABEL };
}
