import type {
  Dof,
  EndSprings,
  FrameMember,
  FrameNode,
  LoadCase,
  SpaceFrame,
} from '../../lib/derive/checks/solvers/frame-model.ts';
import type { CaseResult } from '../../lib/derive/checks/solvers/frame-result.ts';
import { rectangleSection } from '../../lib/derive/checks/solvers/frame-section.ts';
import { solveFrame } from '../../lib/derive/checks/solvers/frame-solve.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';

/** Black cherry along the grain, MPa. */
export const CHERRY = { e: 10_300, g: 0.097 * 10_300 };

export interface TrestleSizes {
  readonly height: number;
  readonly span: number;
  readonly apart: number;
  readonly stretcherHeight: number;
  /** mm along x and y. */
  readonly post: readonly [number, number];
  /** mm, thickness and depth. */
  readonly bearer: readonly [number, number];
  readonly rail: readonly [number, number];
  readonly stretcher: readonly [number, number];
  readonly to: 'posts' | 'rail' | 'nothing';
  /** N mm/rad. */
  readonly stretcherJoint: number;
  readonly postJoint: number;
}

export const READING_TABLE: TrestleSizes = {
  height: 749.3,
  span: 1422.4,
  apart: 508,
  stretcherHeight: 406.4,
  post: [69.85, 82.55],
  bearer: [57.15, 67.46875],
  rail: [38.1, 127],
  stretcher: [38.1, 127],
  to: 'rail',
  stretcherJoint: 81.65059e6,
  postJoint: 51.74606e6,
};

const SIDES = ['left', 'right'] as const;
const UP: Vec3 = [0, 0, 1];
const ALONG: Vec3 = [1, 0, 0];

/** Two frames of two posts, bearer and rail, stretchers, and a top that is hinged on the bearers lengthwise. */
export function trestleBase(t: TrestleSizes): SpaceFrame {
  const nodes: FrameNode[] = [];
  const members: FrameMember[] = [];
  [0, t.span].forEach((x, k) => {
    const f = k === 0 ? 'A' : 'B';
    for (const side of SIDES) {
      const y = ((side === 'left' ? 1 : -1) * t.apart) / 2;
      const name = `${f} ${side}`;
      nodes.push(
        { name: `${name} foot`, at: [x, y, 0], held: footHeld(f, side) },
        { name: `${name} knee`, at: [x, y, t.stretcherHeight] },
        { name: `${name} head`, at: [x, y, t.height] },
      );
      const post = bar(t.post[1], t.post[0], ALONG);
      const x0 = { springs: { to: { twist: t.postJoint, z: t.postJoint } } };
      members.push(
        { name: `${name} lower post`, from: `${name} foot`, to: `${name} knee`, ...post },
        { name: `${name} upper post`, from: `${name} knee`, to: `${name} head`, ...post, ...x0 },
      );
    }
    nodes.push({ name: `${f} rail`, at: [x, 0, t.stretcherHeight] });
    const rail = bar(t.rail[0], t.rail[1], UP);
    members.push(
      { name: `${f} bearer`, from: `${f} left head`, to: `${f} right head`, ...bar(t.bearer[0], t.bearer[1], UP) },
      { name: `${f} left rail`, from: `${f} left knee`, to: `${f} rail`, ...rail },
      { name: `${f} right rail`, from: `${f} rail`, to: `${f} right knee`, ...rail },
    );
  });
  members.push(...stretchers(t), ...tops());
  return { nodes, members };
}

const footHeld = (f: string, side: string): Dof[] =>
  f === 'A' && side === 'left' ? ['x', 'y', 'z'] : f === 'A' ? ['x', 'z'] : ['x', 'y', 'z'];

const bar = (alongY: number, alongZ: number, z: Vec3): Pick<FrameMember, 'section' | 'material' | 'z'> => ({
  section: rectangleSection(alongY, alongZ),
  material: CHERRY,
  z,
});

function stretchers(t: TrestleSizes): FrameMember[] {
  const spring: EndSprings = { y: t.stretcherJoint };
  const common = { ...bar(t.stretcher[0], t.stretcher[1], UP), springs: { from: spring, to: spring } };
  if (t.to === 'nothing') return [];
  if (t.to === 'rail') return [{ name: 'stretcher', from: 'A rail', to: 'B rail', ...common }];
  return SIDES.map((side) => ({ name: `${side} stretcher`, from: `A ${side} knee`, to: `B ${side} knee`, ...common }));
}

function tops(): FrameMember[] {
  const hinge: EndSprings = { y: 0 };
  return SIDES.map((side) => ({
    name: `${side} top`,
    from: `A ${side} head`,
    to: `B ${side} head`,
    ...bar(500, 40, UP),
    springs: { from: hinge, to: hinge },
  }));
}

/** A level push on the four heads together, N. */
export const topPush = (name: string, force: Vec3): LoadCase => ({
  name,
  loads: ['A left', 'A right', 'B left', 'B right'].map((head) => ({
    node: `${head} head`,
    force: [force[0] / 4, force[1] / 4, force[2] / 4],
  })),
});

/** The one case of a frame that must not be a mechanism. */
export function solvedCase(frame: SpaceFrame, load: LoadCase): CaseResult {
  const result = solveFrame(frame, [load]);
  if (result.kind !== 'solved') throw new Error(`loose at ${result.loose.map((l) => `${l.node} ${l.direction}`)}`);
  return result.cases[0]!;
}
