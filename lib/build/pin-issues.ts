import type { StripPin } from '../derive/lumber/strip-plan/strip-problem.ts';
import { stripCount } from '../derive/lumber/top-problem.ts';
import type { Assembly } from '../model/assembly.ts';
import type { Board } from '../model/records.ts';
import type { Issue } from '../params/issue.ts';
import { nearMiss } from '../params/near-miss.ts';
import type { LumberWishes } from '../shop/lumber-wishes.ts';
import { formatLength, type UnitSystem } from '../units/format-length.ts';
import { topOf } from './measured-top.ts';
import { pinEntry } from './pin-words.ts';

/** What boards settled by hand are held against. */
export interface PinContext {
  readonly boards: readonly Board[];
  readonly wishes: LumberWishes;
  readonly nominal: Assembly;
  readonly units: UnitSystem;
  /** The file that settles them. */
  readonly from: string;
}

/** What is wrong with a pin, and the pin that would do instead, where there is one. */
interface Fault {
  readonly because: string;
  readonly instead?: StripPin | undefined;
}

/** Boards settled by hand that are not in the table, cannot lie in the top, or lie where there is no room for them. */
export function pinIssues(pins: readonly StripPin[], context: PinContext): Issue[] {
  const { boards, from } = context;
  return pins.flatMap((pin, k): Issue[] => {
    const board = boards.find(({ mark }) => mark === pin.mark);
    if (!board) return [stray(pin, pins, context)];
    const faults = [...placeFaults(pin, pins, k, context), ...sizeFaults(pin, board, pins, context)];
    return faults.map(({ because, instead }) => ({
      ...IN_DESIGN,
      code: 'rule',
      from,
      given: pinEntry(pin),
      because,
      try: instead && pinEntry(instead),
    }));
  });
}

const IN_DESIGN = { path: 'lumber.pinned', unit: '', via: 'file' } as const;

/** A strip that is not there, a layer that is not wanted, a place that is taken. */
function placeFaults(pin: StripPin, pins: readonly StripPin[], k: number, { nominal, wishes }: PinContext): Fault[] {
  const { layer, strip, ...free } = pin;
  const count = stripCount(nominal, wishes);
  const clash = pins.slice(0, k).find((other) => inOnePlace(other, pin, wishes));
  const places = Array.from({ length: count }, (_, n) => n + 1);
  const empty = places.filter((n) => pins.every((other) => other.strip !== n));
  const at = (n: number | undefined): StripPin => (n === undefined ? free : { ...pin, strip: n });
  const faults: Fault[] = [];
  if (strip !== undefined && strip > count) {
    faults.push({ because: `there are ${count} strips`, instead: at(empty.at(-1)) });
  }
  if (layer === 'bottom' && wishes.layers === 'one') {
    faults.push({
      because: "the strips have one board each; a board under another wants layers: 'either' or 'two'",
      instead: { ...free, ...(strip === undefined ? {} : { strip }) },
    });
  }
  if (clash) faults.push({ because: `board ${clash.mark} lies there already`, instead: at(empty[0]) });
  return faults;
}

/** Two boards in one strip go one over the other, where there are two layers, and they do not say the same. */
function inOnePlace(a: StripPin, b: StripPin, { layers }: LumberWishes): boolean {
  if (a.strip === undefined || a.strip !== b.strip) return false;
  return layers === 'one' || (a.layer !== undefined && a.layer === b.layer);
}

function sizeFaults(pin: StripPin, board: Board, pins: readonly StripPin[], context: PinContext): Fault[] {
  const because = tooSmall(board, context);
  if (because === undefined) return [];
  const other = otherBoard(pins, context);
  return [
    other
      ? { because, instead: { ...pin, mark: other.mark } }
      : { because: `${because}; no other is left: leave it out` },
  ];
}

/** A board that is large enough for a strip, and not settled yet. */
const otherBoard = (pins: readonly StripPin[], context: PinContext): Board | undefined =>
  context.boards.find(
    (board) => tooSmall(board, context) === undefined && pins.every(({ mark }) => mark !== board.mark),
  );

function tooSmall({ length, width }: Board, { nominal, wishes, units }: PinContext): string | undefined {
  const top = topOf(nominal);
  if (!top) return undefined;
  const said = (mm: number): string => formatLength(mm, units);
  const wanted = top.finished.length;
  if (length < wanted) return `the board is ${said(length)} long, and the top ${said(wanted)}`;
  const { leastWidth } = wishes;
  return width < leastWidth ? `the board is ${said(width)} wide, and a strip ${said(leastWidth)} at least` : undefined;
}

function stray(pin: StripPin, pins: readonly StripPin[], context: PinContext): Issue {
  const { boards, from } = context;
  const free = boards.filter(({ mark }) => pins.every((other) => other.mark !== mark)).map(({ mark }) => mark);
  const near = nearMiss(pin.mark, free) ?? otherBoard(pins, context)?.mark;
  return {
    ...IN_DESIGN,
    code: 'not-an-option',
    from,
    given: pin.mark,
    options: boards.map(({ mark }) => mark),
    because: 'no other boards are in boards.csv',
    try: near && pinEntry({ ...pin, mark: near }),
  };
}
