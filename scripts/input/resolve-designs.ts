import type { Complaint } from '../report/complaint.ts';
import { type DesignRef, designRef, findDesigns } from './design-ref.ts';

export interface Resolved {
  readonly designs: readonly DesignRef[];
  readonly complaints: readonly Complaint[];
}

/** The one design that a command is about. */
export function resolveDesign(args: readonly string[], command: string): Resolved {
  if (args.length > 0) return resolveDesigns(args);
  const options = findDesigns().map(({ name }) => name);
  return { designs: [], complaints: [{ code: 'design-missing', given: '', subject: command, options }] };
}

/** The named designs, each once; every design when none is named. */
export function resolveDesigns(args: readonly string[]): Resolved {
  const known = findDesigns();
  if (args.length === 0) return { designs: known, complaints: [] };
  const designs = new Map<string, DesignRef>();
  const complaints: Complaint[] = [];
  for (const given of args) {
    const found = designRef(given, known);
    if ('code' in found) complaints.push(found);
    else designs.set(found.file, found);
  }
  return { designs: [...designs.values()], complaints: [...complaints, ...sameNames([...designs.values()])] };
}

function sameNames(designs: readonly DesignRef[]): Complaint[] {
  return designs.flatMap(({ name, file }, k) => {
    const other = designs.slice(0, k).find((one) => one.name === name);
    return other ? [{ code: 'same-folder' as const, given: `${other.file} and ${file}`, subject: `"${name}"` }] : [];
  });
}
