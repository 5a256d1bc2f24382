import { heightAt, type Surface, sectionAlong } from '../../geometry/surface.ts';
import type { PanelBody } from '../../model/body.ts';
import type { Mm } from '../../units/mm.ts';
import type { ThicknessClass } from '../../wood/thickness-classes.ts';

/** Where across the top a class of lumber serves, clean-up included. */
export interface ThicknessZone {
  readonly lumber: ThicknessClass;
  /** mm from the center line: from there to the edge the class is thick enough; undefined when it is so nowhere. */
  readonly from?: Mm;
  /** The limit is the long edge itself: no strip comes out of the class. */
  readonly edgeOnly?: true;
  /** A joint on which the limit falls, mm from the center line: nothing is spare there. */
  readonly onJoint?: Mm;
}

/** Closer than this a limit falls on a joint, mm (our convention). */
const ON_JOINT: Mm = 0.01;

/** A class that is thick enough to this is thick enough, mm (our convention). */
const SAME: Mm = 1e-6;

/**
 * The zones of a top, thickest class first.
 *
 * @param cleanUp mm to have over the finished thickness.
 * @param joints mm from the center line, where strips meet.
 */
export function zonesOf(
  panel: PanelBody,
  cleanUp: Mm,
  classes: readonly ThicknessClass[],
  joints: readonly Mm[],
): ThicknessZone[] {
  return classes.toReversed().map((lumber): ThicknessZone => {
    const from = servesFrom(panel, lumber.dressed.value - cleanUp);
    if (from === undefined) return { lumber };
    if (isAtEdge(panel, from)) return { lumber, from, edgeOnly: true };
    const onJoint = joints.map(Math.abs).find((y) => y > 0 && Math.abs(y - from) < ON_JOINT);
    return { lumber, from, ...(onJoint === undefined ? {} : { onJoint }) };
  });
}

/** Whether a place, mm from the center line, is the long edge of a top, or as good as. */
export const isAtEdge = ({ width }: PanelBody, place: Mm): boolean => place > width / 2 - ON_JOINT;

/** mm from the center line from which the top is nowhere thicker than `most`; undefined when it is so at an edge. */
export function servesFrom({ underside, length, width }: PanelBody, most: Mm): Mm | undefined {
  const rays = [0, length].flatMap((x) => [1, -1].map((side) => onRay(underside, x, (side * width) / 2, most)));
  const found = rays.filter((y): y is Mm => y !== undefined);
  return found.length === rays.length ? Math.max(...found) : undefined;
}

/** The same on the line across the top at `x`, from the center line to one edge. */
function onRay(underside: Surface, x: Mm, edge: Mm, most: Mm): Mm | undefined {
  if (heightAt(underside, x, edge) > most + SAME) return undefined;
  const points = sectionAlong(underside, [x, 0], [x, edge]);
  for (let k = points.length - 1; k > 0; k--) {
    const [inner, outer] = [points[k - 1]!, points[k]!];
    if (inner.z > most + SAME) return outer.s - ((most - outer.z) / (inner.z - outer.z)) * (outer.s - inner.s);
  }
  return 0;
}
