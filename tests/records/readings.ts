import { heightAt, type Surface } from '../../lib/geometry/surface.ts';
import type { MeasuredUnderside, Station } from '../../lib/model/records.ts';
import type { UndersideFit } from '../../lib/model/underside-fit.ts';
import { wedge } from '../../lib/parts/top.ts';
import { fitUnderside } from '../../lib/records/fit-underside.ts';

/** The top of the reading table, mm. */
export const SIZE = { length: 84 * 25.4, width: 40 * 25.4 } as const;
export const NOMINAL: Surface = wedge(SIZE.width, 57.15, 28.575);

/** Five stations on three lines for each half, as one measures: mm. */
export const PLACES: readonly (readonly [along: number, across: number, side: 'left' | 'right'])[] = [
  355.6, 1066.8, 1778,
].flatMap((along) =>
  [0, 127, 254, 381, 495].flatMap((d) => [[along, -d, 'left'] as const, [along, d, 'right'] as const]),
);

/** Readings of a surface, each off by what `noise` says. */
export const readingsOf = (surface: Surface, noise: (k: number) => number = () => 0): MeasuredUnderside => ({
  date: '2026-12-01',
  stations: PLACES.map(([along, across, side], k): Station => {
    const plane = surface.planes.find((p) => p.name === side) ?? surface.planes[0]!;
    const only: Surface = { take: 'lowest', planes: [plane] };
    return { row: k + 3, along, across: across + 0, side, thickness: heightAt(only, along, across) + noise(k) };
  }),
});

/** The fit of readings to the nominal underside. @throws Error when there is none. */
export function fitted(readings: MeasuredUnderside, nominal = NOMINAL): UndersideFit {
  const fit = fitUnderside(readings, nominal, SIZE);
  if (!('surface' in fit)) throw new Error(fit.map(({ plane, why }) => `${plane}: ${why}`).join());
  return fit;
}

/** Numbers of a normal distribution from even ones (Box and Muller). */
export const normalFrom = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
