import type { Entity } from '../../drawing/drawing.ts';
import type { Pt, Text } from '../../drawing/entity.ts';
import { roomFor } from '../../drawing/fit-text.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { spread } from '../../drawing/spread.ts';
import type { Mm } from '../../units/mm.ts';

/** A distance from the datum and what is written at it. */
export interface Running {
  readonly at: Mm;
  readonly text: string;
}

/** Paper mm, our convention: gap from the edge, end of the straight stretch, end of the slanting one; then the letters. */
const TICK = { gap: 0.5, straight: 1.5, slanting: 4, text: 4.8 } as const;

/**
 * Paper mm: height of a capital, and room from one line of lettering to the next; 1.8 is of the series of ISO 3098-1,
 * the room our convention.
 */
const HEIGHT = 1.8;
const PITCH = 3;

/**
 * Paper mm: figures lie level below the board when none is moved further than this from its tick, else they stand; our
 * convention.
 */
const MOST_MOVED = 6;
const APART = 2;

/**
 * Distances that all run from one datum, no dimension lines: a tick at each and its figure outside, figures moved apart
 * where they would touch. Below the edge y = 0 for distances along x, left of the end x = 0 for distances along y.
 */
export function runningDims(marks: readonly Running[], side: 'below' | 'left', scale: number): Entity[] {
  const level = side === 'below' && liesLevel(marks, scale);
  const places = placesOf(marks, level, scale);
  const on = (along: Mm, out: number): Pt => (side === 'below' ? [along, -out * scale] : [-out * scale, along]);
  const lie: Partial<Text> = level
    ? { align: 'center', valign: 'top' }
    : { align: 'right', valign: 'middle', ...(side === 'below' ? { rotation: 90 } : {}) };
  return marks.flatMap(({ at, text }, n): Entity[] => [
    {
      kind: 'poly',
      layer: LAYERS.DIMENSION,
      points: [on(at, TICK.gap), on(at, TICK.straight), on(places[n]!, TICK.slanting)],
      closed: false,
    },
    { kind: 'text', layer: LAYERS.DIMENSION, text, at: on(places[n]!, TICK.text), height: HEIGHT, ...lie },
  ]);
}

const placesOf = (marks: readonly Running[], level: boolean, scale: number): readonly number[] =>
  spread(marks.map(({ at, text }) => ({ middle: at, width: (level ? roomFor(text, HEIGHT) + APART : PITCH) * scale })));

function liesLevel(marks: readonly Running[], scale: number): boolean {
  const places = placesOf(marks, true, scale);
  return marks.every(({ at }, n) => Math.abs(places[n]! - at) <= MOST_MOVED * scale);
}
