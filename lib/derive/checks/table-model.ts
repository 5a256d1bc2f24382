import { type Frame, toOuter } from '../../geometry/frame.ts';
import { heightAt, type Surface, surfaceToOuter } from '../../geometry/surface.ts';
import type { Vec3 } from '../../geometry/vec.ts';
import { type Assembly, partOf, placeOf, visibleParts } from '../../model/assembly.ts';
import type { PanelBody } from '../../model/body.ts';
import type { Part, PartId } from '../../model/part.ts';
import { density } from '../../wood/density.ts';
import { speciesById } from '../../wood/species-list.ts';
import { massCenter } from '../solids/mass-center.ts';
import { blankOf } from '../solids/solid-of.ts';

/** A straight stretch of base that the top lies on, across the table or along it. */
export interface Bearing {
  readonly part: PartId;
  /** mm along the table, its middle. */
  readonly x: number;
  /** mm across, from the right end to the left one. */
  readonly from: number;
  readonly to: number;
  /** mm along the table, its two ends, when it lies along it: an apron. */
  readonly along?: readonly [number, number];
  /** The top is screwed to it, so it holds both ways. */
  readonly screwed: boolean;
}

export interface Mass {
  /** kg. */
  readonly mass: number;
  /** mm, in the table's frame. */
  readonly center: Vec3;
}

/** What the structural checks see of a table: a top on bearings on a base that stands on the floor. */
export interface TableModel {
  readonly top: Part;
  readonly body: PanelBody;
  readonly frame: Frame;
  /** mm of wood at a place of the table, in the table's frame. */
  readonly thickness: (x: number, y: number) => number;
  /** Heights of the underside over the floor. */
  readonly underside: Surface;
  /** mm, show face over the floor. */
  readonly height: number;
  /** By x. */
  readonly bearings: readonly Bearing[];
  readonly topMass: Mass;
  readonly baseMass: Mass;
  readonly mass: Mass;
  /** Where it stands on the floor: centers of the pads, or the lowest corners. mm, x and y. */
  readonly contacts: readonly (readonly [number, number])[];
}

/** Moisture at which wood is weighed, percent: the reference of the handbook's densities. */
const WEIGHED_AT = 12;

/** A post or leg that ends this close under the top carries it, mm. */
const TOUCHES = 0.5;

/** The model of a table, or undefined when the piece has no top of one panel lying on a base. */
export function tableModel(assembly: Assembly): TableModel | undefined {
  const known = models.get(assembly);
  if (known) return known.model;
  const model = makeModel(assembly);
  models.set(assembly, { model });
  return model;
}

/** Many checks ask for the model of one assembly, which never changes. */
const models = new WeakMap<Assembly, { readonly model: TableModel | undefined }>();

function makeModel(assembly: Assembly): TableModel | undefined {
  const panels = assembly.parts.filter((p) => p.body.kind === 'panel');
  const top = panels.reduce<Part | undefined>((a, b) => (a && up(assembly, a) >= up(assembly, b) ? a : b), undefined);
  if (top?.body.kind !== 'panel') return undefined;
  const body = top.body;
  const frame = placeOf(assembly, top.id);
  const underside = surfaceToOuter(body.underside, frame);
  const height = frame.origin[2];
  const inside = new Set(top.members ?? []);
  const base = visibleParts(assembly).filter((p) => p.id !== top.id && !inside.has(p.id) && p.kind !== 'looseTenon');
  const bearings = bearingsOf(assembly, top, base, underside);
  if (bearings.length === 0) return undefined;
  const topMass = weigh(assembly, [top]);
  const baseMass = weigh(assembly, base);
  return {
    top,
    body,
    frame,
    thickness: (x, y) => height - heightAt(underside, x, y),
    underside,
    height,
    bearings,
    topMass,
    baseMass,
    mass: together([topMass, baseMass]),
    contacts: contactsOf(assembly, base),
  };
}

/** mm over the floor; of several panels the highest is the top. */
const up = (assembly: Assembly, part: Part): number => placeOf(assembly, part.id).origin[2];

/** Mass of some parts; tenons are left out and so are their mortises, which they fill. */
export function weigh(assembly: Assembly, parts: readonly Part[]): Mass {
  return together(
    parts.map((part) => {
      const { volume, center } = massCenter(blankOf(part));
      const mass = (volume / 1e9) * density(speciesById(part.wood), WEIGHED_AT).value;
      return { mass, center: toOuter(placeOf(assembly, part.id), center) };
    }),
  );
}

function together(masses: readonly Mass[]): Mass {
  const mass = masses.reduce((sum, m) => sum + m.mass, 0);
  const along = (k: 0 | 1 | 2): number => masses.reduce((sum, m) => sum + m.mass * m.center[k], 0) / mass;
  return mass > 0 ? { mass, center: [along(0), along(1), along(2)] } : { mass: 0, center: [0, 0, 0] };
}

/** A bearing that is longer along the table than across it, and longer than this, lies along it, mm (our convention). */
const APRON = 150;

function bearingsOf(assembly: Assembly, top: Part, base: readonly Part[], underside: Surface): Bearing[] {
  const screwed = new Set(assembly.fixings.filter((f) => f.into === top.id).map((f) => f.base));
  return base
    .filter((part) => screwed.has(part.id) || touchesUnderside(assembly, part, underside))
    .map((part) => {
      const points = worldPoints(assembly, part);
      const [left, right] = reach(points.map((p) => p[0]));
      const [from, to] = reach(points.map((p) => p[1]));
      return {
        part: part.id,
        x: (left + right) / 2,
        from,
        to,
        ...(right - left > Math.max(to - from, APRON) ? { along: [left, right] as const } : {}),
        screwed: screwed.has(part.id),
      };
    })
    .sort((a, b) => a.x - b.x || a.from - b.from);
}

const reach = (all: readonly number[]): readonly [number, number] => [Math.min(...all), Math.max(...all)];

const touchesUnderside = (assembly: Assembly, part: Part, underside: Surface): boolean =>
  worldPoints(assembly, part).some((p) => Math.abs(heightAt(underside, p[0], p[1]) - p[2]) < TOUCHES);

function worldPoints(assembly: Assembly, part: Part): Vec3[] {
  const frame = placeOf(assembly, part.id);
  return blankOf(part).vertices.map((p) => toOuter(frame, p));
}

/** Corners this close to the lowest one stand on the floor, mm. */
const ON_FLOOR = 0.05;

export function contactsOf(assembly: Assembly, base: readonly Part[]): [number, number][] {
  const pads = base.filter((p) => p.kind === 'pad');
  if (pads.length > 0) {
    return pads.map((p) => {
      const { center } = massCenter(blankOf(p));
      const [x, y] = toOuter(placeOf(assembly, p.id), center);
      return [x, y];
    });
  }
  const points = base.flatMap((p) => worldPoints(assembly, partOf(assembly, p.id)));
  const floor = Math.min(...points.map((p) => p[2]));
  return points.filter((p) => p[2] < floor + ON_FLOOR).map(([x, y]) => [x, y]);
}
