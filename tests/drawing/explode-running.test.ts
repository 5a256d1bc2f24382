import { describe, expect, test } from 'vitest';
import type { Text } from '../../lib/drawing/entity.ts';
import { explode } from '../../lib/drawing/explode.ts';
import { move } from '../../lib/drawing/move.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';
import { running } from './samples.ts';

const style = { ...DEFAULT_STYLE, lengths: { system: 'mm', decimals: 1 } } as const;

const textOf = (dim: ReturnType<typeof running>): Text => {
  const { entities } = explode(dim, style);
  return entities.find((mark): mark is Text => mark.kind === 'text')!;
};

describe('a running dimension', () => {
  test('measures from the datum, whichever hand the place is to, and letters it after its letter', () => {
    expect(explode(running(0, 412.5, 0), style)).toMatchObject({ value: 412.5, text: 'a  412.5' });
    expect(explode(running(480, 285, 1), style)).toMatchObject({ value: 195, text: 'a  195' });
  });

  test('is a line and a text at its end: upright below an edge, level beside an end', () => {
    const below = running(0, 60, 0);
    expect(explode(below, style).entities.map(({ kind }) => kind)).toEqual(['poly', 'text']);
    expect(textOf(below)).toMatchObject({ at: [62, -9 - style.textGap], rotation: 90, align: 'right' });
    expect(textOf(running(0, 60, 1))).toMatchObject({ at: [-9 - style.textGap, 62], align: 'right' });
    expect(textOf(running(0, 60, 1)).rotation ?? 0).toBe(0);
  });

  test('on the other side the text begins at the line', () => {
    const { line, ...rest } = running(0, 60, 0);
    const above = {
      ...rest,
      line: [
        [60, 1],
        [60, 4],
        [60, 9],
      ] as const,
    };
    expect(textOf(above)).toMatchObject({ at: [60, 9 + style.textGap], rotation: 90, align: 'left' });
    expect(explode(above, style).textAt[1]).toBeGreaterThan(9);
    expect(explode({ ...rest, line }, style).textAt[1]).toBeLessThan(-9);
  });

  test('moved, it measures the same, elsewhere', () => {
    const dim = running(10, 60, 1);
    const moved = explode(move(dim, [100, 7]) as typeof dim, style);
    const still = explode(dim, style);
    expect(moved.value).toBe(50);
    expect(moved.textAt).toEqual([still.textAt[0] + 100, still.textAt[1] + 7]);
    expect(moved.def).toMatchObject({ from: [100, 17], to: [100, 67], line: [91, 67] });
  });

  test('of the datum itself there is none', () => {
    expect(() => explode(running(10, 10, 0), style)).toThrow(RangeError);
  });
});
