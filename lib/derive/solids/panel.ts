import { heightAt } from '../../geometry/surface.ts';
import type { Vec2, Vec3 } from '../../geometry/vec.ts';
import type { PanelBody } from '../../model/body.ts';
import type { EdgeProfile } from '../../model/feature.ts';
import { type DividedPlan, dividePlan } from './divide.ts';
import { profileRows } from './profile.ts';
import { type Face, face, type Solid } from './solid.ts';

/** One ring of points around the panel: what it is divided into, and where its points start among the vertices. */
interface Ring {
  readonly plan: DividedPlan;
  readonly first: number;
}

/**
 * A panel with a flat show face, a worked underside and eased arrises, as a ring of points for each row of each profile.
 * A profile keeps its distance from the underside, so it climbs with the taper along the ends.
 *
 * Handled: flat, single slope, wedge, and any surface whose creases run out through the same edges on every ring. Not
 * handled: a crease that runs out at a corner which a profile rounds.
 *
 * @throws RangeError when a crease changes edges between two rings.
 */
export function panelSolid(body: PanelBody, profiles: readonly EdgeProfile[]): Solid {
  const vertices: Vec3[] = [];
  const faces: Face[] = [];
  const flat = { take: 'lowest' as const, planes: [{ name: 'show', a: 0, b: 0, c: 0 }] };
  const ring = (inset: number, surface: typeof flat | PanelBody['underside'], z: (at: Vec2) => number): Ring => {
    const plan = dividePlan(rectangle(body, inset), surface);
    const first = vertices.length;
    for (const at of plan.points) vertices.push([at[0], at[1], z(at)]);
    return { plan, first };
  };
  const showRings = profileRows(profiles.find((p) => p.edge === 'show')).map(({ inset, depth }) =>
    ring(inset, flat, () => depth),
  );
  const underRings = profileRows(profiles.find((p) => p.edge === 'underside'))
    .reverse()
    .map(({ inset, depth }) => ring(inset, body.underside, (at) => heightAt(body.underside, at[0], at[1]) - depth));

  const [show, under] = [showRings[0]!, underRings[underRings.length - 1]!];
  faces.push(face(vertices, 'show', shifted(show.plan.regions[0]!.loop, show.first).reverse()));
  bands(vertices, faces, showRings, 'profile.show');
  wall(vertices, faces, showRings[showRings.length - 1]!, underRings[0]!);
  bands(vertices, faces, underRings, 'profile.underside');
  for (const { plane, loop } of under.plan.regions) {
    faces.push(face(vertices, `underside.${plane}`, shifted(loop, under.first)));
  }
  return { vertices, faces };
}

const EDGE_NAMES = ['edge.right', 'end.far', 'edge.left', 'end.reference'] as const;

/** The plan moved in by `inset`: reference end at x = 0; the edge at negative y is the table's left edge turned over. */
function rectangle({ length, width }: PanelBody, inset: number): Vec2[] {
  const y = width / 2 - inset;
  return [
    [inset, -y],
    [length - inset, -y],
    [length - inset, y],
    [inset, y],
  ];
}

const shifted = (loop: readonly number[], by: number): number[] => loop.map((i) => i + by);

/** The facets between neighbouring rings of one profile. */
function bands(vertices: Vec3[], faces: Face[], rings: readonly Ring[], name: string): void {
  rings.slice(1).forEach((lower, k) => {
    const upper = rings[k]!;
    EDGE_NAMES.forEach((edge, e) => {
      const a = shifted(upper.plan.edges[e]!, upper.first);
      const b = shifted(lower.plan.edges[e]!, lower.first);
      if (upper.plan.edgePlanes[e]!.join() !== lower.plan.edgePlanes[e]!.join()) {
        throw new RangeError(
          `a crease of the underside runs out where ${name} meets ${edge}; that profile cannot be shaped`,
        );
      }
      for (let i = 0; i + 1 < a.length; i++) {
        faces.push(face(vertices, `${name}.${edge}`, [a[i]!, a[i + 1]!, b[i + 1]!, b[i]!]));
      }
    });
  });
}

/** The upright part of the four edges, between the two profiles. */
function wall(vertices: Vec3[], faces: Face[], upper: Ring, lower: Ring): void {
  EDGE_NAMES.forEach((edge, e) => {
    const a = shifted(upper.plan.edges[e]!, upper.first);
    const b = shifted(lower.plan.edges[e]!, lower.first);
    faces.push(face(vertices, edge, [...a, ...b.reverse()]));
  });
}
