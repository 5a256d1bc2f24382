import type { Mm } from '../../units/mm.ts';
import { type CheckContext, say } from './check.ts';
import { type Load, packedLoads } from './packed-loads.ts';

/** Room for hands and knuckles that a carrier wants to spare: 1 in (our convention). */
export const KNUCKLES: Mm = 25.4;

/** The same without the dust of floating point, mm. */
export const ENOUGH: Mm = KNUCKLES - 1e-6;

/** What a maker would change so that a load becomes smaller. */
export const LOAD_LEVERS: { readonly [K in Load['kind']]: readonly string[] } = {
  top: ['top.length', 'top.width', 'top.thickness'],
  base: ['frame.inset', 'foot.length', 'bearer.length', 'panelLeg.width', 'table.height'],
  frame: ['foot.length', 'bearer.length'],
  whole: ['top.length', 'seat.length'],
};

/** "packed top T (85 1/2 in x 41 1/2 in x 3 3/4 in)". */
export const packed = (context: CheckContext, { name, sides }: Load): string =>
  `packed ${name} (${sides.map((side) => say(context, side, 'up')).join(' x ')})`;

/** The same load of another version of the piece. */
export const sameLoad = ({ assembly, site }: CheckContext, { kind }: Load): Load | undefined =>
  packedLoads(assembly, site.route.packing).find((load) => load.kind === kind);
