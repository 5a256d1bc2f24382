import { partOf } from '../../model/assembly.ts';
import type { Finding } from '../../model/finding.ts';
import { isGlueUp, type Part } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import type { Species } from '../../wood/species.ts';
import { speciesById } from '../../wood/species-list.ts';
import { massCenter } from '../solids/mass-center.ts';
import { blankOf } from '../solids/solid-of.ts';
import { type CheckContext, called, fromMemory, say, sayMove } from './check.ts';
import { oneSidedCup, staveCup, staveCupSmall } from './solvers/cup-depth.ts';
import { type Figure, ours } from './solvers/ours.ts';
import { changeOf, movementAssumptions, swelling } from './swelling.ts';

/** From the pith to the face of a board, where nothing is known of it: a board from well inside a log. */
export const RING_RADIUS: Figure<Mm> = ours(150, 'our convention');

/** By how much one face of a panel is drier than the other when only one is finished, percent. */
export const ONE_SIDED: Figure = ours(1, 'our convention');

/** How far the widest board of the top cups by itself, and how far the whole when one face is drier. */
export function cupping(context: CheckContext): Finding[] {
  const { assembly } = context;
  const top = assembly.parts.find((p) => p.kind === 'top' || p.kind === 'seat');
  if (!top) return [];
  const members = isGlueUp(top) ? top.members.map((id) => partOf(assembly, id)) : [top];
  const widest = members.reduce((a, b) => (b.finished.width > a.finished.width ? b : a));
  return [...(assembly.climate.sawn === 'flat' ? [stave(context, widest)] : []), oneSided(context, top)];
}

function stave(context: CheckContext, part: Part): Finding {
  const { climate } = context.assembly;
  const species: Species = speciesById(part.wood);
  const options = {
    width: part.finished.width,
    ringRadius: RING_RADIUS.value,
    tangential: changeOf(species, 'Tangential'),
    radial: changeOf(species, 'Radial'),
    moistureChange: climate.low - climate.high,
  };
  const value = staveCupSmall(options);
  return {
    check: 'seasons',
    verdict: 'ok',
    part: part.id,
    where: 'cup of one board',
    value,
    unit: 'mm',
    because: `${called(part)}: ${say(context, part.finished.width)} wide, it cups ${sayMove(context, value)} by itself as it dries from ${climate.high} to ${climate.low} %, hollow on the bark side`,
    fixes: [],
    source: 'small-angle form |C_T - C_R| ΔM w²/4R, on the high side; the range goes to the exact one',
    range: [Math.abs(staveCup(options)), value],
    assumptions: [
      `${say(context, RING_RADIUS.value)} from the pith to its face (${RING_RADIUS.source})`,
      ...movementAssumptions(climate),
    ],
    unconfirmed: fromMemory(part.wood, ['changeRadial', 'changeTangential']),
  };
}

function oneSided(context: CheckContext, top: Part): Finding {
  const { climate } = context.assembly;
  const { width, length } = top.finished;
  const thickness = massCenter(blankOf({ ...top, features: [] })).volume / (width * length);
  const { perPercent, fields } = swelling(top.wood, climate.sawn);
  const value = oneSidedCup({ width, thickness, perPercent, moistureDifference: ONE_SIDED.value });
  return {
    check: 'seasons',
    verdict: 'ok',
    part: top.id,
    where: 'one face drier',
    value,
    unit: 'mm',
    because: `${called(top)}: one face ${ONE_SIDED.value} % drier than the other would cup it ${sayMove(context, value)} if it were free: finish both faces alike`,
    fixes: [],
    source: `statics of a free panel; ${ONE_SIDED.value} %: ${ONE_SIDED.source}`,
    assumptions: [
      `a panel as thick as the top on average, ${say(context, thickness)}`,
      ...movementAssumptions(climate),
    ],
    unconfirmed: fromMemory(top.wood, fields),
  };
}
