import type { Shop } from '../../shop/shop.ts';
import type { Mm } from '../../units/mm.ts';
import type { CheckContext } from './check.ts';
import { THICKNESS_LEVERS, WIDTH_LEVERS } from './shop-levers.ts';
import { boardsOf, type ShopPiece, shapedOf } from './shop-pieces.ts';

/** What is done when a piece is over the limit of a machine: with this shop, or not at all. */
export interface WayRound {
  /** mm: a piece up to here can be made like this. */
  readonly upTo: Mm;
  /** "saw it from both faces". */
  readonly way: string;
}

/** One limit of one machine. */
export interface Machine {
  /** Name of the check. */
  readonly check: string;
  /** "the jointer takes". */
  readonly takes: string;
  /** "wide", "thick": what the value is. */
  readonly is: string;
  readonly limit: (shop: Shop) => Mm;
  readonly pieces: (context: CheckContext) => ShopPiece[];
  readonly value: (piece: ShopPiece) => Mm;
  /** The first one that reaches is told. */
  readonly ways: (shop: Shop) => readonly WayRound[];
  readonly levers: typeof THICKNESS_LEVERS;
}

const thick = ({ rough }: ShopPiece): Mm => rough.thickness;
const wide = ({ rough }: ShopPiece): Mm => rough.width;
/** Across the grain a saw cuts the thinner way. */
const thinner = ({ rough }: ShopPiece): Mm => Math.min(rough.thickness, rough.width);

/** What the two passes of a flush-trim bit must overlap, so that the bearing of the second runs on the first: 1/8 in (our convention). */
const OVERLAP: Mm = 3.175;

export const MACHINES: readonly Machine[] = [
  {
    check: 'jointer',
    takes: 'the jointer takes',
    is: 'wide',
    limit: (shop) => shop.machines.jointerWidth,
    pieces: boardsOf,
    value: wide,
    ways: ({ machines }) => [
      { upTo: machines.planerWidth, way: 'flatten its face in the planer, shimmed on a sled' },
      { upTo: 2 * machines.jointerWidth, way: 'rip it in two, face both, glue it back' },
    ],
    levers: WIDTH_LEVERS,
  },
  {
    check: 'planer width',
    takes: 'the planer takes',
    is: 'wide',
    limit: (shop) => shop.machines.planerWidth,
    pieces: boardsOf,
    value: wide,
    ways: ({ machines }) => [{ upTo: 2 * machines.planerWidth, way: 'rip it in two, plane both, glue it back' }],
    levers: WIDTH_LEVERS,
  },
  {
    check: 'planer height',
    takes: 'the planer opens to',
    is: 'thick',
    limit: (shop) => shop.machines.planerHeight,
    pieces: boardsOf,
    value: thick,
    ways: ({ machines }) => [{ upTo: 2 * machines.planerHeight, way: 'plane two layers, then glue them together' }],
    levers: THICKNESS_LEVERS,
  },
  {
    check: 'saw depth',
    takes: 'the table saw cuts',
    is: 'thick',
    limit: (shop) => shop.machines.sawDepth,
    pieces: boardsOf,
    value: thinner,
    ways: ({ machines }) => [
      { upTo: 2 * machines.sawDepth, way: 'saw it from both faces' },
      { upTo: machines.bandsawHeight, way: 'cut it on the bandsaw and plane the cut' },
    ],
    levers: THICKNESS_LEVERS,
  },
  {
    check: 'bandsaw height',
    takes: 'the bandsaw cuts',
    is: 'thick',
    limit: (shop) => shop.machines.bandsawHeight,
    pieces: shapedOf,
    value: thick,
    ways: () => [],
    levers: THICKNESS_LEVERS,
  },
  {
    check: 'flush-trim bit',
    takes: 'the longest bit cuts',
    is: 'thick',
    limit: (shop) => shop.machines.bitLength,
    pieces: shapedOf,
    value: ({ finished }) => finished.thickness,
    ways: ({ machines }) => [
      {
        upTo: 2 * machines.bitLength - OVERLAP,
        way: 'flush-trim from both faces: past the middle along the template, then turn it and follow the cut edge',
      },
    ],
    levers: THICKNESS_LEVERS,
  },
];
