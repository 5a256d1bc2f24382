import type { Label } from './label.ts';
import type { Span } from './multipliers.ts';
import type { Pairing } from './pairing.ts';
import type { Opened } from './role-walk.ts';
import type { ShowOrder } from './show-orders.ts';
import type { RowSlide } from './sliding.ts';

/** A span with a lower bound that may become tighter. */
export interface SpanEntry {
  readonly kind: 'span';
  readonly key: number;
  readonly span: Span;
  readonly multipliers: readonly number[];
}

/** A span opened: its ways to give roles to boards, by rising bound; those below the key are done. */
export interface OpenEntry {
  readonly kind: 'open';
  readonly key: number;
  readonly span: Span;
  readonly opened: Opened;
  /** How far the bound rises in the next stretch. */
  readonly stride: number;
  /** States walked through in the last stretch: the next one walks through them again. */
  readonly states: number;
}

/** Roles of all boards; once looked at, the label to be arranged, its first show boards given. */
export interface LabelEntry {
  readonly kind: 'label';
  readonly key: number;
  readonly span: Span;
  readonly roles: Uint8Array;
  readonly label?: Label;
  readonly first: readonly number[];
}

/** An order of the show boards of a label; once looked at, its pairing with bottom boards, the first of them given. */
export interface OrderEntry {
  readonly kind: 'order';
  readonly key: number;
  readonly label: Label;
  readonly order: ShowOrder;
  readonly row: RowSlide;
  readonly pairing?: Pairing;
  readonly first: readonly number[];
}

/** What waits in the heap: something that is still possible, with a lower bound of its cost. */
export type Entry = SpanEntry | OpenEntry | LabelEntry | OrderEntry;
