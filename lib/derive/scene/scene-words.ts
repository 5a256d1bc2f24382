import { heightAt } from '../../geometry/surface.ts';
import { type Assembly, visibleParts } from '../../model/assembly.ts';
import { isEdgeProfile, profileSize } from '../../model/feature.ts';
import type { Part } from '../../model/part.ts';
import { formatInches, formatMm, type UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { speciesById } from '../../wood/species-list.ts';
import type { SceneData, SceneSeat, SceneWords } from './scene-data.ts';
import type { SceneInput } from './scene-input.ts';
import { groupOf } from './scene-parts.ts';

/** What there is to read beside a scene. */
export function sceneWords(input: SceneInput, overall: SceneData['overall'], seats: readonly SceneSeat[]): SceneWords {
  const { title, number, revision, date, warning, assembly } = input;
  const both = <T>(say: (units: UnitSystem) => T): Record<UnitSystem, T> => ({ in: say('in'), mm: say('mm') });
  const coats = assembly.supplies.coats;
  return {
    title,
    ...(number === undefined ? {} : { number }),
    revision,
    date,
    ...(warning === undefined ? {} : { warning }),
    wood: woodWords(assembly),
    edge: both((units) => edgeWords(assembly, units)),
    finish: input.finish || (coats === 0 ? 'left bare' : counted(coats, 'coat of finish', 'coats of finish')),
    description: both((units) => [
      `${title}: ${say(overall.length, units)} long, ${say(overall.width, units)} wide and ${say(overall.height, units)} high.`,
      ...topWords(assembly, units),
      `The base is made of ${listed(baseNames(assembly))}.`,
      ...seatWords(seats),
    ]),
  };
}

/** A length as a customer reads it: to 1/16 in, or whole mm. */
const say = (mm: Mm, units: UnitSystem): string =>
  units === 'in' ? formatInches(mm, { denominator: 16 }) : formatMm(mm, 0);

const counted = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`;

function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

function woodWords(assembly: Assembly): string {
  const names = (group: 'top' | 'base'): string => {
    const found = visibleParts(assembly).filter((part) => groupOf(part) === group);
    return listed([...new Set(found.map((part) => speciesById(part.wood).name))]);
  };
  const [top, base] = [names('top'), names('base')];
  return top === base || base === '' ? top : top === '' ? base : `top ${top}, base ${base}`;
}

function edgeWords(assembly: Assembly, units: UnitSystem): string {
  const top = assembly.parts.find((part) => part.body.kind === 'panel');
  if (!top) return '';
  return (['show', 'underside'] as const)
    .map((edge) => {
      const profile = top.features.filter(isEdgeProfile).find((f) => f.edge === edge);
      const where = edge === 'show' ? 'upper arris' : 'lower arris';
      if (!profile) return `${where} square`;
      const how = profile.kind === 'roundOver' ? 'rounded over' : 'chamfered';
      return `${where} ${how} ${say(profileSize(profile), units)}`;
    })
    .join(', ');
}

function topWords(assembly: Assembly, units: UnitSystem): string[] {
  const top = assembly.parts.find((part) => part.body.kind === 'panel');
  if (top?.body.kind !== 'panel') return [];
  const { underside, width, length } = top.body;
  const depth = (y: Mm): Mm => heightAt(underside, length / 2, y);
  const [middle, edge] = [say(depth(0), units), say(depth(width / 2), units)];
  const strips = new Set(assembly.parts.filter((p) => p.kind === 'strip').map((p) => JSON.stringify(spanOf(p)))).size;
  const glued = strips > 0 ? `, glued up from ${counted(strips, 'strip', 'strips')}` : '';
  const taper = middle === edge ? `${middle} thick` : `${middle} thick along the middle and ${edge} at the long edges`;
  return [`The top is ${taper}${glued}.`];
}

const spanOf = ({ body }: Part): readonly Mm[] => (body.kind === 'slice' ? [body.from, body.to] : []);

function baseNames(assembly: Assembly): string[] {
  const base = visibleParts(assembly).filter((part) => groupOf(part) === 'base' && part.kind !== 'pad');
  const names = new Map<string, number>();
  for (const { name } of base) names.set(name, (names.get(name) ?? 0) + 1);
  return [...names].map(([name, count]) => counted(count, name, plural(name)));
}

const plural = (name: string): string => (name === 'foot' ? 'feet' : `${name}s`);

function seatWords(seats: readonly SceneSeat[]): string[] {
  if (seats.length === 0) return [];
  const sides = seats.filter(({ facing }) => facing[1] !== 0).length;
  const ends = seats.length - sides;
  const where = [...(sides > 0 ? [`${sides} along the sides`] : []), ...(ends > 0 ? [`${ends} at the ends`] : [])];
  return [`${counted(seats.length, 'person sits', 'people sit')} at it: ${listed(where)}.`];
}
