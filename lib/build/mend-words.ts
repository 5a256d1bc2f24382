import type { StripMend, StripShortage } from '../derive/lumber/strip-plan/explain-infeasible.ts';
import { formatLength, type UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import { marksList } from './mark-order.ts';

type Length = (mm: Mm) => string;

const MENDS: { readonly [C in StripMend['change']]: (mend: StripMend, by: string) => string } = {
  'board thicker': ({ mark }, by) => `board ${mark} ${by} thicker`,
  'board wider': ({ mark }, by) => `board ${mark} ${by} wider`,
  'top narrower': (_, by) => `a top ${by} narrower`,
  'top thinner on the center line': (_, by) => `a top ${by} thinner on the center line`,
  'one strip more': () => 'one strip more',
  'one strip less': () => 'one strip less',
  'without the pins': () => 'no boards settled by hand',
  'seam off the center line': () => 'a board over the center line instead of a seam there',
};

/** Thinner tops than this were not tried: then nothing can be said of how thick one could be, mm. */
const TRIED: Mm = 25.4 / 4;

/** What is asked of the boards and they do not give. */
const SHORTAGES: {
  readonly [W in StripShortage['what']]: (shortage: StripShortage, up: Length, down: Length) => string;
} = {
  'boards too few': ({ value, wanted }) =>
    `${wanted - value} more ${wanted - value === 1 ? 'board' : 'boards'} at least`,
  'least width': ({ value, wanted }, up, down) =>
    `so many strips of the least width are ${up(wanted)} across, and the glued blank is ${down(value)}`,
  width: ({ value, wanted }, up, down) =>
    `the widest of them cover ${down(value)} across, and the glued blank wants ${up(wanted)}`,
  thickness: ({ value, wanted }, up, down) =>
    wanted - value > TRIED
      ? `they are too thin for ${up(wanted)} on the center line, and for a top ${up(TRIED)} thinner, too`
      : `they give ${down(value)} on the center line at most, and ${up(wanted)} is wanted`,
  pins: () => 'the boards settled by hand leave no place for the others',
  seam: () => 'a seam has to lie on the center line, as it is drawn',
};

/** Which requirement fails, and the smallest changes that would each give a plan. */
export function mendWords(shortage: StripShortage, units: UnitSystem): string[] {
  const { what, value, mends, freed = [] } = shortage;
  const up: Length = (mm) => formatLength(mm, units, 'up');
  const down: Length = (mm) => formatLength(mm, units, 'down');
  const fails = [
    `what fails: ${SHORTAGES[what](shortage, up, down)}`,
    ...(freed.length > 0 && value > 1
      ? [`it would do to leave open where one of these lies: ${marksList(freed)}`]
      : []),
  ];
  if (mends.length === 0) return what === 'boards too few' ? fails : [...fails, 'no one small change would do'];
  const words = mends.map((mend) => MENDS[mend.change](mend, formatLength(mend.by ?? 0, units, 'up', 16)));
  return [...fails, `any one of these would do: ${words.join('; ')}`];
}
