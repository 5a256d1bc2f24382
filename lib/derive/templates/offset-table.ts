import type { Column, Table } from '../../drawing/table.ts';
import { textWidth } from '../../drawing/text-size.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import type { FaceOutlines } from './face-view.ts';
import { cellText, lengthText, unitWords } from './length-text.ts';
import { type OffsetLine, offsetsOf, type Station } from './offsets.ts';
import { reliefs } from './relief.ts';

/** A table with the lines of text over and under it. */
export interface WordedTable {
  readonly title: string;
  readonly table: Table;
  readonly foot: readonly string[];
}

const LINE_WORDS: { readonly [L in OffsetLine]: string } = { near: '', far: 'far face', designed: 'as designed' };

/** The lines of the finished edge leave wood when they are rounded; what it was designed as is only looked at. */
const roundingOf = (line: OffsetLine): 'up' | 'nearest' => (line === 'designed' ? 'nearest' : 'up');

/** Heights of the scribed edge from one straight line, to be set out with a rule where paper would take longer. */
export function offsetTable(outlines: FaceOutlines, units: UnitSystem, textHeight: Mm): WordedTable {
  const { lines, stations, alike } = offsetsOf(outlines, units);
  const hands = alike ? (['right'] as const) : (['left', 'right'] as const);
  const cell = (mm: Mm | undefined, line: OffsetLine): string =>
    mm === undefined ? '-' : cellText(mm, units, roundingOf(line));
  const heads = hands.flatMap((hand) =>
    lines.map((line) => [alike ? 'height' : `${hand}`, LINE_WORDS[line]].filter((word) => word !== '').join(', ')),
  );
  const rows = stations.map((station: Station) => [
    cellText(station.distance, units),
    ...hands.flatMap((hand) => lines.map((line) => cell(station[hand][line], line))),
    station.words.join(', '),
  ]);
  const columns = fittedColumns(['from center line', ...heads, 'there'], rows, textHeight);
  return {
    title: `offsets from the ${baseName(outlines)}${alike ? '; left and right alike' : ''}${unitWords(units)}`,
    table: { columns, rows, textHeight },
    foot: [
      'heights are rounded up, so that wood is left',
      ...reliefs(outlines.near).map(
        ({ floor }) => `the floor of the relief is at ${lengthText(floor, units, 'down')}; sharp corners are before it`,
      ),
    ],
  };
}

/** "reference edge" of a piece that lies, "reference end" of one that stands. */
function baseName({ near }: FaceOutlines): string {
  const low = Math.min(...near.map((p) => p.y));
  const first = near.find((p, i) => p.y < low + 1e-6 && near[(i + 1) % near.length]!.y < low + 1e-6);
  return (first?.surface ?? 'reference edge').replaceAll('-', ' ');
}

/** Columns as wide as their widest cell; text in the last one is to the left, numbers are to the right. */
export function fittedColumns(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  textHeight: Mm,
): readonly Column[] {
  return heads.map((head, i) => {
    const widest = Math.max(...[head, ...rows.map((row) => row[i] ?? '')].map((text) => textWidth(text, textHeight)));
    return { head, width: widest + 2 * textHeight, align: i === heads.length - 1 ? 'left' : 'right' };
  });
}
