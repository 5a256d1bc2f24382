import type { Design } from 'tablewright';
import type { Complaint } from '../report/complaint.ts';
import { shownPath } from '../report/shown-path.ts';
import type { DesignRef } from './design-ref.ts';
import { brokenFile, loadModule } from './load-module.ts';
import { gist } from './reason-of.ts';

export type Loaded =
  | { readonly design: Design; readonly complaint?: never }
  | { readonly complaint: Complaint; readonly design?: never };

/** Loads a design file and looks at what it exports, its site and loads included. */
export async function loadDesign({ file }: DesignRef): Promise<Loaded> {
  const { module, complaint } = await loadModule(file);
  if (complaint) return { complaint };
  const { readDesign } = await import('tablewright');
  const { design, issues } = readDesign(module, shownPath(file));
  if (!design) {
    const because = issues.map((one) => `${one.path} is ${one.given}; ${one.because}`).join('\n');
    return { complaint: brokenFile(file, because) };
  }
  const wrong = await surroundings(design);
  return wrong ? { complaint: brokenFile(file, wrong) } : { design };
}

/** What is wrong with the site and the loads of a design. */
async function surroundings({ site, loads }: Design): Promise<string> {
  const { defineSite } = await import('../../lib/shop/site.ts');
  const { defineLoads } = await import('../../lib/shop/loads.ts');
  return [messageOf(() => defineSite(site)), messageOf(() => defineLoads(loads))].filter(Boolean).join('\n');
}

/** What a reader of values says when it refuses them. */
export function messageOf(read: () => unknown): string {
  try {
    read();
    return '';
  } catch (error) {
    if (error instanceof RangeError) return gist(error.message);
    throw error;
  }
}
