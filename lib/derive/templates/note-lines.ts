import type { Part } from '../../model/part.ts';
import { formatInches, formatNumber, type UnitSystem } from '../../units/format-length.ts';
import { degrees, type Mm } from '../../units/mm.ts';
import { speciesById } from '../../wood/species-list.ts';
import { bevelLines } from './bevel-lines.ts';
import type { FaceOutlines } from './face-view.ts';
import type { Heading } from './heading.ts';
import { lengthText, type PocketKind } from './pocket-kinds.ts';
import { reliefs } from './relief.ts';
import { isSloped, riseOf, scribedStretches } from './scribed-stretches.ts';

/** The lines of text below a template, from the heading down. */
export function noteLines(
  part: Part,
  thickness: Mm,
  outlines: FaceOutlines,
  kinds: readonly PocketKind[],
  { title, revision, date, units, warning }: Heading,
): string[] {
  return [
    ...(warning === undefined ? [] : [warning]),
    `${title}, revision ${revision}, ${date}`,
    `${part.mark}  ${part.name}  ${part.id}`,
    `finished line, seen on the reference face; thickness ${lengthText(thickness, units)}; wood: ${speciesById(part.wood).name}`,
    ...slopeLines(outlines, units),
    ...reliefs(outlines.near).map(
      ({ width, depth }) => `relief at the ridge ${lengthText(width, units)} wide, ${lengthText(depth, units)} deep`,
    ),
    ...bevelLines(outlines, thickness),
    ...kinds.map(({ letter, words, at }) => `${letter}: ${at.length > 1 ? `${at.length} x ` : ''}${words}`),
    'saw outside the dash-dot line, then trim to the finished line',
  ];
}

/** Each slope once, as degrees and as rise in ten. */
function slopeLines({ near }: FaceOutlines, units: UnitSystem): string[] {
  const slopes = scribedStretches(near).map((stretch) => (isSloped(stretch) ? Math.abs(riseOf(stretch)) : 0));
  const different = slopes.filter((s, i) => slopes.findIndex((t) => Math.abs(s - t) < 1e-6) === i);
  return different.map((s) => {
    if (s === 0) return 'the scribed edge is level';
    const ten =
      units === 'in' ? `${formatInches(s * 254, { mark: '"' })} in 10"` : `${formatNumber(s * 100, 2)} in 100`;
    return `slope ${formatNumber(degrees(Math.atan(s)), 2)} deg, ${ten}`;
  });
}
