import type { SetHeading } from '../../../drawing/sheet.ts';
import type { LengthLook } from '../../../drawing/style.ts';
import { pieces, visibleParts } from '../../../model/assembly.ts';
import { type EdgeProfile, isEdgeProfile, profileSize } from '../../../model/feature.ts';
import { isGlueUp, type Part } from '../../../model/part.ts';
import { formatNumber } from '../../../units/format-length.ts';
import { KG_PER_POUND } from '../../../units/format-load.ts';
import type { Mm } from '../../../units/mm.ts';
import { density } from '../../../wood/density.ts';
import { speciesById } from '../../../wood/species-list.ts';
import { WALL_ROOM } from '../../checks/access-lines.ts';
import type { SeatEdge, SeatMap } from '../../checks/seat-map.ts';
import { massOf } from '../../checks/solvers/mass.ts';
import { widthChange } from '../../checks/solvers/width-change.ts';
import { swelling } from '../../checks/swelling.ts';
import { volumeOf } from '../../solids/solid.ts';
import type { Note } from './note-block.ts';
import { sayLength, sayRoughly } from './say-length.ts';
import type { SheetSource } from './sheet-source.ts';

/** Overall sizes on the day of delivery, mm: 1/8 in, common practice, no source. */
const TOLERANCE: Mm = 3.175;

/** Moisture at which wood is weighed, percent: the reference of the handbook's densities. */
const WEIGHED_AT = 12;

/** A length as the sheet says it. */
type Say = (mm: Mm, rounding?: 'up' | 'down') => string;

/** Where a client fills in by hand. */
const BLANK = '__________';

/** What a client agrees to, in words; no prices. */
export function approvalNotes(
  source: SheetSource,
  seats: SeatMap | undefined,
  { lengths, revision }: SetHeading,
  look: LengthLook,
): Note[] {
  const say: Say = (mm, rounding) => sayLength(mm, look, rounding);
  const roughly: Say = (mm, rounding) => sayRoughly(mm, look, rounding);
  const seated = seats && seats.places.length > 0 ? seats : undefined;
  return [
    ...(source.measured === undefined ? [] : [{ head: 'Sizes', text: designedWords(source.measured) }]),
    { head: 'Wood', text: woodWords(source) },
    { head: 'Sapwood', text: '[__] none to be seen, [__] streaks, [__] as it comes' },
    { head: 'Edges', text: edgeWords(source, say) },
    { head: 'Finish', text: finishWords(source) },
    ...(seated ? [{ head: 'Places', text: placeWords(seated, roughly) }] : []),
    { head: 'Weight', text: weightWords(source, lengths === 'mm') },
    { head: 'Tolerance', text: toleranceWords(source, roughly) },
    ...(seated ? [{ head: 'Try it', text: tryWords(roughly, lengths === 'mm') }] : []),
    { head: 'Mind', text: MIND },
    { head: 'Revision', text: `${revision}: what is signed is built; changes after that make a new revision.` },
  ];
}

/** What is signed is what was agreed, though the finished top is a little off. */
const designedWords = (measured: string): string =>
  `as designed; the finished top was measured on ${measured}, and the other sheets follow it.`;

/** Room for chairs in whole centimetres, up. */
function tryWords(say: Say, metric: boolean): string {
  const { usual } = WALL_ROOM.value;
  return `Tape the plan on the floor, and ${say(metric ? Math.ceil(usual / 10) * 10 : usual)} around it for chairs.`;
}

const MIND =
  'Wood moves with the seasons: keep it from heaters and damp. A child who climbs on an edge can tip a piece over. ' +
  'This drawing is no load rating; local codes come first.';

/** "black cherry", or what the top and what the base is made of. */
function woodWords({ assembly }: SheetSource): string {
  const shown = visibleParts(assembly).filter(({ kind }) => kind !== 'looseTenon');
  const woods = [...new Set(shown.map(({ wood }) => wood))];
  if (woods.length === 1) return `${speciesById(woods[0]!).name}, solid throughout`;
  return woods
    .map((wood) => {
      const names = [...new Set(shown.filter((p) => p.wood === wood).map(({ name }) => name))];
      return `${speciesById(wood).name}: ${names.join(', ')}`;
    })
    .join('; ');
}

const ARRIS: { readonly [E in EdgeProfile['edge']]: string } = { show: 'above', underside: 'below' };

function edgeWords({ assembly }: SheetSource, say: Say): string {
  const profiles = visibleParts(assembly)
    .filter(({ kind }) => kind === 'top' || kind === 'seat')
    .flatMap(({ features }) => features.filter(isEdgeProfile));
  if (profiles.length === 0) return 'square, sharp corners taken off by hand';
  const words = (['show', 'underside'] as const).map((edge) => {
    const profile = profiles.find((p) => p.edge === edge);
    return `${profile ? profileWords(profile, say) : 'square'} ${ARRIS[edge]}`;
  });
  return `of the top: ${words.join(', ')}`;
}

const profileWords = (profile: EdgeProfile, say: Say): string =>
  profile.kind === 'roundOver'
    ? `rounded ${say(profile.radius)}`
    : `chamfered ${say(profileSize(profile))} at ${formatNumber(profile.angle, 0)} deg`;

function finishWords({ assembly, finish }: SheetSource): string {
  const { coats } = assembly.supplies;
  return finish || `${coats} ${coats === 1 ? 'coat' : 'coats'} of ${BLANK}; sheen: ${BLANK}`;
}

/** How many sit where, how wide, and the least height for knees. */
function placeWords({ edges, places }: SeatMap, say: Say): string {
  const [left, right, start, end] = edges;
  const where = [...sameOrNot(left, right, 'long side'), ...sameOrNot(start, end, 'end')];
  const knees = Math.min(...places.map(({ kneeHeight }) => kneeHeight));
  return `${places.length}: ${where.join(', ')}; at least ${say(knees, 'down')} for knees`;
}

/** "2 at each long side", or each by its name where they differ. */
function sameOrNot(a: SeatEdge, b: SeatEdge, what: string): string[] {
  const [n, m] = [a.places.length, b.places.length];
  if (n === m) return n > 0 ? [`${n} at each ${what}`] : [];
  return [a, b].flatMap(({ places, edge }) => (places.length > 0 ? [`${places.length} at the ${edge.name}`] : []));
}

function weightWords({ assembly, shapes }: SheetSource, metric: boolean): string {
  const mass = (part: Part): number =>
    massOf(volumeOf(shapes.get(part.id)!.solid), density(speciesById(part.wood), WEIGHED_AT).value);
  const kg = pieces(assembly).reduce((sum, part) => sum + mass(part), 0);
  const pounds = `${Math.ceil(kg / KG_PER_POUND)} lb`;
  return metric ? `about ${Math.ceil(kg)} kg` : `about ${pounds} (${Math.ceil(kg)} kg)`;
}

function toleranceWords({ assembly }: SheetSource, say: Say): string {
  const within = `overall sizes within ${say(TOLERANCE)} when delivered`;
  const wide = assembly.parts.filter((p) => isGlueUp(p) || p.kind === 'seat' || p.kind === 'top');
  const [widest] = wide.sort((a, b) => b.finished.width - a.finished.width);
  if (!widest) return within;
  const { low, high, sawn } = assembly.climate;
  const { perPercent } = swelling(widest.wood, sawn);
  const { byCoefficient } = widthChange({ width: widest.finished.width, perPercent, from: low, to: high });
  return `${within}; from dry winter to damp summer the ${widest.name} widens about ${say(byCoefficient, 'up')}`;
}
