/** Control characters, line breaks, halves of characters, and marks that change the direction of writing. */
const CONTROL = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069]/u;

export const hasControls = (text: string): boolean => CONTROL.test(text);

/** Where the first of them stands, counted from 1; 0 when there is none. */
export const firstControl = (text: string): number => (CONTROL.exec(text)?.index ?? -1) + 1;
