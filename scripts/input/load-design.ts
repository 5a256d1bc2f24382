import { register } from 'node:module';
import { pathToFileURL } from 'node:url';
import type { Design } from '../../lib/build/design.ts';
import { readDesign } from '../../lib/build/read-design.ts';
import type { Problem } from '../report/problem.ts';
import { shownPath } from '../report/shown-path.ts';
import type { DesignRef } from './design-ref.ts';
import { reasonOf } from './reason-of.ts';

export type Loaded =
  | { readonly design: Design; readonly problems?: never }
  | { readonly problems: readonly Problem[]; readonly design?: never };

let registered = false;

/** Runs a design file. Whatever it throws is its author's to mend, so it becomes a problem. */
export async function loadDesign({ file }: DesignRef): Promise<Loaded> {
  resolveOwnName();
  const shown = shownPath(file);
  let module: unknown;
  try {
    module = await import(pathToFileURL(file).href);
  } catch (error) {
    return { problems: [broken(shown, reasonOf(error, file))] };
  }
  const { design, issues } = readDesign(module, shown);
  if (design) return { design };
  return { problems: [broken(shown, issues.map((one) => `${one.path} is ${one.given}; ${one.because}`).join('\n'))] };
}

const broken = (given: string, because: string): Problem => ({ code: 'design-broken', given, subject: '', because });

/** A design may lie anywhere and still import from 'tablewright'. */
function resolveOwnName(): void {
  if (registered) return;
  registered = true;
  const index = new URL('../../lib/index.ts', import.meta.url).href;
  const hook = `export const resolve = (name, context, next) =>
    next(name === 'tablewright' ? ${JSON.stringify(index)} : name, context);`;
  register(`data:text/javascript,${encodeURIComponent(hook)}`);
}
