import type { Finding } from '../../model/finding.ts';
import { classFor, spare } from '../../wood/class-for.ts';
import { marksText } from '../cut-list/building-order.ts';
import { cutList, isFromOffcuts, STOCKED } from '../cut-list/cut-list.ts';
import { type Check, say } from './check.ts';

/** Every piece can be milled from one board of lumber as it is sold. */
export const lumberThickness: Check = {
  name: 'lumber thickness',
  run(context) {
    const thickest = STOCKED[STOCKED.length - 1]!;
    return cutList(context.assembly)
      .rows.filter((row) => !isFromOffcuts(row))
      .map((row): Finding => {
        const lumber = classFor(row.rough.thickness, STOCKED);
        const first = context.assembly.parts.find((p) => p.mark === row.marks[0])!;
        const need = `${row.name} ${marksText(row.marks)} must be milled to ${say(context, row.rough.thickness, 'up')}`;
        const limit = (lumber ?? thickest).dressed.value;
        return {
          check: lumberThickness.name,
          verdict: lumber ? 'ok' : 'look again',
          part: first.id,
          value: row.rough.thickness,
          limit,
          unit: 'mm',
          because: lumber
            ? `${need}: ${lumber.id} dresses to ${say(context, limit)}, ${say(context, spare(lumber, row.rough.thickness), 'down')} to spare`
            : `${need}: no lumber is that thick; ${thickest.id} dresses to ${say(context, limit, 'down')}`,
          fixes: lumber ? [] : ['glue the piece up from two layers, or make it thinner'],
          source: (lumber ?? thickest).dressed.source,
        };
      });
  },
};
