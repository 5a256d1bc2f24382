/** What is wrong with a text that should have been a length. */
export type LengthTextReason = 'not a length' | 'no unit' | 'zero below' | 'too large';

/** A text is not a length; the hint says what to write instead. */
export class LengthTextError extends RangeError {
  override readonly name = 'LengthTextError';
  readonly reason: LengthTextReason;
  readonly hint: string;

  constructor(text: string, reason: LengthTextReason, hint: string) {
    super(`${JSON.stringify(text)} is not a length; ${hint}`);
    this.reason = reason;
    this.hint = hint;
  }
}
