/** How far a value can be trusted: seen in its source, remembered and still to be confirmed, or worked out from others. */
export type Status = 'read' | 'memory' | 'computed';

/** A value that says where it comes from. */
export interface Sourced<T> {
  readonly value: T;
  readonly status: Status;
  readonly source: string;
  /** What to know before relying on it, as a clause to print after the value. */
  readonly caution?: string;
}

/** A value seen in its source. */
export const read = <T>(value: T, source: string, caution?: string): Sourced<T> =>
  sourced('read', value, source, caution);

/** A value from memory; the source is where it is to be confirmed. */
export const memory = <T>(value: T, source: string, caution?: string): Sourced<T> =>
  sourced('memory', value, source, caution);

/** A value worked out from other values; the source is the formula. */
export const computed = <T>(value: T, source: string, caution?: string): Sourced<T> =>
  sourced('computed', value, source, caution);

/** A value of any status. */
export function sourced<T>(status: Status, value: T, source: string, caution?: string): Sourced<T> {
  return caution === undefined ? { value, status, source } : { value, status, source, caution };
}
