import { clipMarks } from '../../../drawing/clip-marks.ts';
import type { Mark, Pt } from '../../../drawing/entity.ts';
import { GAUGE_LENGTH, gauge } from '../../../drawing/gauge.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import { letterWidth } from '../../../drawing/letter-width.ts';
import type { Page } from '../../../drawing/page.ts';
import { moveMark } from '../../../drawing/place.ts';
import { fittingHeight, textMark } from '../../../drawing/print-sheet.ts';
import { crossMarks } from '../../../drawing/tile-crosses.ts';
import { EDGE, OVERLAP } from '../../../drawing/tile-grid.ts';
import { wrapText } from '../../../drawing/wrap-text.ts';
import type { Vec2 } from '../../../geometry/vec.ts';
import type { UnitSystem } from '../../../units/format-length.ts';
import type { Mm } from '../../../units/mm.ts';
import type { Heading } from '../../templates/heading.ts';
import { lengthText } from '../../templates/length-text.ts';
import { revisionLine } from '../../templates/note-lines.ts';
import type { PrintPaper } from '../../templates/print-papers.ts';
import { jointNames, type StoryStick } from './story-stick.ts';
import { LATH } from './story-stick-drawing.ts';
import { stickPieces } from './story-stick-pieces.ts';
import { slotRooms, stickStrip } from './story-stick-strip.ts';

/** Heights of letters, paper mm; our convention. */
const NAME: Mm = 5;
const WORDS: Mm = 2.2;
const SMALL: Mm = 1.9;

/** Head of a page with its three lines; a piece with its name above and its bars below; paper mm; our convention. */
const HEAD: Mm = 16;
const LABEL: Mm = 4;
const BARS: Mm = 9;
const PIECE: Mm = LABEL + LATH + BARS + 5;

const PRINT =
  'Print at 100 %, not fitted to the page; then measure both bars of each piece: it is true only if they are.';

/** A stick for an office printer, paper lying on its long side: pieces to cut out and to glue on a lath in their order. */
export function stickPages(stick: StoryStick, paper: PrintPaper, heading: Heading): readonly Page[] {
  const [width, height] = [paper.height, paper.width];
  const pieces = stickPieces(stick.length, slotRooms(stick, heading.units), width - 2 * EDGE);
  const each = Math.floor((height - 2 * EDGE - HEAD) / PIECE);
  const count = Math.ceil(pieces.length / each);
  return Array.from({ length: count }, (_, k) => {
    const name = `Story stick, ${k + 1} of ${count}`;
    return pageOf(stick, heading, { name, width, height, pieces, from: k * each, to: (k + 1) * each });
  });
}

/** The least width of a page, so that words and bars find room; mm; our convention. */
const LEAST: Mm = 260;

/** The same in one piece on paper from a roll. */
export function stickRoll(stick: StoryStick, heading: Heading): Page {
  const width = Math.ceil(Math.max(LEAST, stick.length + 2 * EDGE));
  const height = Math.ceil(2 * EDGE + HEAD + PIECE);
  return pageOf(stick, heading, { name: 'Story stick', width, height, pieces: [[0, stick.length]], from: 0, to: 1 });
}

interface Sheet {
  readonly name: string;
  readonly width: Mm;
  readonly height: Mm;
  /** All pieces of the stick; those of this page are from `from` up to `to`. */
  readonly pieces: readonly Vec2[];
  readonly from: number;
  readonly to: number;
}

function pageOf(stick: StoryStick, heading: Heading, sheet: Sheet): Page {
  const { name, width, height, pieces, from, to } = sheet;
  const strip = stickStrip(stick, heading.units);
  const top = height - EDGE;
  const room = width - 2 * EDGE;
  const beside = letterWidth(name, NAME, true) + 4;
  return {
    name,
    width,
    height,
    marks: [
      textMark(name, [EDGE, top - NAME], NAME, { bold: true }),
      ...headLines(stick, heading).map((text, k) =>
        textMark(text, [EDGE + beside, top - 2.4 - k * 3.6], fittingHeight(text, room - beside, WORDS)),
      ),
      ...pieces.slice(from, to).flatMap((_, k): readonly Mark[] => {
        const low = top - HEAD - k * PIECE - LABEL - LATH;
        return pieceMarks(strip, pieces, from + k, [EDGE, low], room);
      }),
    ],
  };
}

const headLines = (stick: StoryStick, heading: Heading): readonly string[] => [
  `${stick.top.mark} ${stick.top.name}, joints ${jointNames(stick)}: the first piece of each has the tight slots`,
  gaugeLine(stick, heading.units),
  revisionLine(heading),
];

const gaugeLine = ({ gauge: down, width, depth, play }: StoryStick, units: UnitSystem): string =>
  `gauge ${lengthText(down, units)} from the show face to the middle of every slot; slots ${lengthText(width, units)} thick, ` +
  `${lengthText(depth, units)} deep; play on the long side ${lengthText(play, units)}`;

/** Where the two crosses of a seam are, as shares of the width of the strip; our convention. */
const CROSSES = [0.22, 0.78] as const;

/** One piece with its lower left corner at a place of the page, its name, joining crosses and bars. */
function pieceMarks(strip: readonly Mark[], pieces: readonly Vec2[], k: number, at: Pt, room: Mm): readonly Mark[] {
  const [from, to] = pieces[k]!;
  const seen = [...clipMarks(strip, { min: [from, 0], max: [to, LATH] }), ...seamMarks(pieces, k)];
  const beside = GAUGE_LENGTH + 4;
  return [
    textMark(pieceWords(k, pieces.length), [at[0], at[1] + LATH + 1.4], SMALL),
    ...seen.map((mark) => moveMark(mark, ([x, y]) => [x + at[0] - from, y + at[1]])),
    ...gauge([at[0], at[1] - BARS + 1.5], 'across'),
    ...wrapText(PRINT, room - beside, SMALL).map((line, n) =>
      textMark(line, [at[0] + beside, at[1] - 4.5 - n * 1.5 * SMALL], SMALL),
    ),
  ];
}

const pieceWords = (k: number, count: number): string =>
  count === 1
    ? 'in one piece; cut it out and glue it on a straight lath'
    : `piece ${k + 1} of ${count}; cut it out, lay crosses of one number over each other, glue all on a straight lath`;

/** Where a piece is cut off, and the crosses that it shares with its neighbors. */
function seamMarks(pieces: readonly Vec2[], k: number): Mark[] {
  const [from, to] = pieces[k]!;
  const seam = (n: number, end: Mm): Mark[] => [
    {
      kind: 'poly',
      layer: LAYERS.RULE,
      points: [
        [end, 0],
        [end, LATH],
      ],
      closed: false,
    },
    ...CROSSES.flatMap((share, c) => crossMarks([pieces[n]![0] + OVERLAP / 2, LATH * share], 2 * n - 1 + c)),
  ];
  return [...(k > 0 ? seam(k, from) : []), ...(k + 1 < pieces.length ? seam(k + 1, to) : [])];
}
