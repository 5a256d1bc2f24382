import type { StripPin } from '../derive/lumber/strip-plan/strip-problem.ts';
import { stripCount } from '../derive/lumber/top-problem.ts';
import type { Assembly } from '../model/assembly.ts';
import type { Board } from '../model/records.ts';
import type { Issue } from '../params/issue.ts';
import type { LumberWishes } from '../shop/lumber-wishes.ts';
import { formatLength, type UnitSystem } from '../units/format-length.ts';
import { topOf } from './measured-top.ts';

/** What boards settled by hand are held against. */
export interface PinContext {
  readonly boards: readonly Board[];
  readonly wishes: LumberWishes;
  readonly nominal: Assembly;
  readonly units: UnitSystem;
}

/** Boards settled by hand that are not in the table, cannot lie in the top, or lie where there is no room for them. */
export function pinIssues(pins: readonly StripPin[], context: PinContext): Issue[] {
  const { boards, nominal, wishes } = context;
  const top = topOf(nominal);
  const count = stripCount(nominal, wishes);
  return pins.flatMap((pin, k): Issue[] => {
    const board = boards.find(({ mark }) => mark === pin.mark);
    if (!board) return [stray(pin.mark, boards)];
    const clash = pins.slice(0, k).find((other) => inOnePlace(other, pin, wishes));
    const faults = [
      pin.strip !== undefined && pin.strip > count ? `there are ${count} strips` : undefined,
      pin.layer === 'bottom' && wishes.layers === 'one'
        ? "the strips have one board each; a board under another wants layers: 'either' or 'two'"
        : undefined,
      clash && `board ${clash.mark} lies there already`,
      top && tooSmall(board, top.finished.length, context),
    ];
    return faults.flatMap((because) => (because ? [wrong(entryOf(pin), because)] : []));
  });
}

/** Two boards in one strip go one over the other, where there are two layers, and they do not say the same. */
function inOnePlace(a: StripPin, b: StripPin, { layers }: LumberWishes): boolean {
  if (a.strip === undefined || a.strip !== b.strip) return false;
  return layers === 'one' || (a.layer !== undefined && a.layer === b.layer);
}

function tooSmall({ length, width }: Board, wanted: number, { wishes, units }: PinContext): string | undefined {
  const said = (mm: number): string => formatLength(mm, units);
  if (length < wanted) return `the board is ${said(length)} long, and the top ${said(wanted)}`;
  const { leastWidth } = wishes;
  return width < leastWidth ? `the board is ${said(width)} wide, and a strip ${said(leastWidth)} at least` : undefined;
}

const entryOf = ({ mark, strip, layer }: StripPin): string => {
  const said = [strip !== undefined && `strip ${strip}`, layer === 'bottom' && 'under'].filter(Boolean);
  return [mark, said.join(', ')].filter(Boolean).join(' ');
};

const IN_DESIGN = { path: 'lumber.pinned', from: 'the design file', unit: '', via: 'file' } as const;

const wrong = (given: string, because: string): Issue => ({ ...IN_DESIGN, code: 'rule', given, because });

const stray = (given: string, boards: readonly Board[]): Issue => ({
  ...IN_DESIGN,
  code: 'not-an-option',
  given,
  options: boards.map(({ mark }) => mark),
  because: 'no other boards are in boards.csv',
});
