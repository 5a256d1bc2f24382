import type { Part } from '../../model/part.ts';
import { formatInches, formatNumber, type UnitSystem } from '../../units/format-length.ts';
import { degrees } from '../../units/mm.ts';
import { speciesById } from '../../wood/species-list.ts';
import { bevelLines } from './bevel-lines.ts';
import { bitLines } from './bit-lines.ts';
import type { FaceOutlines } from './face-view.ts';
import type { Heading } from './heading.ts';
import { lengthText } from './length-text.ts';
import { measuredLines } from './measured-lines.ts';
import { reliefs } from './relief.ts';
import { isSloped, riseOf, scribedStretches } from './scribed-stretches.ts';
import type { TemplateFace } from './template-face.ts';

/** The lines of text below a template, from the heading down. */
export function noteLines(face: TemplateFace, { title, revision, date, units, warning, bitLength }: Heading): string[] {
  const { parts, thickness, outlines, kinds } = face;
  const [first] = parts;
  return [
    ...(warning === undefined ? [] : [warning]),
    `${title}, revision ${revision}, ${date}`,
    `${nameLine(face)}  ${parts.map(({ id }) => id).join(', ')}`,
    `finished line, seen on the reference face; thickness ${lengthText(thickness, units)}; wood: ${speciesById(first.wood).name}`,
    ...slopeLines(outlines, units),
    ...reliefs(outlines.near).map(
      ({ width, depth }) => `relief at the ridge ${lengthText(width, units)} wide, ${lengthText(depth, units)} deep`,
    ),
    ...bevelLines(outlines, thickness, units),
    ...measuredLines(outlines, units),
    ...kinds.map(({ letter, words, at }) => `${letter}: ${at.length > 1 ? `${at.length} x ` : ''}${words}`),
    ...bitLines(thickness, bitLength, units),
    'saw outside the dash-dot line, then trim to the finished line',
  ];
}

/** "B1 B2": what is pencilled on the pieces. */
export const marksText = (parts: readonly Part[]): string => parts.map(({ mark }) => mark).join(' ');

/** Slopes that differ by less than this are one. */
const SAME = 1e-6;

/** The slope as degrees and as rise in ten; where they differ each with its hand, as the template shows it. */
function slopeLines({ near }: FaceOutlines, units: UnitSystem): string[] {
  const slopes = scribedStretches(near)
    .map((stretch) => ({ middle: stretch.a.x + stretch.b.x, slope: isSloped(stretch) ? Math.abs(riseOf(stretch)) : 0 }))
    .sort((one, other) => one.middle - other.middle)
    .map(({ slope }) => slope);
  if (slopes.every((slope) => Math.abs(slope - slopes[0]!) < SAME)) {
    return slopes.slice(0, 1).map((slope) => (slope === 0 ? 'the scribed edge is level' : slopeText(slope, units)));
  }
  const hands = slopes.length === 2 ? ['left', 'right'] : slopes.map((_, k) => `stretch ${k + 1} from the left`);
  return slopes.map((slope, k) => `${hands[k]}: ${slope === 0 ? 'level' : slopeText(slope, units)}`);
}

function slopeText(slope: number, units: UnitSystem): string {
  const ten =
    units === 'in' ? `${formatInches(slope * 254, { mark: '"' })} in 10"` : `${formatNumber(slope * 100, 2)} in 100`;
  return `slope ${formatNumber(degrees(Math.atan(slope)), 2)} deg, ${ten}`;
}

/** "B1 B2  bearer, 2 alike": which pieces a sheet is for. */
export const nameLine = ({ parts }: TemplateFace): string =>
  `${marksText(parts)}  ${parts[0].name}${parts.length > 1 ? `, ${parts.length} alike` : ''}`;

/** The line that every sheet of paper carries. */
export const revisionLine = ({ title, revision, date, warning }: Heading): string =>
  [`${title}, revision ${revision}, ${date}`, ...(warning === undefined ? [] : [warning])].join('; ');
