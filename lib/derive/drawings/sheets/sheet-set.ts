import { makeSheet } from '../../../drawing/make-sheet.ts';
import type { SetHeading, Sheet } from '../../../drawing/sheet.ts';
import { approvalSheet } from './approval.ts';
import { assemblySheet } from './assembly.ts';
import { partSheets } from './part-sheets.ts';
import { sectionSheets } from './section.ts';
import type { SheetMaker, SheetSource } from './sheet-source.ts';
import { storyStickSheets } from './story-stick-sheet.ts';

/** The kinds of sheet in the order of the set. */
const MAKERS: readonly SheetMaker[] = [approvalSheet, sectionSheets, assemblySheet, partSheets, storyStickSheets];

/** All sheets of a piece, numbered. @throws RangeError when one does not fit on its paper at any scale. */
export function sheetSet(source: SheetSource, heading: SetHeading): Sheet[] {
  const plans = MAKERS.flatMap((maker) => maker(source, heading));
  return plans.map((plan, k) => makeSheet(plan, { ...heading, sheet: k + 1, of: plans.length }));
}
