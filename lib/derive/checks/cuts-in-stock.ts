import type { Finding } from '../../model/finding.ts';
import type { Part } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { type PocketFit, pocketFits } from '../solids/pocket-fit.ts';
import { shapeKey } from '../solids/shapes.ts';
import { type Check, type CheckContext, called, say } from './check.ts';

/** Least wood between a mortise, hole or slot and any other surface, mm (our convention). */
export const LEAST_WALL: Mm = 3;

/** Every mortise, hole and slot lies inside its piece, clear of the others by at least 3 mm of wood. */
export const cutsInStock: Check = {
  name: 'cuts in stock',
  run(context) {
    const known = new Map<string, PocketFit[]>();
    const findings = context.assembly.parts.flatMap((part) => {
      if (part.features.length === 0) return [];
      const key = shapeKey(part);
      const fits = known.get(key) ?? pocketFits(part, LEAST_WALL);
      known.set(key, fits);
      return fits.length > 0 ? partFindings(context, part, fits) : [];
    });
    return findings.length > 0 ? findings : [none(context)];
  },
};

function partFindings(context: CheckContext, part: Part, fits: readonly PocketFit[]): Finding[] {
  const bad = fits.filter((f) => f.wall < LEAST_WALL - 1e-6);
  if (bad.length === 0) return [well(context, part, fits.length)];
  return bad.map((f) => finding(context, part, f));
}

function finding(context: CheckContext, part: Part, { feature, wall, against, refused }: PocketFit): Finding {
  const common = { check: cutsInStock.name, part: part.id, where: feature, limit: LEAST_WALL, unit: 'mm' };
  const cut = `${called(part)}: cut ${feature}`;
  if (refused) {
    return {
      ...common,
      verdict: 'change it',
      because: `${cut} cannot be made; ${refused}`,
      fixes: ['move it or make it smaller'],
      source: 'geometry of the design',
    };
  }
  const broken = wall <= 0;
  return {
    ...common,
    verdict: broken ? 'change it' : 'look again',
    value: wall,
    because: broken
      ? `${cut} breaks through ${spoken(against)} by ${say(context, -wall, 'up')}`
      : `${cut} leaves ${say(context, wall, 'down')} of wood to ${spoken(against)}; ${say(context, LEAST_WALL, 'up')} is wanted`,
    fixes: [`move it or make it smaller by ${say(context, LEAST_WALL - wall, 'up')}`],
    source: broken ? 'geometry of the design' : 'our convention',
  };
}

/** The border of a piece as one says it; cuts go by their names. */
const spoken = (surface: string): string => surface.replace(/^(reference|far)-(face|edge|end)$/, 'the $1 $2');

const well = (context: CheckContext, part: Part, count: number): Finding => ({
  check: cutsInStock.name,
  verdict: 'ok',
  part: part.id,
  value: LEAST_WALL,
  limit: LEAST_WALL,
  unit: 'mm',
  because: `${called(part)}: ${count === 1 ? 'its cut has' : `all ${count} cuts have`} at least ${say(context, LEAST_WALL, 'down')} of wood around`,
  fixes: [],
  source: 'our convention',
});

const none = ({ assembly }: CheckContext): Finding => ({
  check: cutsInStock.name,
  verdict: 'ok',
  part: assembly.parts[0]!.id,
  unit: 'mm',
  because: 'there are no mortises, holes or slots',
  fixes: [],
  source: 'our convention',
});
