import { nearMiss } from '../params/near-miss.ts';
import { bad, good, type Reading } from '../params/reading.ts';

/** One of a few words, in capitals or not. */
export function readOption<W extends string>(options: readonly W[], text: string): Reading<W> {
  const found = options.find((option) => option.toLowerCase() === text.toLowerCase());
  if (found !== undefined) return good(found, text);
  // One letter is near to any other.
  const didYouMean = text.length > 1 ? nearMiss(text, options) : undefined;
  return bad({ code: 'not-an-option', given: text, options, didYouMean });
}
