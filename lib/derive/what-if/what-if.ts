import type { Finding } from '../../model/finding.ts';

/** One value at which a parameter is tried. */
export interface Step {
  /** `1 1/8 in`, `bearer`. */
  readonly text: string;
  /** Where it stands on an axis; absent for choices, and for yes and no. */
  readonly number?: number | undefined;
}

/** A parameter that is varied. */
export interface Axis {
  readonly path: string;
  readonly label: string;
  readonly steps: readonly Step[];
  /** Where the design itself stands: between which steps, or at which of them. */
  readonly now: Step;
}

/** The piece at one value of each parameter: what the checks say and what it takes, or why there is no such piece. */
export type Trial = Tried | Refused;

export interface Tried {
  /** Which step of each axis. */
  readonly at: readonly number[];
  readonly findings: readonly Finding[];
  /** kg at 12 % moisture. */
  readonly mass: number;
  /** By rough sizes, as the cut list says. */
  readonly boardFeet: number;
  readonly refused?: never;
}

export interface Refused {
  readonly at: readonly number[];
  /** The rule that is broken, as a sentence. */
  readonly refused: string;
}

/** What becomes of a piece when one parameter or two are moved. */
export interface WhatIf {
  readonly axes: readonly Axis[];
  /** Every pair of steps; the last axis runs fastest. */
  readonly trials: readonly Trial[];
}

/** Whether a trial is the design as it stands. */
export const isNow = ({ axes }: WhatIf, { at }: Trial): boolean =>
  axes.every(({ steps, now }, k) => steps[at[k]!]!.text === now.text);

/** Every choice of one step of each axis, the last running fastest. */
export function combinations(axes: readonly Axis[]): readonly (readonly number[])[] {
  return axes.reduce<readonly (readonly number[])[]>(
    (all, { steps }) => all.flatMap((at) => steps.map((_, k) => [...at, k])),
    [[]],
  );
}
