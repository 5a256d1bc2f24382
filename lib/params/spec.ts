import type { GivenOf, Param, ValueOf } from './param.ts';
import type { Rule } from './rule.ts';

/** Named parameters and groups of them, in the order of the table that shows them. */
export interface Fields {
  readonly [name: string]: Param | Group;
}

export interface Group<F extends Fields = Fields> {
  readonly kind: 'group';
  readonly label: string;
  readonly fields: F;
}

/** The open parameters of a piece and the rules between them. */
export interface Spec<F extends Fields = Fields> {
  readonly fields: F;
  /** Checked against the fields when the spec was defined. */
  readonly rules: readonly Rule[];
  /** Every parameter by its path (`top.length`), in the order of the table. */
  readonly table: ReadonlyMap<string, Param>;
}

/** The paths of the parameters: `'top.length' | 'top.wood' | …`. */
export type PathOf<F extends Fields> = string extends keyof F
  ? string
  : { readonly [K in keyof F & string]: F[K] extends Group<infer G> ? `${K}.${PathOf<G>}` : K }[keyof F & string];

type ValueOfNode<N> = N extends Group<infer G> ? ValuesOf<G> : N extends Param ? ValueOf<N> : never;

export type ValuesOf<F extends Fields> = { readonly [K in keyof F]: ValueOfNode<F[K]> };

type GivenOfNode<N> = N extends Group<infer G> ? GivenFields<G> : N extends Param ? GivenOf<N> : never;

export type GivenFields<F extends Fields> = { readonly [K in keyof F]?: GivenOfNode<F[K]> };

/** The values of a spec, read: a nested record with every parameter in it. */
export type Values<S extends Spec> = S extends Spec<infer F> ? ValuesOf<F> : never;

/** What a design file writes: any part of the parameters. */
export type Given<S extends Spec> = S extends Spec<infer F> ? GivenFields<F> : never;

/** Parameters under one heading. */
export function group<const F extends Fields>(label: string, fields: F): Group<F> {
  return { kind: 'group', label, fields };
}
