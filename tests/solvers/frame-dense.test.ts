import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LoadCase, SpaceFrame } from '../../lib/derive/checks/solvers/frame-model.ts';
import { degrees } from '../../lib/units/mm.ts';
import { denseMoves } from './dense-frame.ts';
import { loadOn, randomFrames, randomLoads } from './random-frames.ts';
import { READING_TABLE, solvedCase, topPush, trestleBase } from './sample-bases.ts';

/** Greatest difference of any movement, as a part of the greatest movement of its kind (1e-6 mm or 1e-9 rad if less). */
function difference(frame: SpaceFrame, load: LoadCase): number {
  const [mine, other] = [solvedCase(frame, load).moves, denseMoves(frame, load)];
  let [off, shift, turn] = [0, 1e-6, 1e-9];
  for (const x of other.values()) {
    shift = Math.max(shift, ...x.slice(0, 3).map(Math.abs));
    turn = Math.max(turn, ...x.slice(3).map(Math.abs));
  }
  for (const [name, x] of other) {
    const m = mine.get(name)!;
    x.slice(0, 3).forEach((value, k) => {
      off = Math.max(off, Math.abs(m.shift[k]! - value) / shift);
    });
    x.slice(3).forEach((value, k) => {
      off = Math.max(off, Math.abs(m.turn[k]! - degrees(value)) / degrees(turn));
    });
  }
  return off;
}

describe('the frame solver and a full matrix with a separate unknown behind every spring', () => {
  test('give the same movements of a reading-room table', () => {
    const base = trestleBase(READING_TABLE);
    expect(difference(base, topPush('along', [300, 0, 0]))).toBeLessThan(1e-8);
    expect(difference(base, topPush('across', [0, 300, 0]))).toBeLessThan(1e-8);
    expect(difference(base, topPush('down', [0, 0, -1000]))).toBeLessThan(1e-8);
  });

  test('give the same movements of any frame', () => {
    fc.assert(
      fc.property(randomFrames, randomLoads, (frame, loads) => {
        expect(difference(frame, loadOn(frame, loads))).toBeLessThan(1e-6);
      }),
      { seed: 7_302, numRuns: 150 },
    );
  });
});
