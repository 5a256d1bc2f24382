import design from '../../designs/reading-table/design.ts';
import { type Job, makeJob } from '../../lib/build/job.ts';
import { sheetsOf } from '../../lib/build/output-drawings.ts';
import { hiddenLines } from '../../lib/derive/drawings/hidden-lines.ts';
import type { PlacedSolid } from '../../lib/derive/drawings/placed-solid.ts';
import { sectionView } from '../../lib/derive/drawings/section-view.ts';
import { standingSolids } from '../../lib/derive/drawings/standing-solids.ts';
import { VIEWS } from '../../lib/derive/drawings/view.ts';
import { placeOf, visibleParts } from '../../lib/model/assembly.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { tableText } from '../../lib/writers/table-text.ts';
import { ms, type Timing, time } from './clock.ts';

/** Views of the demo with visible and hidden lines, and its sheets. */
export function viewsBench(): string {
  const job = makeJob(design, readValues(design.params, design.values).values!);
  const { assembly, shapes } = job;
  const solids = visibleParts(assembly)
    .filter(({ kind }) => kind !== 'looseTenon')
    .map(({ id }): PlacedSolid => ({ part: id, solid: shapes.get(id)!.solid, frame: placeOf(assembly, id) }));
  const standing = standingSolids(assembly);
  const views = Object.values(VIEWS);
  const rows = [
    row(
      'four views, visible and hidden lines',
      time(() => views.map((view) => hiddenLines(solids, view)), 20),
    ),
    row(
      'four views, visible lines',
      time(() => views.map((view) => hiddenLines(solids, view, { hidden: false })), 20),
    ),
    row(
      'four views without pockets',
      time(() => views.map((view) => hiddenLines(standing, view)), 20),
    ),
    row(
      'a section with what lies beyond',
      time(() => sectionView(standing, VIEWS.end, 1000), 20),
    ),
    row(
      'all sheets',
      time(() => sheetsOf(again(job)), 10),
    ),
  ];
  const right = (head: string) => ({ head, align: 'right' as const });
  return `views of the reading-room table\n${tableText([{ head: '' }, right('first'), right('median')], rows)}`;
}

const row = (name: string, timing: Timing): string[] => [name, ms(timing.first), ms(timing.median)];

/** The same job as another object, so that its sheets are not known yet; what is known of the piece is. */
const again = (job: Job): Job => ({ ...job });
