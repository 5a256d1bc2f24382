import type { Shop } from '../../shop/shop.ts';
import type { ThicknessClass, ThicknessClassId } from '../../wood/thickness-classes.ts';
import { STOCKED } from '../cut-list/cut-list.ts';

type Prices = Shop['lumber']['price'];

const KEYS: Readonly<Partial<Record<ThicknessClassId, keyof Prices>>> = {
  '4/4': 'q4',
  '5/4': 'q5',
  '6/4': 'q6',
  '8/4': 'q8',
  '10/4': 'q10',
  '12/4': 'q12',
  '16/4': 'q16',
};

/** Price of a board foot in the money of the shop; 0 when the yard has none. */
export function pricePerFoot(shop: Shop, id: ThicknessClassId): number {
  const key = KEYS[id];
  return key === undefined ? 0 : shop.lumber.price[key];
}

/** The classes that the yard has, thinnest first. */
export const classesOf = (shop: Shop): ThicknessClass[] => STOCKED.filter(({ id }) => pricePerFoot(shop, id) > 0);
