import type { Mm } from '../units/mm.ts';
import type { Pt, Text } from './entity.ts';
import { along, polar } from './vec.ts';

/**
 * Mean advance of a character in capital heights. Measured in DejaVu Sans: 0.87 for a digit, 0.70 to 0.75 for dimension
 * texts with their spaces and marks; other plain faces are narrower, from memory. 0.85 rather keeps room than lacks it.
 */
export const CHAR_WIDTH = 0.85;

/** Depth of a tail under the baseline in capital heights: 0.29 measured in DejaVu Sans. */
const DESCENT = 0.3;

/** Approximate length of one line of lettering, in the unit of `height`. */
export const textWidth = (text: string, height: Mm): Mm => [...text].length * CHAR_WIDTH * height;

const START = { left: 0, center: -0.5, right: -1 } as const;
const RISE = { baseline: 0, middle: -0.5, top: -1 } as const;

/** Where the baseline of a text begins, in model mm. */
export function textStart(text: Text, scale: number): Pt {
  const height = text.height * scale;
  const ahead = polar(text.rotation ?? 0);
  const up = polar((text.rotation ?? 0) + 90);
  const back = along(text.at, ahead, START[text.align ?? 'left'] * textWidth(text.text, height));
  return along(back, up, RISE[text.valign ?? 'baseline'] * height);
}

/** The four corners of the room a text takes, counter-clockwise from the lower left as it is read. */
export function textCorners(text: Text, scale: number): readonly [Pt, Pt, Pt, Pt] {
  const height = text.height * scale;
  const ahead = polar(text.rotation ?? 0);
  const up = polar((text.rotation ?? 0) + 90);
  const low = along(textStart(text, scale), up, -DESCENT * height);
  const end = along(low, ahead, textWidth(text.text, height));
  const tall = (1 + DESCENT) * height;
  return [low, end, along(end, up, tall), along(low, up, tall)];
}
