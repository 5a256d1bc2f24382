import type { Surface } from '../geometry/surface.ts';
import { type Assembly, placeOf } from '../model/assembly.ts';
import type { PanelBody } from '../model/body.ts';
import type { Part } from '../model/part.ts';
import type { MeasuredUnderside } from '../model/records.ts';
import type { UndersideFit } from '../model/underside-fit.ts';
import type { Fields, ValuesOf } from '../params/spec.ts';
import { fitUnderside, type NoFit } from '../records/fit-underside.ts';
import type { TopSize } from '../records/read-stations.ts';
import type { Design } from './design.ts';

/** A top that has an underside to be measured. */
export type Top = Part & { readonly body: PanelBody };

/** The top of a piece; undefined when it has none whose underside is worked. */
export const topOf = ({ parts }: Assembly): Top | undefined =>
  parts.find((part): part is Top => part.kind === 'top' && part.body.kind === 'panel');

/** What readings of the top are judged by. */
export function topSize(nominal: Assembly, { id, finished }: Top): TopSize {
  const height = placeOf(nominal, id).origin[2];
  return { ...finished, ...(height > 0 ? { height } : {}) };
}

/** The fit of the readings to the top as designed, or why there is none. */
export function tryFit(nominal: Assembly, underside: MeasuredUnderside): UndersideFit | readonly NoFit[] {
  const top = topOf(nominal);
  if (!top) throw new RangeError(`${nominal.title} has no top whose underside could be measured`);
  return fitUnderside(underside, top.body.underside, top.finished);
}

/** The same. @throws RangeError when there is none. */
export function fitOf(nominal: Assembly, underside: MeasuredUnderside): UndersideFit {
  const fit = tryFit(nominal, underside);
  if ('surface' in fit) return fit;
  throw new RangeError(
    `readings of ${underside.date} make no underside: ${fit.map((f) => `${f.plane} ${f.why}`).join()}`,
  );
}

/**
 * A piece with other values on the underside as measured.
 *
 * @throws RangeError when the values would shape the top anew: that is no way to mend a top that is made.
 */
export function composeOn<F extends Fields>(
  underside: Surface,
  nominal: Assembly,
  moved: ValuesOf<F>,
  { compose, title }: Pick<Design<F>, 'compose' | 'title'>,
): Assembly {
  if (shapeOf(compose(moved, title)) !== shapeOf(nominal)) throw new RangeError('the top is made and measured');
  return compose(moved, title, { underside });
}

const shapeOf = (assembly: Assembly): string => JSON.stringify(topOf(assembly)?.body);
