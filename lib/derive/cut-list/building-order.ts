import type { Assembly } from '../../model/assembly.ts';
import type { Part, PartId, PartKind } from '../../model/part.ts';

/** The order in which kinds of pieces are made: the top first, since everything else is fitted to it. */
const ORDER: { readonly [K in PartKind]: number } = {
  top: 0,
  strip: 1,
  seat: 1,
  stave: 3,
  panelLeg: 3,
  post: 4,
  bearer: 5,
  cleat: 5,
  side: 4,
  foot: 6,
  rail: 7,
  stretcher: 8,
  looseTenon: 9,
  pad: 10,
};

/** Tenons of the top are needed before the frames are begun. */
const EDGE_TENON = 2;

/** Pieces in building order; within a kind by mark, numbers as numbers. */
export function inBuildingOrder(assembly: Assembly, parts: readonly Part[]): Part[] {
  const edgeTenons = new Set<PartId>(assembly.joints.filter((j) => j.kind === 'edge').flatMap((j) => j.tenons));
  const rank = (part: Part): number => (edgeTenons.has(part.id) ? EDGE_TENON : ORDER[part.kind]);
  return [...parts].sort((a, b) => rank(a) - rank(b) || compareMarks(a.mark, b.mark));
}

/** "T2" before "T10", "T4A" before "T4B". */
export function compareMarks(a: string, b: string): number {
  const [p, q] = [split(a), split(b)];
  if (p.letters !== q.letters) return p.letters < q.letters ? -1 : 1;
  return p.number - q.number || (p.rest < q.rest ? -1 : p.rest > q.rest ? 1 : 0);
}

function split(mark: string): { letters: string; number: number; rest: string } {
  const [, letters = '', digits = '0', rest = ''] = /^(\D*)(\d*)(.*)$/.exec(mark) ?? [];
  return { letters, number: Number(digits || 0), rest };
}

/** Marks as one writes them: "T1, T4 to T6". Runs of three and more are drawn together. */
export function marksText(marks: readonly string[]): string {
  const sorted = [...marks].sort(compareMarks);
  const runs: string[][] = [];
  for (const mark of sorted) {
    const run = runs[runs.length - 1];
    const last = run?.[run.length - 1];
    if (run && last && follows(last, mark)) run.push(mark);
    else runs.push([mark]);
  }
  return runs.map((run) => (run.length > 2 ? `${run[0]} to ${run[run.length - 1]}` : run.join(', '))).join(', ');
}

function follows(a: string, b: string): boolean {
  const [p, q] = [split(a), split(b)];
  return p.letters === q.letters && q.number === p.number + 1 && p.rest === q.rest;
}
