import { existsSync } from 'node:fs';
import path from 'node:path';
import type { Shop } from 'tablewright';
import type { Problem } from '../report/problem.ts';
import { shownPath } from '../report/shown-path.ts';
import { DESIGNS_FOLDER } from './design-ref.ts';
import { brokenFile, loadModule } from './load-module.ts';

/** Says what machines, clamps and hands there are; need not exist. */
export const SHOP_FILE = path.join(DESIGNS_FOLDER, 'shop.ts');

export type LoadedShop =
  | { readonly shop: Shop; readonly problems?: never }
  | { readonly problems: readonly Problem[]; readonly shop?: never };

/** The shop of the maker; without a file of it, the defaults. */
export async function loadShop(file = SHOP_FILE): Promise<LoadedShop> {
  const { defineShop, readShop } = await import('tablewright');
  if (!existsSync(file)) return { shop: defineShop() };
  const { module, problems } = await loadModule(file);
  if (problems) return { problems };
  const given = (module as { readonly default?: unknown }).default;
  if (given === undefined) return { problems: [brokenFile(file, 'it must export default defineShop({ … })')] };
  const { values, issues } = readShop(given, shownPath(file));
  return issues ? { problems: issues } : { shop: values };
}
