import { heightAt, planeAt, planeHeight, type Surface, sectionAlong } from '../../geometry/surface.ts';
import type { Vec2 } from '../../geometry/vec.ts';
import type { PanelBody } from '../../model/body.ts';
import type { Finding } from '../../model/finding.ts';
import { formatLength } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { atMostVerdict, type CheckContext } from './check.ts';
import { type MeasuredTop, topIn } from './measured-underside-top.ts';

/** Thickness against the design, 1/32 in either way: common practice, no source. */
const TOLERANCE: Mm = 25.4 / 32;

/** A step at a glued joint, 1/64 in: common practice, no source. */
const STEP: Mm = 25.4 / 64;

/** Off by more, something went wrong that no fitting mends, 1/8 in and 1/16 in: our convention. */
const FAR_OFF: Mm = 25.4 / 8;
const FAR_STEP: Mm = 25.4 / 16;

const fine = ({ units }: CheckContext, mm: Mm): string => formatLength(mm, units);

/** A place on the ridge of the nominal underside, where two planes of it meet. */
interface RidgeEnd {
  readonly at: Vec2;
  readonly sides: readonly [string, string];
}

function ridgeEnds({ underside, length, width }: PanelBody): RidgeEnd[] {
  return [0, length].flatMap((x) => {
    const points = sectionAlong(underside, [x, -width / 2], [x, width / 2]);
    return points
      .slice(1, -1)
      .map((p, k): RidgeEnd => ({ at: [x, p.s - width / 2], sides: [points[k]!.plane, p.plane] }));
  });
}

/** How much the two halves differ where they are to meet; nothing for a flat top. */
export function halvesAtRidge(context: CheckContext, measured: MeasuredTop): Finding[] {
  const top = topIn(measured);
  const steps = ridgeEnds(top.body).map(({ at, sides }) => {
    const [one, other] = sides.map((name) => depthOf(measured.fit.surface, name, at)) as [Mm, Mm];
    return { at, value: Math.abs(one - other), thicker: one > other ? sides[0] : sides[1] };
  });
  if (steps.length === 0) return [];
  const { at, value, thicker } = steps.reduce((a, b) => (b.value > a.value ? b : a));
  const verdict = atMostVerdict(value, STEP, FAR_STEP);
  const end = at[0] === 0 ? 'reference end' : 'far end';
  return [
    {
      check: 'halves at the ridge',
      verdict,
      part: top.id,
      where: end,
      value,
      limit: STEP,
      unit: 'mm',
      because: `at the ${end} the halves differ by ${fine(context, value)} where they meet; a step of ${fine(context, STEP)} is wanted`,
      fixes: verdict === 'ok' ? [] : [`plane the ${thicker} half down at the ridge, and measure again`],
      source: 'common practice, no source',
    },
  ];
}

const depthOf = (surface: Surface, name: string, [x, y]: Vec2): Mm =>
  planeHeight(surface.planes.find((p) => p.name === name)!, x, y);

/** The corner or the end of the ridge at which the thickness is farthest from the design. */
export function measuredThickness(context: CheckContext, measured: MeasuredTop): Finding {
  const top = topIn(measured);
  const { underside, length, width } = top.body;
  const edges = [0, length].flatMap((x) => [-width / 2, width / 2].map((y): Vec2 => [x, y]));
  const places = [...edges, ...ridgeEnds(top.body).map(({ at }) => at)];
  const off = places.map((at) => {
    const designed = heightAt(underside, at[0], at[1]);
    return { at, designed, made: heightAt(measured.fit.surface, at[0], at[1]) };
  });
  const worst = off.reduce((a, b) => (Math.abs(b.made - b.designed) > Math.abs(a.made - a.designed) ? b : a));
  const value = Math.abs(worst.made - worst.designed);
  const verdict = atMostVerdict(value, TOLERANCE, FAR_OFF);
  const thin = worst.made < worst.designed;
  return {
    check: 'thickness as measured',
    verdict,
    part: top.id,
    where: placeName(measured.fit.surface, worst.at, edges),
    value,
    limit: TOLERANCE,
    unit: 'mm',
    because: `${placeName(measured.fit.surface, worst.at, edges)} it is ${fine(context, worst.made)} thick, ${fine(context, value)} ${thin ? 'under' : 'over'} the ${fine(context, worst.designed)} of the design; ${fine(context, TOLERANCE)} either way is common`,
    fixes: verdict === 'ok' ? [] : [thin ? thinFix : `take the underside down there, and measure again`],
    source: 'common practice, no source',
  };
}

const thinFix =
  'keep it, if the checks of cover and edge are well with it: posts and bearers are made to what was measured';

function placeName(surface: Surface, at: Vec2, edges: readonly Vec2[]): string {
  const end = at[0] === 0 ? 'reference end' : 'far end';
  if (!edges.includes(at)) return `on the ridge at the ${end}`;
  const side = surface.planes.length > 1 ? planeAt(surface, at[0], at[1]).name : at[1] < 0 ? 'left' : 'right';
  return `on the ${side} edge at the ${end}`;
}
