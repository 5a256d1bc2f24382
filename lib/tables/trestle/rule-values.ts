import type { Mm } from '../../units/mm.ts';
import type { TrestleValues } from './values.ts';

/** Least wood behind a mortise or beside it, mm: common practice, no source. */
export const WALL: Mm = 5;

/** Least wood between two cuts that would otherwise run into each other, mm (our convention). */
export const BETWEEN_CUTS: Mm = 1;

export const isKind = (v: TrestleValues, ...kinds: TrestleValues['frame']['kind'][]): boolean =>
  kinds.includes(v.frame.kind);

export const hasStretchers = (v: TrestleValues): boolean => v.stretcher.count > 0;
export const meetsRail = (v: TrestleValues): boolean =>
  !isKind(v, 'panel') && hasStretchers(v) && v.stretcher.to === 'rail';
export const meetsPosts = (v: TrestleValues): boolean =>
  !isKind(v, 'panel') && hasStretchers(v) && v.stretcher.to === 'posts';
export const hasLowerRail = (v: TrestleValues): boolean => !isKind(v, 'panel') && v.lowerRail.use;

/** What `slope` reads. */
export const SLOPE = ['top.thickness', 'top.edgeThickness', 'top.width'] as const;

/** Rise of the underside towards the long edges, mm per mm. */
export const slope = (v: TrestleValues): number => (v.top.thickness - v.top.edgeThickness) / (v.top.width / 2);

/** What `under` reads. */
export const UNDER = ['table.height', ...SLOPE] as const;

/** Height of the underside over the floor at a distance from the center line, mm. */
export const under = (v: TrestleValues, across: Mm): Mm => v.table.height - v.top.thickness + slope(v) * across;

/** What `carrierLength` reads. */
export const CARRIER = ['frame.kind', 'bearer.length', 'cleat.length', 'post.spacing', 'post.width'] as const;

/** Length of the piece that takes the screws: bearer, upper rail or cleat, mm. */
export const carrierLength = (v: TrestleValues): Mm =>
  ({ bearer: v.bearer.length, posts: v.post.spacing - v.post.width, panel: v.cleat.length })[v.frame.kind];
