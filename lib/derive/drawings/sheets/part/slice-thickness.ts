import { heightAt } from '../../../../geometry/surface.ts';
import type { SliceBody } from '../../../../model/body.ts';
import type { Mm } from '../../../../units/mm.ts';

/** Of a board of a top in the middle of its length, before its arrises are worked; 0 where the underside has cut it away. */
export function sliceThickness({ of, top, bottom }: Omit<SliceBody, 'kind'>, y: Mm): Mm {
  const under = heightAt(of.underside, of.length / 2, y);
  return Math.max(0, Math.min(under, bottom ?? Infinity) - top);
}
