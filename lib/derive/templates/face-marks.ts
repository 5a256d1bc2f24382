import type { Pt, Text } from '../../drawing/entity.ts';
import type { Outline } from '../../geometry/outline.ts';
import type { Part } from '../../model/part.ts';
import { centered, clearPlace, cornersOf, middleOf, roomOfText } from './clear-place.ts';
import { grainArrow } from './grain-arrow.ts';
import { marksText } from './note-lines.ts';
import type { PocketKind } from './pocket-kinds.ts';
import { referenceMark } from './reference-mark.ts';
import type { Sheet } from './sheet.ts';

/** Heights that the marks may have, the largest that finds room; paper mm; the series of ISO 3098-1. */
const MARK_HEIGHTS = [10, 7, 5, 3.5] as const;

/** From the middle of the face to where the mark is wanted, mm: beside the center line; our convention. */
const BESIDE = 30;

/** Puts down the reference mark, letters at the pockets, the marks of the parts and the arrow along the grain. */
export function putFaceMarks(
  sheet: Sheet,
  parts: readonly [Part, ...Part[]],
  outline: Outline,
  kinds: readonly PocketKind[],
): void {
  sheet.put(...referenceMark(sheet, outline));
  for (const { letter, at } of kinds) {
    for (const center of at) sheet.put(letterText(sheet, letter, center));
  }
  sheet.put(markText(sheet, marksText(parts), outline));
  sheet.put(...grainArrow(sheet, parts[0], outline));
}

function letterText(sheet: Sheet, letter: string, center: Pt): Text {
  const text = (place: Pt): Text => centered(letter, place, sheet.style.textHeight);
  return text(clearPlace(sheet, center, (place) => roomOfText(text(place), sheet.style)) ?? center);
}

function markText(sheet: Sheet, mark: string, outline: Outline): Text {
  const within = cornersOf(outline);
  const [x, y] = middleOf(outline);
  const wanted: Pt = [x + BESIDE, y];
  for (const height of MARK_HEIGHTS) {
    const text = (place: Pt): Text => centered(mark, place, height);
    const place = clearPlace(sheet, wanted, (at) => roomOfText(text(at), sheet.style), within);
    if (place) return text(place);
  }
  return centered(mark, wanted, sheet.style.textHeight);
}
