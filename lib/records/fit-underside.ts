import { type FittedPlane, fitPlane, type NoPlane } from '../geometry/fit-planes.ts';
import { heightAt, type Plane, planeAt, planeHeight, type Surface } from '../geometry/surface.ts';
import type { Vec3 } from '../geometry/vec.ts';
import type { MeasuredUnderside, Station } from '../model/records.ts';
import type { StationFit, UndersideFit } from '../model/underside-fit.ts';
import type { Mm } from '../units/mm.ts';

/** Why readings make no underside: of one plane, or of all together. */
export interface NoFit {
  /** `left`, `right`, or `flat` for a top of one plane. */
  readonly plane: string;
  readonly why: NoPlane | 'valley' | 'thin';
  readonly stations: readonly Station[];
}

/** A top fitted to be thinner than this somewhere is no top: readings are wrong, mm (our convention). */
const THINNEST: Mm = 3;

/** A reading this near to a crease of the nominal underside lies on it, mm (our convention). */
const ON_CREASE: Mm = 1;

/**
 * The underside that readings make: one plane for each plane of the nominal one, by least squares over the readings of its
 * region. A reading on the ridge counts for both halves, unless it says its side. The planes meet where they happen to
 * meet: near the nominal ridge, not exactly on it.
 */
export function fitUnderside(
  { date, stations }: MeasuredUnderside,
  nominal: Surface,
  size: { readonly length: Mm; readonly width: Mm },
): UndersideFit | readonly NoFit[] {
  const regions = nominal.planes.map((plane) => {
    const own = stations.filter((station) => belongs(station, plane, nominal));
    return { plane, own, fitted: fitPlane(plane.name, own.map(pointOf)) };
  });
  const wrong = regions.flatMap(({ plane, own, fitted }): NoFit[] =>
    typeof fitted === 'string' ? [{ plane: plane.name, why: fitted, stations: own }] : [],
  );
  if (wrong.length > 0) return wrong;
  const good = regions.map(({ own, fitted }) => ({ own, fitted: fitted as FittedPlane }));
  const surface: Surface = { take: nominal.take, planes: good.map(({ fitted }) => fitted.plane) };
  const turned = good.filter(({ own, fitted }) => planeAt(surface, ...middleOf(own)).name !== fitted.plane.name);
  if (turned.length > 0) {
    return turned.map(({ own, fitted }) => ({ plane: fitted.plane.name, why: 'valley', stations: own }));
  }
  const thin = [0, size.length].flatMap((x) => [-size.width / 2, size.width / 2].map((y) => [x, y] as const));
  const under = thin.find(([x, y]) => heightAt(surface, x, y) < THINNEST);
  if (under) return [{ plane: planeAt(surface, ...under).name, why: 'thin', stations }];
  const planes = good.map(({ own, fitted: { plane, rms, spread, twist } }) => ({
    plane,
    readings: own.length,
    rms,
    spread,
    ...(twist === undefined ? {} : { twist: (twist * size.length * size.width) / 2 }),
  }));
  return { date, surface, planes, stations: good.flatMap(({ own, fitted }) => own.map((s, k) => fitOf(s, fitted, k))) };
}

const pointOf = ({ along, across, thickness }: Station): Vec3 => [along, across, thickness];

function belongs({ along, across, side }: Station, plane: Plane, nominal: Surface): boolean {
  if (side && Math.abs(across) <= ON_CREASE && nominal.planes.some(({ name }) => name === side))
    return plane.name === side;
  const steepest = Math.max(...nominal.planes.map((p) => Math.hypot(p.a - plane.a, p.b - plane.b)));
  const gap = Math.abs(planeHeight(plane, along, across) - heightAt(nominal, along, across));
  return gap <= steepest * ON_CREASE + 1e-9;
}

function middleOf(stations: readonly Station[]): [number, number] {
  const mean = (of: (s: Station) => number): number => stations.reduce((sum, s) => sum + of(s), 0) / stations.length;
  return [mean((s) => s.along), mean((s) => s.across)];
}

const fitOf = (station: Station, { plane, residuals }: FittedPlane, k: number): StationFit => ({
  station,
  plane: plane.name,
  fitted: station.thickness - residuals[k]!,
  residual: residuals[k]!,
});
