import { marksText } from '../derive/cut-list/building-order.ts';
import type { BuyingList } from '../derive/lumber/buying-list.ts';
import type { BuyingRow, ClassNeed } from '../derive/lumber/buying-row.ts';
import { isAtEdge, servesFrom, type ThicknessZone } from '../derive/lumber/zones.ts';
import type { Assembly } from '../model/assembly.ts';
import { defineLumberWishes, type LumberWishes } from '../shop/lumber-wishes.ts';
import type { Shop } from '../shop/shop.ts';
import { formatNumber, type UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import { speciesById } from '../wood/species-list.ts';
import { type Cells, cellsOf, feet, money, place, rough } from './buying-cells.ts';
import { buyingTotals } from './buying-totals.ts';
import type { Table } from './cut-list-table.ts';
import type { Job } from './job.ts';
import { topOf } from './measured-top.ts';

/** Everything to ask for at the yard: zones, boards, sums on both bases, and what to do when a class is not there. */
export function buyingTable(
  list: BuyingList,
  { nominal, shop, design }: Pick<Job, 'nominal' | 'shop' | 'design'>,
  units: UnitSystem,
): Table {
  const right = (head: string) => ({ head, align: 'right' }) as const;
  const { yield: share, addOn } = shop.lumber;
  return {
    columns: [
      { head: 'row' },
      { head: 'lumber' },
      { head: 'parts' },
      right('pieces'),
      right(`from center line (${units})`),
      right(`T (${units})`),
      right(`W (${units})`),
      right(`L (${units})`),
      right('board feet'),
      right(`to buy at ${formatNumber(share, 1)} % yield`),
      right(`to buy with ${formatNumber(addOn, 1)} % added`),
      right('price'),
      { head: 'remarks' },
    ],
    rows: [
      ...zoneRows(list, units),
      ...list.rows.map((row) => cellsOf(boardCells(row, units))),
      ...list.classes.map((need) => cellsOf(classCells(need, shop))),
      ...list.classes.map((need) => cellsOf(visitCells(need))),
      ...buyingTotals(list, shop),
      ...spareRows(list),
      ...withoutRows(list, units),
      ...layerRows(list, nominal, units),
      ...wishRows(nominal, defineLumberWishes(design.lumber)),
    ],
  };
}

const zoneRows = ({ zones }: BuyingList, units: UnitSystem): string[][] =>
  zones.map((zone) =>
    cellsOf({
      row: 'zone',
      lumber: zone.lumber.id,
      from: zone.from === undefined ? '' : place(zone.from, units),
      remarks: zoneRemark(zone),
    }),
  );

function zoneRemark({ from, onJoint, edgeOnly }: ThicknessZone): string {
  if (from === undefined) return 'too thin everywhere';
  if (edgeOnly) return 'too thin everywhere but at the very edge: no strip comes out of it';
  if (onJoint !== undefined) {
    return 'the limit falls on a joint with nothing to spare; look at the next thicker class, too';
  }
  return from === 0 ? 'thick enough anywhere' : 'thick enough from there to the edge';
}

function boardCells(row: BuyingRow, units: UnitSystem): Cells {
  const tight = row.spare !== undefined && row.spare < 0.01;
  return {
    row: row.isStrip ? 'strip' : 'part',
    lumber: row.lumber,
    parts: `${row.name} ${marksText(row.marks)}`,
    pieces: row.pieces,
    size: [rough(row.thickness, units), rough(row.width, units), rough(row.length, units)],
    feet: feet(row.boardFeet),
    remarks: !row.lumber
      ? 'nothing that the yard has is thick enough; glue up from two layers'
      : tight
        ? `just thick enough when it is dressed, nothing to spare${row.orElse ? `; ${row.orElse} leaves room` : ''}`
        : `least sizes; ${rough(row.spare!, units)} ${units} of thickness to spare`,
  };
}

const classCells = (need: ClassNeed, shop: Shop): Cells => ({
  row: 'class',
  lumber: need.lumber,
  parts: speciesById(need.wood).name,
  pieces: need.pieces,
  feet: feet(need.boardFeet),
  yield: feet(need.toBuyByYield),
  addOn: feet(need.toBuyByAddOn),
  price: money(need.price),
  remarks: `grade ${shop.lumber.grade}; ${formatNumber(need.pricePerFoot, 2)} a board foot, by ${shop.lumber.basis}`,
});

/** What a look at the grade alone does not tell: boards come as they come. */
const visitCells = ({ lumber, enough }: ClassNeed): Cells => ({
  row: 'visits',
  lumber,
  feet: enough ? feet(enough.in80) : '',
  remarks: enough
    ? `rough board feet that were enough in 80 of 100 made-up visits; ${feet(enough.in50)} in 50, ${feet(enough.in95)} in 95`
    : 'no board of the grade is long and wide enough for all of it: ask for selected ones',
});

const spareRows = ({ spares }: BuyingList): string[][] =>
  spares.count > 0
    ? [
        cellsOf({
          row: 'spare',
          lumber: spares.lumber,
          pieces: spares.count,
          remarks: 'of the thickest class of the top',
        }),
      ]
    : [];

const withoutRows = ({ without }: BuyingList, units: UnitSystem): string[][] =>
  without.map(({ lumber, instead, outTo, more }) =>
    cellsOf({
      row: 'without',
      lumber,
      from: outTo === undefined || !instead ? '' : place(outTo, units),
      feet: instead ? feet(more) : '',
      remarks: instead
        ? `if there is none, ${instead} takes its place${outTo === undefined ? '' : ', needed out to there'}: so many board feet more`
        : 'if there is none, glue up from two layers',
    }),
  );

/** Where the glue line of a two-layer strip comes out of the slope, for every class whose board could be the show board. */
function layerRows({ zones }: BuyingList, nominal: Assembly, units: UnitSystem): string[][] {
  const top = topOf(nominal);
  if (!top) return [];
  const { thickness } = top.finished;
  const cleanUp = CLEAN_UP;
  return zones
    .map(({ lumber }) => ({ lumber, depth: lumber.dressed.value - cleanUp }))
    .filter(({ depth }) => depth < thickness)
    .map(({ lumber, depth }) => {
      const at = servesFrom(top.body, depth);
      return cellsOf({
        row: 'two layers',
        lumber: lumber.id,
        from: at === undefined ? '' : place(at, units),
        size: [rough(depth, units), '', ''],
        remarks:
          at === undefined
            ? 'as show board its glue line would lie open on the long edge'
            : isAtEdge(top.body, at)
              ? 'as show board its glue line comes out at the lower corner of the long edge'
              : 'as show board its glue line comes out of the slope there',
      });
    });
}

/** A wish that the list does not follow: it asks for the boards of the strips as they are drawn. */
function wishRows({ parts }: Assembly, { layers }: LumberWishes): string[][] {
  const slices = parts.flatMap(({ body }) => (body.kind === 'slice' ? [body] : []));
  if (layers !== 'two' || slices.length === 0 || slices.some(({ top }) => top > 0)) return [];
  const remarks = `lumber.layers asks for strips of two boards, and the top is drawn with one (top.layers): the list asks for single boards`;
  return [cellsOf({ row: 'layers', remarks })];
}

/** Planed off a show board before it is glued: 1/16 in, common practice, no source. */
const CLEAN_UP: Mm = 1.5875;
