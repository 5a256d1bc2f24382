import { type Assembly, visibleParts } from '../../model/assembly.ts';
import type { Part } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import type { Bounds } from '../solids/solid.ts';
import { placedBox } from './room-under.ts';
import { weightOf } from './solvers/mass.ts';
import type { Standing } from './solvers/tip.ts';
import { contactsOf, tableModel, weigh } from './table-model.ts';

/** A whole piece as it stands on the floor, and what of it is loaded. */
export interface StandingPiece extends Standing {
  /** The top, or the seat: what lies highest. */
  readonly loaded: Part;
  /** Around it, mm in the table's frame. */
  readonly box: Bounds;
  /** kg. */
  readonly mass: number;
  /** mm, its upper face over the floor. */
  readonly height: Mm;
  /** Nothing of the base stands out beyond it: nobody stumbles over a foot. */
  readonly under: boolean;
}

/** Standing out by no more than this does not count, mm. */
const PROUD: Mm = 0.1;

/** Any piece of furniture as it stands; undefined when it stands on one spot. */
export function standingPiece(assembly: Assembly): StandingPiece | undefined {
  const parts = visibleParts(assembly).filter((p) => p.kind !== 'looseTenon');
  const boxes = parts.map((part) => ({ part, box: placedBox(assembly, part) }));
  const model = tableModel(assembly);
  const { part: loaded, box } =
    boxes.find(({ part }) => part.id === model?.top.id) ??
    boxes.reduce((high, next) => (next.box.max[2] > high.box.max[2] ? next : high));
  const { mass, center } = model?.mass ?? weigh(assembly, parts);
  const contacts = model?.contacts ?? contactsOf(assembly, parts);
  const [x, y] = contacts[0]!;
  if (contacts.every((c) => c[0] === x && c[1] === y)) return undefined;
  const floor = Math.min(...boxes.map((b) => b.box.min[2]));
  const inside = (b: Bounds): boolean =>
    [0, 1].every(
      (k) => b.min[k as 0 | 1] >= box.min[k as 0 | 1] - PROUD && b.max[k as 0 | 1] <= box.max[k as 0 | 1] + PROUD,
    );
  return {
    loaded,
    box,
    mass,
    height: box.max[2] - floor,
    under: boxes.every((b) => inside(b.box)),
    contacts,
    center: [center[0], center[1]],
    weight: weightOf(mass),
  };
}
