import type { Pt, Text } from '../../drawing/entity.ts';
import type { Mm } from '../../units/mm.ts';
import { CUT } from './cut-diagram-layers.ts';
import { freePlace, type Room, roomOf } from './free-place.ts';
import type { SawLine } from './saw-lines.ts';

/** Paper mm: height of a number, and its distance from the line; our convention. */
const HEIGHT = 1.6;
const OFF = 0.8;

/** Where along its line, short of its ends, a number is tried; our convention. */
const SHARES = [0, 1, ...Array.from({ length: 19 }, (_, n) => 0.05 * (n + 1))];

/** The board, its kerf and scale. */
interface Frame {
  readonly length: Mm;
  readonly width: Mm;
  readonly kerf: Mm;
  readonly scale: number;
}

/**
 * The number of each cut at its line: outside the board where the line runs out at the far end or the far edge, else beside
 * it on the near side, else on the far side, wherever nothing else stands. `taken` is what is lettered or drawn already.
 */
export function cutNumbers(lines: readonly SawLine[], frame: Frame, taken: readonly Room[]): Text[] {
  const blades = lines.map((line) => roomOfLine(line, frame.kerf));
  const letters = [...taken];
  return lines.map((line) => {
    const ways = waysOf(line, frame);
    const { scale } = frame;
    // Rather on another line than on other letters.
    const found = freePlace(ways, [...letters, ...blades], scale) ?? freePlace(ways, letters, scale) ?? ways[0]!;
    letters.push(roomOf(found, scale));
    return found;
  });
}

function roomOfLine({ kind, at, from, to }: SawLine, kerf: Mm): Room {
  return kind === 'rip' ? { low: [from, at], high: [to, at + kerf] } : { low: [at, from], high: [at + kerf, to] };
}

function waysOf(line: SawLine, { length, width, kerf, scale }: Frame): Text[] {
  const { kind, number, at, from, to } = line;
  const rip = kind === 'rip';
  const off = OFF * scale;
  const half = (HEIGHT * scale) / 2;
  const set = (place: Pt, align: Text['align']): Text => ({
    kind: 'text',
    layer: CUT,
    text: `${number}`,
    at: place,
    height: HEIGHT,
    valign: 'middle',
    bold: true,
    align: align!,
  });
  const middle = at + kerf / 2;
  const outside = to < (rip ? length : width) ? [] : [rip ? set([to + off, middle], 'left') : above(middle)];
  function above(x: Mm): Text {
    return set([x, to + off + half], 'center');
  }
  const end = Math.min(off + 2 * half, (to - from) / 2);
  const beside = SHARES.map((share) => from + end + share * (to - from - 2 * end));
  const near = beside.map((s) => (rip ? set([s, at - off - half], 'center') : set([at - off, s], 'right')));
  const far = beside.map((s) => (rip ? set([s, at + kerf + off + half], 'center') : set([at + kerf + off, s], 'left')));
  return [...outside, ...near, ...far];
}
