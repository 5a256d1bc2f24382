import type { Frame } from '../geometry/frame.ts';
import type { Sawn } from '../wood/ring-angle.ts';
import type { Fixing, Joint } from './joint.ts';
import { isGlueUp, type Part, type PartId } from './part.ts';

export interface Place {
  readonly part: PartId;
  /** Where the part's frame lies in the table's frame: x along the table from the reference end, y across from the center line, z up from the floor. */
  readonly frame: Frame;
}

/** Amounts that are bought by the bottle and the can. Common practice, no source, unless said otherwise where they are set. */
export interface Supplies {
  /** mm of glue on one face of a joint. */
  readonly glueSpread: number;
  readonly coats: number;
  /** m² that a liter covers in one coat. */
  readonly coverage: number;
  /** Share added for what stays in brush and rag. */
  readonly spare: number;
}

/** Moisture of the wood in percent: when the top is fixed, and the ends of what it will see; and how its boards are sawn. */
export interface Climate {
  readonly fitting: number;
  readonly low: number;
  readonly high: number;
  readonly sawn: Sawn;
}

/** A piece of furniture as pure data: what each part is, where it stands, what holds it. */
export interface Assembly {
  readonly title: string;
  /** Sorted by id; ids and marks are unique. */
  readonly parts: readonly Part[];
  /** One for each part. */
  readonly places: readonly Place[];
  readonly joints: readonly Joint[];
  readonly fixings: readonly Fixing[];
  readonly supplies: Supplies;
  readonly climate: Climate;
}

/** What `assemble` takes: a part and where it stands. */
export interface PlacedPart {
  readonly part: Part;
  readonly frame: Frame;
}

export interface AssemblyParts {
  readonly title: string;
  readonly placed: readonly PlacedPart[];
  readonly joints?: readonly Joint[];
  readonly fixings?: readonly Fixing[];
  readonly supplies?: Partial<Supplies>;
  readonly climate?: Partial<Climate>;
}

/** Glue 7 mil (0.178 mm) on one face: middle of the 6 to 8 mil of common practice; 24 m²/L a coat for oils and 15 % spare: common practice, no source. */
export const DEFAULT_SUPPLIES: Supplies = { glueSpread: 0.1778, coats: 2, coverage: 24, spare: 0.15 };

/** A heated house: our convention. */
export const DEFAULT_CLIMATE: Climate = { fitting: 7.5, low: 5, high: 11, sawn: 'flat' };

const ID = /^[a-z0-9]+(?:-[a-z0-9]+)*(?:\/[a-z0-9]+(?:-[a-z0-9]+)*)*$/;

/**
 * An assembly from placed parts, sorted by id.
 *
 * @throws RangeError when an id or mark stands twice, an id is not readable, or a joint, fixing or glue-up names a part
 * or feature that is not there. The message names it.
 */
export function assemble(input: AssemblyParts): Assembly {
  const { title, joints = [], fixings = [], supplies, climate } = input;
  const placed = [...input.placed].sort((a, b) => (a.part.id < b.part.id ? -1 : 1));
  const parts = placed.map((p) => p.part);
  checkNames(parts);
  checkReferences(new Map(parts.map((part) => [part.id, part])), joints, fixings);
  return {
    title,
    parts,
    places: placed.map((p) => ({ part: p.part.id, frame: p.frame })),
    joints,
    fixings,
    supplies: { ...DEFAULT_SUPPLIES, ...supplies },
    climate: { ...DEFAULT_CLIMATE, ...climate },
  };
}

function checkNames(parts: readonly Part[]): void {
  const ids = new Set<PartId>();
  const marks = new Set<string>();
  for (const part of parts) {
    if (!ID.test(part.id)) throw new RangeError(`part id "${part.id}" must be lower case words with "-" and "/"`);
    if (ids.has(part.id)) throw new RangeError(`part id "${part.id}" stands twice`);
    if (marks.has(part.mark)) throw new RangeError(`mark "${part.mark}" stands twice (second time on ${part.id})`);
    ids.add(part.id);
    marks.add(part.mark);
  }
}

function checkReferences(parts: ReadonlyMap<PartId, Part>, joints: readonly Joint[], fixings: readonly Fixing[]): void {
  const need = (id: PartId, by: string): Part => {
    const part = parts.get(id);
    if (!part) throw new RangeError(`${by} names part "${id}", which is not in the assembly`);
    return part;
  };
  const needFeature = (id: PartId, feature: string, by: string): void => {
    if (!need(id, by).features.some((f) => f.id === feature)) {
      throw new RangeError(`${by} names feature "${feature}", which part "${id}" does not have`);
    }
  };
  for (const part of parts.values()) {
    for (const member of part.members ?? []) need(member, `glue-up ${part.id}`);
  }
  for (const joint of joints) {
    for (const { part, features } of joint.sides) {
      need(part, `joint ${joint.id}`);
      for (const feature of features) needFeature(part, feature, `joint ${joint.id}`);
    }
    for (const tenon of joint.tenons) need(tenon, `joint ${joint.id}`);
  }
  for (const fixing of fixings) {
    needFeature(fixing.base, fixing.baseFeature, `fixing ${fixing.id}`);
    needFeature(fixing.into, fixing.pilotFeature, `fixing ${fixing.id}`);
  }
}

/** The part with this id. @throws RangeError when there is none. */
export function partOf(assembly: Assembly, id: PartId): Part {
  const part = assembly.parts.find((p) => p.id === id);
  if (!part) throw new RangeError(`there is no part "${id}" in ${assembly.title}`);
  return part;
}

/** Where the part with this id stands. @throws RangeError when there is none. */
export function placeOf(assembly: Assembly, id: PartId): Frame {
  const place = assembly.places.find((p) => p.part === id);
  if (!place) throw new RangeError(`part "${id}" of ${assembly.title} has no place`);
  return place.frame;
}

/** Every piece of wood once: glued panels left out, their members kept. */
export const pieces = (assembly: Assembly): Part[] => assembly.parts.filter((part) => !isGlueUp(part));

/** What one sees: glued panels kept, their members left out. */
export function visibleParts(assembly: Assembly): Part[] {
  const inside = new Set(assembly.parts.flatMap((part) => part.members ?? []));
  return assembly.parts.filter((part) => !inside.has(part.id));
}
