import { type Frame, within } from '../../geometry/frame.ts';
import { heightAt, type Surface } from '../../geometry/surface.ts';
import type { TenonSize } from '../../joints/loose-tenon-joint.ts';
import type { PlacedPart } from '../../model/assembly.ts';
import type { Composition } from '../../model/composition.ts';
import type { Allowance } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import type { TrestleValues } from './values.ts';

/** Which of the two frames is being built, and all that its parts ask for. */
export interface FrameContext {
  readonly values: TrestleValues;
  readonly c: Composition;
  readonly name: 'a' | 'b';
  /** 0 for frame A, 1 for frame B: marks go on counting. */
  readonly index: 0 | 1;
  /**
   * The elevation of the frame, seen from inside the table: x across the table, y up from the floor, z from the outer
   * face inwards, 0 in the middle of the frame. Frame B is frame A turned half round, so both are the same pieces.
   */
  readonly elevation: Frame;
  /** Heights of the underside over the floor, in the table's frame. */
  readonly underside: Surface;
  readonly top: PlacedPart;
  /** Marks of loose tenons of the base, counted over the whole table. */
  readonly nextTenon: () => string;
}

/** The parts of a frame that others meet: posts (or the panel leg), and the lower rail if there is one. */
export interface FrameParts {
  readonly posts: readonly PlacedPart[];
  readonly rail?: PlacedPart;
}

/** mm over the floor at which a piece of a frame stands, and its middle across the frame. */
export interface Standing {
  readonly across: Mm;
  readonly up: Mm;
}

/** A piece lying level with its reference edge below: bearer, cleat, rail. `across` is its middle. */
export const level = (length: Mm, thickness: Mm, at: Standing, inwards: Mm = 0): Frame => ({
  origin: [at.across - length / 2, at.up, inwards - thickness / 2],
  x: [1, 0, 0],
  y: [0, 1, 0],
});

/** A piece standing on its reference end: post, panel leg, stave. `across` is its middle. */
export const upright = (width: Mm, thickness: Mm, at: Standing): Frame => ({
  origin: [at.across + width / 2, at.up, -thickness / 2],
  x: [0, 1, 0],
  y: [-1, 0, 0],
});

/** A piece hanging from its reference edge above: foot. `up` is that edge. */
export const hanging = (length: Mm, thickness: Mm, at: Standing): Frame => ({
  origin: [at.across + length / 2, at.up, -thickness / 2],
  x: [-1, 0, 0],
  y: [0, -1, 0],
});

/** A piece lying flat on the floor: pad. */
export const flatOnFloor = (length: Mm, width: Mm, across: Mm): Frame => ({
  origin: [across - length / 2, 0, width / 2],
  x: [1, 0, 0],
  y: [0, 0, -1],
});

/** A frame of the elevation as the table sees it. */
export const inTable = (context: FrameContext, frame: Frame): Frame => within(context.elevation, frame);

/** Least height of the underside over a level stretch of the frame, on both faces of a piece, mm over the floor. */
export function leastUnderside(context: FrameContext, from: Mm, to: Mm, thickness: Mm, inwards: Mm = 0): Mm {
  const corner = (across: Mm, depth: Mm): Mm => {
    const { origin } = inTable(context, { origin: [across, 0, inwards + depth], x: [1, 0, 0], y: [0, 1, 0] });
    return heightAt(context.underside, origin[0], origin[1]);
  };
  const half = thickness / 2;
  return Math.min(corner(from, -half), corner(from, half), corner(to, -half), corner(to, half));
}

export function frameTenon({ frameJoint: f }: TrestleValues, width: Mm): TenonSize {
  return {
    thickness: f.tenonThickness,
    width,
    depth: f.tenonDepth,
    depthPlay: f.depthPlay,
    endPlay: f.endPlay,
    edges: 'round',
  };
}

/** What is added to boards that are glued up to a panel: the clean-up takes the place of the thickness allowance. */
export const gluedAllowance = ({ cleanUp, width, length }: TrestleValues['allowance']): Allowance => ({
  thickness: cleanUp,
  width,
  length,
});
