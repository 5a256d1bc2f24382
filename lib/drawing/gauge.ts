import type { Mm } from '../units/mm.ts';
import type { Mark, Pt } from './entity.ts';
import { LAYERS } from './layers.ts';

/** Height of one row of blocks, of a bar of two rows, and of its words; paper mm, ours. */
const ROW = 1.2;
const TALL = 2 * ROW;
const APART = 0.8;
const WORDS = 1.9;

/** What the bars take along their length, words included, mm; our convention. */
export const GAUGE_LENGTH = 116;

type PointOf = (along: Mm, across: Mm) => Pt;

/** Blocks in two rows, chequered, so that both ends are edges of ink at the exact length. */
function bar(point: PointOf, across: Mm, blocks: number, length: Mm): Mark[] {
  return Array.from({ length: blocks }, (_, k): Mark => {
    const [from, to] = [(k * length) / blocks, ((k + 1) * length) / blocks];
    const [low, high] = k % 2 === 0 ? [across, across + ROW] : [across + ROW, across + TALL];
    const corners = [point(from, low), point(to, low), point(to, high), point(from, high)] as const;
    return { kind: 'solid', layer: LAYERS.GAUGE, corners };
  });
}

/**
 * Two bars to be measured on the print, 100 mm and 4 in, from their left or lower end.
 *
 * @param at the lower left corner for bars across, the lower right one for bars up the sheet.
 */
export function gauge(at: Pt, direction: 'across' | 'up'): readonly Mark[] {
  const point: PointOf = (along, across) =>
    direction === 'across' ? [at[0] + along, at[1] + across] : [at[0] - across, at[1] + along];
  const word = (text: string, across: Mm): Mark => ({
    kind: 'text',
    layer: LAYERS.GAUGE,
    text,
    at: point(103.5, across + (TALL - WORDS) / 2),
    height: WORDS,
    rotation: direction === 'across' ? 0 : 90,
  });
  const second = TALL + APART;
  return [...bar(point, 0, 8, 101.6), word('4 in', 0), ...bar(point, second, 10, 100), word('100 mm', second)];
}
