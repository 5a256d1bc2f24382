import { type Job, makeJob } from '../../lib/build/job.ts';
import { topOf } from '../../lib/build/measured-top.ts';
import { heightAt, type Surface } from '../../lib/geometry/surface.ts';
import type { MeasuredUnderside, Station } from '../../lib/model/records.ts';
import type { Changes, DesignName } from '../written.ts';
import { DESIGNS, jobOf, valuesOf } from '../written.ts';

/** Readings at five stations on three lines a half, as one takes them, of an underside that `made` makes of the nominal one. */
export function readings(nominal: Job, made: (surface: Surface) => Surface): MeasuredUnderside {
  const { body, finished } = topOf(nominal.assembly)!;
  const surface = made(body.underside);
  const { length, width } = finished;
  const places = [0.15, 0.5, 0.85].flatMap((share) =>
    [0.02, 0.12, 0.25, 0.37, 0.49].flatMap((d) => [-d, d].map((y) => [share * length, y * width] as const)),
  );
  const depth = (x: number, y: number): number => {
    const name = surface.planes.length === 1 ? 'flat' : y < 0 ? 'left' : 'right';
    return heightAt({ ...surface, planes: surface.planes.filter((p) => p.name === name) }, x, y);
  };
  const stations = places.map(
    ([along, across], k): Station => ({ row: k + 3, along, across, thickness: depth(along, across) }),
  );
  return { date: '2026-12-01', stations };
}

/** The same underside with each plane moved: mm at the ridge, and rises along and across. */
export const moved =
  (by: Readonly<Record<string, { c?: number; a?: number; b?: number }>>) =>
  ({ take, planes }: Surface): Surface => ({
    take,
    planes: planes.map((p) => {
      const { a = 0, b = 0, c = 0 } = by[p.name] ?? {};
      return { ...p, a: p.a + a, b: p.b + b, c: p.c + c };
    }),
  });

/** A design on an underside as measured. */
export function measuredJob(name: DesignName, made: (surface: Surface) => Surface, changes: Changes = {}): Job {
  const nominal = jobOf(name, changes);
  const design = DESIGNS[name];
  return makeJob(design as never, valuesOf(design, changes), undefined, { underside: readings(nominal, made) });
}
