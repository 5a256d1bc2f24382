/** Signs that have a control code; the two circles and the letter all mean a diameter. */
const CODES: Readonly<Record<string, string>> = {
  '\u00b0': '%%d',
  '\u00b1': '%%p',
  '\u2300': '%%c',
  '\u00d8': '%%c',
};

/** Characters that start a control sequence in one or another kind of DXF text, so that readers differ about them. */
const CONTROL = new Set(['\\', '^', '{', '}']);

/**
 * Lettering as every reader shows it: plain characters, and the control codes for degree, plus-minus and diameter.
 *
 * @throws RangeError naming the character that cannot be written.
 */
export function dxfText(text: string): string {
  if (text.includes('%%')) throw new RangeError(`"%%" starts a control code in DXF text: ${JSON.stringify(text)}`);
  return [...text]
    .map((char) => {
      const code = CODES[char];
      if (code) return code;
      if (/[ -~]/.test(char) && !CONTROL.has(char)) return char;
      const number = char.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0');
      throw new RangeError(
        `${JSON.stringify(char)} (U+${number}) cannot be written in DXF text: ${JSON.stringify(text)}`,
      );
    })
    .join('');
}
