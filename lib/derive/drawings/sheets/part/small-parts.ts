import { fits, inCorner } from '../../../../drawing/arrange.ts';
import type { SheetPlan } from '../../../../drawing/sheet.ts';
import type { Assembly } from '../../../../model/assembly.ts';
import { partOf } from '../../../../model/assembly.ts';
import type { Part } from '../../../../model/part.ts';
import type { Mm } from '../../../../units/mm.ts';
import { speciesById } from '../../../../wood/species-list.ts';
import { marksText } from '../../../cut-list/building-order.ts';
import { cutList, isFromOffcuts } from '../../../cut-list/cut-list.ts';
import { noteHeights } from '../note-block.ts';
import { sayLength } from '../say-length.ts';
import { tableBlock } from '../table-block.ts';

/** Loose tenons and pads: one table for all, since their sizes say everything. None when the piece has no such parts. */
export function smallPartsSheet(assembly: Assembly): SheetPlan[] {
  const rows = cutList(assembly).rows.filter(isFromOffcuts);
  if (rows.length === 0) return [];
  const byMark = new Map(assembly.parts.map((part) => [part.mark, part.id]));
  const draw: SheetPlan['draw'] = ({ area, style, heading }) => {
    const say = (mm: Mm): string => sayLength(mm, style.lengths);
    const cells = rows.map(({ marks, name, quantity, wood, finished, notes }) => [
      marksText(marks),
      `${quantity}`,
      name,
      speciesById(wood).name,
      say(finished.thickness),
      say(finished.width),
      say(finished.length),
      edgeWords(partOf(assembly, byMark.get(marks[0]!)!), say),
      notes.join('; '),
    ]);
    const columns = [
      { head: 'marks' },
      { head: 'pieces', align: 'right' },
      { head: 'part' },
      { head: 'wood' },
      { head: 'thickness', align: 'right' },
      { head: 'width', align: 'right' },
      { head: 'length', align: 'right' },
      { head: 'edges along the grain' },
      { head: 'work' },
    ] as const;
    const found = noteHeights(heading.paper).map((height) => tableBlock(columns, cells, height, style));
    const table = found.find((one) => fits(one, area));
    return table && inCorner(table, area).entities;
  };
  return [{ name: 'small-parts', title: 'Small parts', scales: [1], unscaled: true, draw }];
}

/** A bar with half circles at its edges is a loose tenon for round mortises. */
function edgeWords({ body, finished }: Part, say: (mm: Mm) => string): string {
  const round = body.kind === 'bar' && body.profile.some(({ bulge }) => bulge);
  return round ? `rounded, radius ${say(finished.thickness / 2)}` : 'square';
}
