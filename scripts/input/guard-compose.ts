import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Design } from 'tablewright';
import type { Complaint } from '../report/complaint.ts';
import type { DesignRef } from './design-ref.ts';
import { placesOf, reasonOf } from './reason-of.ts';

/** A design cannot be put together, and its author is to mend it. The values may be the reason, hence the kind. */
export class ComposeFailure extends RangeError {
  override readonly name = 'ComposeFailure';
  readonly complaint: Complaint;

  constructor(complaint: Complaint) {
    super(complaint.because);
    this.complaint = complaint;
  }
}

const LIBRARY = fileURLToPath(new URL('../../lib/', import.meta.url));

/**
 * The design with a `compose` that tells whose fault a throw is: one that passes through code outside the library is
 * its author's; one from the library alone is ours and goes on as it is.
 */
export function guardCompose(design: Design, { name, file }: DesignRef): Design {
  const compose: Design['compose'] = (values, title, measured) => {
    try {
      return design.compose(values, title, measured);
    } catch (error) {
      if (isOurs(error)) throw error;
      const because = reasonOf(error, file);
      throw new ComposeFailure({ code: 'compose-broken', given: file, subject: name, because });
    }
  };
  return { ...design, compose };
}

/** Whether all code between the throw and this file is the library's. */
function isOurs(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  const files = placesOf(error).map((place) => place.file);
  const own = files.indexOf(fileURLToPath(import.meta.url));
  return own > 0 && files.slice(0, own).every((at) => at.startsWith(LIBRARY) || isForeign(at));
}

/** Packages that the library calls. */
const isForeign = (file: string): boolean => file.includes(`${path.sep}node_modules${path.sep}`);
