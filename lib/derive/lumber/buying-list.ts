import type { Assembly } from '../../model/assembly.ts';
import type { PanelBody, SliceBody } from '../../model/body.ts';
import type { Part } from '../../model/part.ts';
import type { Shop } from '../../shop/shop.ts';
import { boardFeetNominal } from '../../units/board-feet.ts';
import type { Mm } from '../../units/mm.ts';
import { classFor, spare } from '../../wood/class-for.ts';
import { THICKNESS_CLASSES, type ThicknessClass, type ThicknessClassId } from '../../wood/thickness-classes.ts';
import { boardFeetToBuy } from '../../wood/waste.ts';
import { type CutList, type CutListRow, isFromOffcuts } from '../cut-list/cut-list.ts';
import type { BuyingRow, ClassNeed } from './buying-row.ts';
import { enoughFor } from './enough-for.ts';
import { isRipped } from './ripped.ts';
import { classesOf, pricePerFoot } from './stocked.ts';
import type { Enough } from './yard-visits.ts';
import { type ThicknessZone, zonesOf } from './zones.ts';

/** What to do when the yard has none of a class. */
export interface WithoutClass {
  readonly lumber: ThicknessClassId;
  readonly instead?: ThicknessClassId;
  /** mm from the center line, as far out as the strips that then need the thicker class reach; absent without strips of it. */
  readonly outTo?: Mm;
  /** Net board feet more. */
  readonly more: number;
}

/** What to look for at the yard, and how much of it. */
export interface BuyingList {
  readonly zones: readonly ThicknessZone[];
  readonly rows: readonly BuyingRow[];
  readonly classes: readonly ClassNeed[];
  readonly without: readonly WithoutClass[];
  /** Boards of the thickest class of the top to take in addition. */
  readonly spares: { readonly lumber?: ThicknessClassId; readonly count: number };
  readonly total: {
    readonly boardFeet: number;
    readonly toBuyByYield: number;
    readonly toBuyByAddOn: number;
    readonly price: number;
    readonly enough?: Enough;
  };
  /** The same of the top alone, and of the top all in its thickest class; where strips have two boards, that alone is no top. */
  readonly top: { readonly boardFeet: number; readonly allThickest?: number };
}

type Strip = Part & { readonly body: SliceBody };

/** The buying list of a piece. Loose tenons and pads come from offcuts. */
export function buyingList(assembly: Assembly, list: CutList, shop: Shop): BuyingList {
  const classes = classesOf(shop);
  const strips = assembly.parts.filter((part): part is Strip => part.body.kind === 'slice');
  const rows = whole(list.rows.filter((row) => !isFromOffcuts(row))).map((row) => buyingRow(row, classes));
  const bare = classNeeds(rows, shop);
  const visits = enoughFor(rows, bare, shop);
  const needs = bare.map((need): ClassNeed => {
    const enough = visits.of(need);
    return enough ? { ...need, enough } : need;
  });
  const top = rows.filter((row) => row.isStrip);
  const thickest = thickestOf(top);
  const panel = strips[0]?.body.of;
  const layered = strips.some(({ body }) => body.top > 0);
  const sum = (of: (need: ClassNeed) => number): number => needs.reduce((all, need) => all + of(need), 0);
  return {
    zones: panel
      ? zonesOf(
          panel,
          cleanUpOf(strips),
          classes,
          strips.flatMap(({ body }) => [body.from, body.to]),
        )
      : [],
    rows,
    classes: needs,
    without: needs.map(({ lumber }) => withoutClass(lumber, rows, strips, classes)),
    spares: { ...(thickest ? { lumber: thickest.id } : {}), count: thickest ? shop.lumber.spares : 0 },
    total: {
      boardFeet: sum((n) => n.boardFeet),
      toBuyByYield: sum((n) => n.toBuyByYield),
      toBuyByAddOn: sum((n) => n.toBuyByAddOn),
      price: sum((n) => n.price),
      ...(visits.all ? { enough: visits.all } : {}),
    },
    top: {
      boardFeet: top.reduce((all, row) => all + row.boardFeet, 0),
      ...(thickest && panel && !layered ? { allThickest: inOneClass(strips, panel, thickest) } : {}),
    },
  };
}

const cleanUpOf = (strips: readonly Strip[]): Mm =>
  Math.max(0, ...strips.map(({ rough, finished }) => rough.thickness - finished.thickness));

const inOneClass = (strips: readonly Strip[], panel: PanelBody, { nominal }: ThicknessClass): number =>
  strips.reduce((all, { body }) => all + boardFeetNominal(nominal, body.to - body.from, panel.length), 0);

/** Rows of a cut list, with strips that come from one board as that board: as wide as both, one piece. */
function whole(rows: readonly CutListRow[]): CutListRow[] {
  const halves = rows.filter((row) => row.kind === 'strip' && isRipped(row));
  const joined = new Set<CutListRow>();
  return rows.flatMap((row): CutListRow[] => {
    if (joined.has(row)) return [];
    const other = halves.find((one) => one !== row && sameBut(one, row));
    if (!halves.includes(row) || !other) return [row];
    joined.add(other);
    const wide = (size: 'finished' | 'rough') => ({ ...row[size], width: row[size].width + other[size].width });
    return [{ ...row, marks: [...row.marks, ...other.marks], finished: wide('finished'), rough: wide('rough') }];
  });
}

/** Halves of one board: alike in thickness, length and layer. */
const sameBut = (a: CutListRow, b: CutListRow): boolean =>
  a.name === b.name && Math.abs(a.rough.thickness - b.rough.thickness) < SAME && a.quantity === b.quantity;

/** Thicknesses that differ by less are the same, mm (our convention). */
const SAME: Mm = 1e-3;

function buyingRow(row: CutListRow, classes: readonly ThicknessClass[]): BuyingRow {
  const { rough, finished, quantity } = row;
  const lumber = classFor(rough.thickness, classes);
  const next = lumber && classes.find(({ dressed }) => dressed.value > lumber.dressed.value);
  return {
    marks: row.marks,
    name: row.name,
    isStrip: row.kind === 'strip',
    wood: row.wood,
    pieces: quantity,
    thickness: rough.thickness,
    width: rough.width,
    length: rough.length,
    finishedWidth: finished.width,
    ...(lumber ? { lumber: lumber.id, spare: spare(lumber, rough.thickness) } : {}),
    ...(next ? { orElse: next.id } : {}),
    boardFeet: lumber ? boardFeetNominal(lumber.nominal, finished.width, finished.length) * quantity : 0,
  };
}

function classNeeds(rows: readonly BuyingRow[], shop: Shop): ClassNeed[] {
  const { basis, yield: share, addOn } = shop.lumber;
  const keys = new Map<string, BuyingRow[]>();
  for (const row of rows) {
    if (!row.lumber) continue;
    const key = `${row.wood} ${row.lumber}`;
    keys.set(key, [...(keys.get(key) ?? []), row]);
  }
  const needs = [...keys.values()].map((own): ClassNeed => {
    const { wood, lumber } = own[0]!;
    const net = own.reduce((all, row) => all + row.boardFeet, 0);
    const toBuyByYield = boardFeetToBuy(net, { basis: 'yield', percent: share });
    const toBuyByAddOn = boardFeetToBuy(net, { basis: 'addOn', percent: addOn });
    const perFoot = pricePerFoot(shop, lumber!);
    return {
      wood,
      lumber: lumber!,
      pieces: own.reduce((all, row) => all + row.pieces, 0),
      boardFeet: net,
      toBuyByYield,
      toBuyByAddOn,
      pricePerFoot: perFoot,
      price: perFoot * (basis === 'yield' ? toBuyByYield : toBuyByAddOn),
    };
  });
  return needs.sort((a, b) => (a.wood === b.wood ? quarters(b.lumber) - quarters(a.lumber) : a.wood < b.wood ? -1 : 1));
}

const quarters = (id: ThicknessClassId): number => Number.parseInt(id, 10);

const classOf = (id: ThicknessClassId): ThicknessClass => THICKNESS_CLASSES.find((c) => c.id === id)!;

const thickestOf = (rows: readonly BuyingRow[]): ThicknessClass | undefined =>
  rows
    .flatMap(({ lumber }) => (lumber ? [classOf(lumber)] : []))
    .sort((a, b) => b.nominal - a.nominal)
    .at(0);

function withoutClass(
  lumber: ThicknessClassId,
  rows: readonly BuyingRow[],
  strips: readonly Strip[],
  classes: readonly ThicknessClass[],
): WithoutClass {
  const own = rows.filter((row) => row.lumber === lumber);
  const instead = classFor(
    Math.max(...own.map((row) => row.thickness)),
    classes.filter(({ id }) => id !== lumber),
  );
  if (!instead) return { lumber, more: 0 };
  const net = own.reduce((all, row) => all + row.boardFeet, 0);
  const marks = new Set(own.flatMap((row) => row.marks));
  const reach = strips.filter(({ mark }) => marks.has(mark)).map(({ body }) => Math.max(-body.from, body.to));
  return {
    lumber,
    instead: instead.id,
    ...(reach.length > 0 ? { outTo: Math.max(...reach) } : {}),
    more: net * (instead.nominal / classOf(lumber).nominal - 1),
  };
}
