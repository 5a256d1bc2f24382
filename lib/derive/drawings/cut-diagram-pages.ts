import { boundsOf } from '../../drawing/bounds.ts';
import type { Drawing, Entity } from '../../drawing/drawing.ts';
import type { Mark, Text } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { move } from '../../drawing/move.ts';
import { DEFAULT_STYLE } from '../../drawing/style.ts';
import { formatInches, formatMm, formatNumber, type UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { type CutBoardView, type CutDiagramLook, cutDiagram } from './cut-diagram.ts';

/** A board and the class of lumber that it is cut for. */
export interface CutBoardOnPage extends CutBoardView {
  readonly lumber: string;
}

export interface CutPagesHead {
  readonly title: string;
  readonly units: UnitSystem;
  readonly warning?: string | undefined;
  /** What is to be known beside the boards: parts that have none, boards that are kept. On the first page. */
  readonly notes?: readonly string[];
}

/** A view at 1:10: a board of eight feet lies on a letter sheet; our convention. */
const SCALE = 10;

/**
 * Paper mm that the boards of one page take at most: a letter sheet on its side less margins and heading; our
 * convention.
 */
const PAGE = 172;

/** Paper mm between boards, between a heading and what is below, and from line to line of the head; our convention. */
const GAP = 5;
const HEADING = 2.5;
const LINE = 4.5;

/** Cut diagrams, a few boards a page; one page at least. */
export function cutDiagramPages(views: readonly CutBoardOnPage[], head: CutPagesHead): Drawing[] {
  const look = { scale: SCALE, say: sayIn(head.units) };
  const noted = (head.notes ?? []).flatMap(wrapped).length * LINE;
  const blocks = paged(
    views.map((view) => blockOf(view, look)),
    noted,
  );
  const pages = blocks.length > 0 ? blocks : [[]];
  return pages.map((own, n) => {
    const title = `${head.title}: cut plan${pages.length > 1 ? `, ${n + 1} of ${pages.length}` : ''}`;
    const entities: Entity[] = [];
    let y = -LINE * SCALE;
    for (const { entities: drawn, high, low } of own) {
      entities.push(...drawn.map((entity) => move(entity, [0, y - high])));
      y -= high - low + GAP * SCALE;
    }
    // Letters last: what comes first is painted first, and the color of wood would hide them.
    entities.push(...headLines(title, n === 0 ? head : { ...head, notes: [] }, views, look));
    return { title, style: { ...DEFAULT_STYLE, scale: SCALE }, entities };
  });
}

/** One board with its heading, and how far it reaches above and below its reference edge, mm. */
interface Block {
  readonly entities: readonly Entity[];
  readonly high: Mm;
  readonly low: Mm;
}

function blockOf(view: CutBoardOnPage, look: CutDiagramLook): Block {
  const { board, plan, lumber } = view;
  const drawn = cutDiagram(view, look);
  const top = boundsOf(drawn as readonly Mark[], SCALE)!.max[1] + HEADING * SCALE;
  const used = `${formatNumber(plan.yield * 100, 0)} % of it in parts`;
  const said = `board ${board.mark}, ${lumber}: ${look.say(board.length)} x ${look.say(board.width)}; ${plan.first} first; ${used}`;
  const entities = [...drawn, words(said, top, 2.5, { bold: true })];
  const { min, max } = boundsOf(entities as readonly Mark[], SCALE)!;
  return { entities, high: max[1], low: min[1] };
}

/** Boards in their order, as many on a page as fit; of the first page so many paper mm are taken. */
function paged(blocks: readonly Block[], taken: Mm): Block[][] {
  const pages: Block[][] = [];
  let left = 0;
  for (const block of blocks) {
    const tall = (block.high - block.low) / SCALE + GAP;
    if (pages.length === 0 || tall > left) {
      pages.push([]);
      left = pages.length === 1 ? PAGE - taken : PAGE;
    }
    pages.at(-1)!.push(block);
    left -= tall;
  }
  return pages;
}

function headLines(
  title: string,
  head: CutPagesHead,
  views: readonly CutBoardOnPage[],
  look: CutDiagramLook,
): Entity[] {
  const explained = views.length === 0 ? [] : explainLines(head.units, views, look);
  const lines = [
    words(title, 0, 3.5),
    ...explained,
    ...(head.notes ?? []).flatMap((note) =>
      wrapped(note).map((line) => words(line, 0, 2.5, { layer: LAYERS.WARNING })),
    ),
    ...(head.warning === undefined ? [] : [words(head.warning, 0, 2.5, { layer: LAYERS.WARNING })]),
  ];
  return lines.map((line, n) => move(line, [0, (lines.length - 1 - n) * LINE * SCALE]));
}

/** How the diagrams are to be read. */
function explainLines(units: UnitSystem, views: readonly CutBoardOnPage[], look: CutDiagramLook): Text[] {
  const kerfs = [...new Set(views.map(({ kerf }) => look.say(kerf)))].join(' or ');
  const unit = units === 'in' ? 'inches' : 'millimetres';
  return [
    words(
      `1 : ${SCALE}; ${unit} from the reference end (left) and the reference edge (below) to the near side of the blade; ${kerfs} allowed for a cut`,
      0,
      2,
    ),
    words(
      'in brackets and in red: the cuts in the order of the saw; hatched: defects; keep: an offcut for the rack',
      0,
      2,
    ),
  ];
}

const words = (text: string, y: Mm, height: Mm, more: Partial<Text> = {}): Text => ({
  kind: 'text',
  layer: LAYERS.TEXT,
  text,
  at: [0, y],
  height,
  ...more,
});

/** Inches to 1/32 as the maker's rule shows them, whole millimetres without their unit. */
const sayIn =
  (units: UnitSystem) =>
  (mm: Mm): string =>
    units === 'in' ? formatInches(mm, { denominator: 32, mark: '"' }) : formatMm(mm, 0, 'nearest', '');

/** Letters of a line that is 2.5 mm high: as wide as the line on cuts (our convention). */
const LETTERS = 100;

/** Lines of no more letters where that can be, broken between clauses. */
function wrapped(text: string): string[] {
  const lines: string[] = [];
  for (const clause of text.split(/(?<=[;,]) /)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + clause.length < LETTERS) lines[lines.length - 1] = `${last} ${clause}`;
    else lines.push(clause);
  }
  return lines;
}
