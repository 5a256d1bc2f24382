import { register } from 'node:module';
import { pathToFileURL } from 'node:url';
import type { Complaint } from '../report/complaint.ts';
import type { Problem } from '../report/problem.ts';
import { shownPath } from '../report/shown-path.ts';
import { reasonOf } from './reason-of.ts';

export type LoadedModule =
  | { readonly module: unknown; readonly problems?: never }
  | { readonly problems: readonly Problem[]; readonly module?: never };

/** Runs a file of the maker. Whatever it throws is the maker's to mend, so it becomes problems. */
export async function loadModule(file: string): Promise<LoadedModule> {
  resolveOwnName();
  try {
    return { module: await import(pathToFileURL(file).href) };
  } catch (error) {
    const { IssuesError } = await import('tablewright');
    if (error instanceof IssuesError)
      return { problems: error.issues.map((one) => ({ ...one, from: shownPath(file) })) };
    return { problems: [brokenFile(file, reasonOf(error, file))] };
  }
}

export const brokenFile = (file: string, because: string): Complaint => ({
  code: 'design-broken',
  given: shownPath(file),
  subject: '',
  because,
});

let registered = false;

/** A design may lie anywhere and still import from 'tablewright'. */
function resolveOwnName(): void {
  if (registered) return;
  registered = true;
  const index = new URL('../../lib/index.ts', import.meta.url).href;
  const hook = `export const resolve = (name, context, next) =>
    next(name === 'tablewright' ? ${JSON.stringify(index)} : name, context);`;
  register(`data:text/javascript,${encodeURIComponent(hook)}`);
}
