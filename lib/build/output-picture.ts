import { pictureOf } from '../derive/drawings/picture.ts';
import { placeOf, visibleParts } from '../model/assembly.ts';
import { formatInches, formatMm } from '../units/format-length.ts';
import { writePictureSvg } from '../writers/picture-svg.ts';
import { derivedNumbers } from './derived.ts';
import { warningOf } from './forced.ts';
import type { Job } from './job.ts';
import { type Files, textFile } from './output.ts';

/** Loose tenons lie inside the wood and are left out. */
export function pictureFile(job: Job): Files {
  const { assembly, shapes, design } = job;
  const seen = visibleParts(assembly).filter((part) => part.kind !== 'looseTenon');
  const solids = seen.map((part) => ({
    part: part.id,
    solid: shapes.get(part.id)!.solid,
    frame: placeOf(assembly, part.id),
  }));
  const { length, width, height } = derivedNumbers(job).overall;
  const say = (mm: number): string => (design.units === 'in' ? formatInches(mm, { denominator: 16 }) : formatMm(mm, 0));
  const caption = `${say(length)} long, ${say(width)} wide, ${say(height)} high; revision ${design.revision}, ${design.date}`;
  const warning = warningOf(job) ?? '';
  const svg = writePictureSvg(pictureOf(solids), { title: design.title, caption, warning });
  return new Map([['picture.svg', textFile(svg)]]);
}
