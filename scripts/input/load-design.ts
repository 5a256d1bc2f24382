import type { Design } from 'tablewright';
import type { Problem } from '../report/problem.ts';
import { shownPath } from '../report/shown-path.ts';
import type { DesignRef } from './design-ref.ts';
import { loadModule } from './load-module.ts';

export type Loaded =
  | { readonly design: Design; readonly problems?: never }
  | { readonly problems: readonly Problem[]; readonly design?: never };

/** Loads a design file and looks at what it exports, its site and loads included. */
export async function loadDesign({ file }: DesignRef): Promise<Loaded> {
  const { module, problems } = await loadModule(file);
  if (problems) return { problems };
  const { readDesign } = await import('tablewright');
  const { design, issues } = readDesign(module, shownPath(file));
  return design ? { design } : { problems: issues };
}
