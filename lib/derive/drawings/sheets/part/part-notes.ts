import type { LengthLook } from '../../../../drawing/style.ts';
import { arcOfBulge, type Outline } from '../../../../geometry/outline.ts';
import { type EdgeProfile, isEdgeProfile, profileSize } from '../../../../model/feature.ts';
import { isGlueUp, type Part, type Size } from '../../../../model/part.ts';
import { formatNumber } from '../../../../units/format-length.ts';
import type { Mm } from '../../../../units/mm.ts';
import { speciesById } from '../../../../wood/species-list.ts';
import { marksText } from '../../../cut-list/building-order.ts';
import type { Note } from '../note-block.ts';
import { sayLength } from '../say-length.ts';
import type { PartKinds } from './part-kinds.ts';
import type { LetteredPockets } from './pocket-letters.ts';
import { scribeWords } from './scribe-words.ts';
import { taperLook } from './taper-look.ts';
import { isByEnds } from './view-stops.ts';

/** What the views of a part do not say. */
export function partNotes(
  { parts, turned }: PartKinds,
  members: readonly string[],
  kinds: readonly LetteredPockets[],
  look: LengthLook,
): Note[] {
  const [part] = parts;
  const say = (mm: Mm): string => sayLength(mm, look);
  const note = (head: string, text: string | undefined): Note[] => (text ? [{ head, text }] : []);
  return [
    { head: 'Pieces', text: `${parts.length}: ${marksText(parts.map(({ mark }) => mark))}` },
    ...note('Turned', turnedWords(turned)),
    { head: 'Wood', text: `${speciesById(part.wood).name}, grain along the length` },
    ...note('Glued of', isGlueUp(part) ? marksText(members) : undefined),
    { head: 'Finished', text: sizeText(part.finished, say) },
    ...(isGlueUp(part) ? [] : [{ head: 'Milled to', text: sizeText(part.rough, say) }]),
    ...note(part.body.kind === 'prism' ? 'Scribed' : 'Taper', scribeWords(part, taperLook(look))),
    ...note('Curves', part.body.kind === 'prism' ? roundWords(part.body.outline, say) : undefined),
    ...note('Edges', profileText(part, say)),
    ...note('Work', part.notes.join('; ')),
    ...note('Drawn', part.body.kind === 'slice' ? DRAWN : undefined),
    ...note('Laid out', kinds.length > 0 ? layoutWords(part, kinds) : undefined),
  ];
}

const turnedWords = (turned: readonly Part[]): string | undefined =>
  turned.length === 0
    ? undefined
    : `${marksText(turned.map(({ mark }) => mark))} the same, but turned over in the piece; put the reference marks on as they stand there`;

const sizeText = ({ length, width, thickness }: Size, say: (mm: Mm) => string): string =>
  `${say(length)} long, ${say(width)} wide, ${say(thickness)} thick`;

function layoutWords(part: Part, kinds: readonly LetteredPockets[]): string {
  const from = part.body.kind === 'panel' ? 'the reference end, the center line and the show face' : DATUMS(part);
  const mortised = kinds.some(({ pockets }) => pockets.some(({ kind }) => kind === 'mortise'));
  const ends = isByEnds(kinds) ? '; mortises to both ends, holes to their middles' : '; everything to its middle';
  return `running sizes count from the 0 at ${from}${mortised ? ends : '; holes to their middles'}`;
}

const DATUMS = ({ body }: Part): string =>
  body.kind === 'slice'
    ? `the reference end and the ${body.top > 0 ? 'upper' : 'show'} face`
    : 'the reference end, edge and face';

const DRAWN = 'as it is in the finished top; slot it while its faces are parallel, taper and edges come after gluing';

/** "2 x R 1": each radius with how often it comes. */
function roundWords(outline: Outline, say: (mm: Mm) => string): string | undefined {
  const counts = new Map<string, number>();
  outline.forEach((a, k) => {
    if (!a.bulge) return;
    const b = outline[(k + 1) % outline.length]!;
    const { radius } = arcOfBulge(a, b);
    const hollow = a.bulge < 0;
    const rise = (Math.hypot(b.x - a.x, b.y - a.y) / 2) * Math.abs(a.bulge);
    const words = hollow ? `arch ${say(rise)} high, radius ${say(radius)}` : `corner rounded ${say(radius)}`;
    counts.set(words, (counts.get(words) ?? 0) + 1);
  });
  const all = [...counts].map(([words, count]) => (count > 1 ? `${count} x ${words}` : words));
  return all.length > 0 ? all.join('; ') : undefined;
}

const ARRIS: { readonly [E in EdgeProfile['edge']]: string } = { show: 'show face', underside: 'underside' };

/** Of a board of a top: what is worked on it once it is glued. */
function profileText({ body, features }: Part, say: (mm: Mm) => string): string | undefined {
  const own = features.filter(isEdgeProfile);
  if (own.length === 0) return body.kind === 'panel' ? 'square, sharp corners taken off by hand' : undefined;
  return own
    .map((one) => {
      const size = say(profileSize(one));
      const words =
        one.kind === 'roundOver' ? `rounded ${size}` : `chamfered ${size} at ${formatNumber(one.angle, 0)} deg`;
      return `${ARRIS[one.edge]} ${words} all around`;
    })
    .join('; ');
}
