import type { LengthLook } from '../../../drawing/style.ts';
import type { TableRow } from '../../../drawing/table.ts';
import { type Assembly, partOf } from '../../../model/assembly.ts';
import { isGlueUp, type Part, type PartId, type Size } from '../../../model/part.ts';
import { inBuildingOrder, marksText } from '../../cut-list/building-order.ts';
import { cutList } from '../../cut-list/cut-list.ts';
import { sayDim } from './say-length.ts';
import type { FittedColumn } from './table-block.ts';

/** Longer names and lists of marks are broken, in capital heights; our convention. */
const MOST = 22;

export interface AssemblyKey {
  readonly columns: readonly FittedColumn[];
  readonly rows: readonly TableRow[];
}

/**
 * Marks, names, quantities and finished sizes as in the cut list: first what an exploded view shows, then what is inside the
 * glued panels.
 */
export function assemblyKey(
  assembly: Assembly,
  shown: ReadonlySet<PartId>,
  look: LengthLook,
  height: number,
): AssemblyKey {
  const ids = new Map(assembly.parts.map(({ mark, id }) => [mark, id]));
  const line = (marks: readonly string[], name: string, { thickness, width, length }: Size): TableRow => [
    marksText(marks),
    name,
    `${marks.length}`,
    ...[thickness, width, length].map((mm) => sayDim(mm, look)),
  ];
  const listed = (seen: boolean): TableRow[] =>
    cutList(assembly).rows.flatMap(({ marks, name, finished, kind }) => {
      const here = marks.filter((mark) => shown.has(ids.get(mark)!) === seen);
      if (kind !== 'looseTenon' || !seen) return here.length > 0 ? [line(here, name, finished)] : [];
      return [...byJoint(assembly, here)].map(([where, some]) => line(some, `${name}, ${where}`, finished));
    });
  const inside = listed(false);
  return {
    columns: [
      { head: 'mark', most: MOST * height },
      { head: 'name', most: MOST * height },
      { head: 'qty', align: 'right' },
      ...['T', 'W', 'L'].map((head): FittedColumn => ({ head, align: 'right' })),
    ],
    rows: [
      ...panels(assembly).map((alike) =>
        line(
          alike.map(({ mark }) => mark),
          alike[0]!.name,
          alike[0]!.finished,
        ),
      ),
      ...listed(true),
      ...(inside.length > 0
        ? [{ band: `inside ${marksText(assembly.parts.filter(isGlueUp).map((p) => p.mark))}` }]
        : []),
      ...inside,
    ],
  };
}

/** Glued panels, alike ones together. */
function panels(assembly: Assembly): Part[][] {
  const groups = new Map<string, Part[]>();
  for (const part of inBuildingOrder(assembly, assembly.parts.filter(isGlueUp))) {
    const { thickness, width, length } = part.finished;
    const key = [part.name, ...[thickness, width, length].map((mm) => mm.toFixed(4))].join('|');
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  return [...groups.values()];
}

/** Tenons by the names of the pieces that they join, "post to foot". */
function byJoint(assembly: Assembly, marks: readonly string[]): Map<string, string[]> {
  const groups = new Map<string, string[]>();
  for (const { sides, tenons } of assembly.joints) {
    const here = tenons.map((id) => partOf(assembly, id).mark).filter((mark) => marks.includes(mark));
    const where = sides.map(({ part }) => partOf(assembly, part).name).join(' to ');
    if (here.length > 0) groups.set(where, [...(groups.get(where) ?? []), ...here]);
  }
  return groups;
}
