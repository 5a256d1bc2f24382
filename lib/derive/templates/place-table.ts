import { boundsOf } from '../../drawing/bounds.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { polyOf } from './face-poly.ts';
import { cellText, unitWords } from './length-text.ts';
import { fittedColumns, type WordedTable } from './offset-table.ts';
import type { PocketMark } from './pocket-marks.ts';
import type { TemplateFace } from './template-face.ts';

/** Along one axis of the sheet: a mortise from its one end to its other, a hole or slot by its middle. */
function placeText({ pocket, outline, center }: PocketMark, axis: 0 | 1, units: UnitSystem): string {
  if (pocket.kind !== 'mortise') return cellText(center[axis], units);
  const { min, max } = boundsOf([polyOf('MORTISE', outline)], 1)!;
  return `${cellText(min[axis], units)} to ${cellText(max[axis], units)}`;
}

/** From where a pocket that is seen from the side goes in, along one axis; nothing when it is measured along it. */
function entryText({ axis }: PocketMark, along: 0 | 1): string | undefined {
  if (!axis) return undefined;
  const run = axis[1][along] - axis[0][along];
  if (Math.abs(run) < 1e-6) return undefined;
  const [low, high] = along === 0 ? ['left', 'right'] : ['below', 'above'];
  return `from ${run > 0 ? low : high}`;
}

/** Where every pocket is, from the lower left corner of the face; in the order of their letters, from the left. */
export function placeTable({ pockets, kinds }: TemplateFace, units: UnitSystem, textHeight: Mm): WordedTable {
  const letterOf = (mark: PocketMark): string => kinds.find(({ at }) => at.includes(mark.center))?.letter ?? '';
  const cell = (mark: PocketMark, axis: 0 | 1): string => entryText(mark, axis) ?? placeText(mark, axis, units);
  const rows = [...pockets]
    .map((mark) => ({ mark, letter: letterOf(mark) }))
    .sort(
      (a, b) => order(a.letter, b.letter) || a.mark.center[0] - b.mark.center[0] || a.mark.center[1] - b.mark.center[1],
    )
    .map(({ mark, letter }) => [
      letter,
      cell(mark, 0),
      cell(mark, 1),
      mark.pocket.kind === 'mortise' ? 'its ends' : 'its middle',
    ]);
  return {
    title: `places on the face, from its lower left corner${unitWords(units)}`,
    table: { columns: fittedColumns(['', 'to the right', 'up', 'to'], rows, textHeight), rows, textHeight },
    foot: [],
  };
}

const order = (a: string, b: string): number => a.length - b.length || (a < b ? -1 : Number(a > b));
