import type { EffectiveRange } from '../../params/effective-range.ts';
import type { Value } from '../../params/param.ts';
import type { UnitSystem } from '../../units/format-length.ts';

/** What a field shows at one moment. */
export interface FieldState {
  readonly units: UnitSystem;
  /** As it was typed, or as the design has it. */
  readonly text: string;
  /** What was read last, when it was good. */
  readonly value: Value | undefined;
  /** What the design has, when this is something else. */
  readonly design: string | undefined;
  /** Before the change that is measured; undefined when it did not move. */
  readonly was: string | undefined;
  /** What is wrong with it, in the words of the command line. */
  readonly problems: readonly Problem[];
}

export interface Problem {
  readonly text: string;
  /** What to try instead. */
  readonly try: string | undefined;
}

/** One parameter on the page. */
export interface Field {
  readonly element: HTMLElement;
  /** What takes the focus. */
  readonly input: HTMLElement;
  update(state: FieldState): void;
  /** The limits that the other values leave at the moment. */
  limit(range: EffectiveRange | undefined): void;
}

/** What a field does with what is entered. */
export interface FieldHands {
  set(text: string, movement?: string): void;
  setIfGood(text: string, movement: string): void;
  putBack(): void;
  /** Asks for the limits before a slider is moved. */
  askLimits(): void;
}
