import type { Vec3 } from '../../../geometry/vec.ts';
import type { Mm } from '../../../units/mm.ts';

/** A way in which a node can move: along an axis of the table, or (r) turning about it, right-handed. */
export type Dof = 'x' | 'y' | 'z' | 'rx' | 'ry' | 'rz';

export const DOFS: readonly Dof[] = ['x', 'y', 'z', 'rx', 'ry', 'rz'];

/** A point where members meet. */
export interface FrameNode {
  readonly name: string;
  /** mm, in the table's frame. */
  readonly at: Vec3;
  /** In which ways the floor or a wall holds it; free in the others. */
  readonly held?: readonly Dof[];
}

/** Section of a member, about its own y and z axis. */
export interface BarSection {
  /** mm². */
  readonly area: number;
  /** mm⁴, the integral of z²: it resists bending that moves the member along its z axis. */
  readonly iy: number;
  /** mm⁴, the integral of y². */
  readonly iz: number;
  /** mm⁴, resists twist. */
  readonly j: number;
}

/** Stiffness of the wood along a member, MPa. */
export interface BarMaterial {
  /** Along the grain. */
  readonly e: number;
  /** In shear, for twist. */
  readonly g: number;
}

/** Springs between the end of a member and its node, N mm/rad: Infinity (as when absent) is rigid, 0 a hinge. */
export interface EndSprings {
  readonly twist?: number;
  /** About the y axis of the member, for bending that moves it along its z axis. */
  readonly y?: number;
  readonly z?: number;
}

/** A value at each end of a member. */
export interface Ends<T> {
  readonly from: T;
  readonly to: T;
}

/**
 * A straight piece of wood between two nodes.
 *
 * ```
 *   node ── arm ──(spring)═══════ member ═══════(spring)── arm ── node
 *   from                    x ─────►                              to
 * ```
 *
 * Frame of the member: x from its `from` end to its `to` end, z as near to the given direction as square to x allows,
 * y = z × x.
 */
export interface FrameMember {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly section: BarSection;
  readonly material: BarMaterial;
  /** In the table's frame; not along the member. */
  readonly z: Vec3;
  readonly springs?: Partial<Ends<EndSprings>>;
  /** mm, in the table's frame, from the node to the end of the member: a rigid arm. */
  readonly arms?: Partial<Ends<Vec3>>;
}

/** Nodes and members. Handled: small movements of straight elastic members; not handled: shear bending, buckling. */
export interface SpaceFrame {
  readonly nodes: readonly FrameNode[];
  readonly members: readonly FrameMember[];
}

/** Pushes on nodes that act together. */
export interface LoadCase {
  readonly name: string;
  readonly loads: readonly NodeLoad[];
}

export interface NodeLoad {
  readonly node: string;
  /** N, in the table's frame. */
  readonly force?: Vec3;
  /** N mm, right-handed about the axes of the table. */
  readonly moment?: Vec3;
}

/** How a node moves. */
export interface Move {
  readonly shift: readonly [Mm, Mm, Mm];
  /** Degrees, right-handed about the axes of the table. */
  readonly turn: Vec3;
}

/** What a node does to the end of a member, in the member's frame. */
export interface EndForces {
  /** N along x; positive at `to` pulls, positive at `from` presses. */
  readonly axial: number;
  /** N. */
  readonly shearY: number;
  readonly shearZ: number;
  /** N mm about x, y and z. */
  readonly twist: number;
  readonly momentY: number;
  readonly momentZ: number;
}

/** What floor or wall do to a held node: N and N mm, in the table's frame. */
export interface Reaction {
  readonly force: Vec3;
  readonly moment: Vec3;
}
