import { describe, expect, it } from 'vitest';
import { CHERRY, demoPlate, give, LENGTH, lazily, PLACES, QUARTER_SAWN, WIDTH } from './plate-demo.ts';
import { grillage, grillageGive } from './plate-grillage.ts';

// Values of another grillage of the same kind, 42 x 24 (computed).
const OTHER = {
  center: 0.867917,
  midLongEdge: 3.70502,
  corner: 5.78061,
  edgeOverBearer: 0.849718,
  midShortEnd: 1.14617,
};

const places = Object.entries(PLACES);

// Crossed beams know nothing of the strain across that bending along brings; the more so the stiffer the wood across.
describe.each([
  ['flat-sawn', 0.06, demoPlate([42, 24])],
  ['flat-sawn, coarser', 0.06, demoPlate([42, 16])],
  ['thick edge', 0.06, demoPlate([42, 24], 45)],
  ['quarter-sawn', 0.075, demoPlate([42, 24], 28.575, QUARTER_SAWN)],
  ['no strain across', 0.015, demoPlate([42, 24], 28.575, { ...CHERRY, poisson: 0 })],
  ['quarter-sawn, no strain across', 0.015, demoPlate([42, 24], 28.575, { ...QUARTER_SAWN, poisson: 0 })],
])('crossed beams and the plate, %s', (_name, within, plate) => {
  const beams = grillage(plate, [LENGTH, WIDTH]);
  const factored = lazily(() => plate);

  it.each(places)(`agree within ${100 * within} %% at %s`, (_place, at) => {
    const [mine, theirs] = [give(factored(), at), grillageGive(beams, at, 1000)];
    expect(Math.abs(theirs / mine - 1)).toBeLessThan(within);
  });
});

describe('crossed beams', () => {
  it.each(places)('are those of the other calculation at %s', (place, at) => {
    const beams = grillage(demoPlate([42, 16]), [LENGTH, WIDTH]);
    expect(grillageGive(beams, at, 1000) / OTHER[place as keyof typeof OTHER]).toBeCloseTo(1, 5);
  });
});
