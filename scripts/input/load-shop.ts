import { existsSync } from 'node:fs';
import path from 'node:path';
import type { Shop } from 'tablewright';
import type { Complaint } from '../report/complaint.ts';
import { DESIGNS_FOLDER } from './design-ref.ts';
import { messageOf } from './load-design.ts';
import { brokenFile, loadModule } from './load-module.ts';

/** Says what machines, clamps and hands there are; need not exist. */
export const SHOP_FILE = path.join(DESIGNS_FOLDER, 'shop.ts');

export type LoadedShop =
  | { readonly shop: Shop; readonly complaint?: never }
  | { readonly complaint: Complaint; readonly shop?: never };

/** The shop of the maker; without a file of it, the defaults. */
export async function loadShop(file = SHOP_FILE): Promise<LoadedShop> {
  const { defineShop } = await import('tablewright');
  if (!existsSync(file)) return { shop: defineShop() };
  const { module, complaint } = await loadModule(file);
  if (complaint) return { complaint };
  const given = (module as { readonly default?: Parameters<typeof defineShop>[0] }).default;
  if (given === undefined) return { complaint: brokenFile(file, 'it must export default defineShop({ … })') };
  const wrong = messageOf(() => defineShop(given));
  return wrong ? { complaint: brokenFile(file, wrong) } : { shop: defineShop(given) };
}
