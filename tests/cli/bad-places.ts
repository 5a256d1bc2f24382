import type { BadDesign } from './bad-designs.ts';
import type { BadInput } from './bad-input.ts';

const design = (name: string, folder: BadDesign, says: readonly string[], exit = 2): BadInput => ({
  name,
  args: ['build', `FILES/${folder}`, '--out', 'OUT'],
  exit,
  says,
});

/** Designs that cannot be used, and folders that cannot be written. OUT and FILES stand for folders. */
export const BAD_PLACES: readonly BadInput[] = [
  design('syntax error', 'syntax', ['syntax/design.ts cannot be loaded', 'line 2, column 10: Unexpected ","']),
  design('throws while it is loaded', 'throws', ['cannot be loaded', 'line 2: LengthTextError: "12" is not a length']),
  design('throws a text', 'text', ['cannot be loaded', 'it throws "no walnut left"']),
  design('imports what is not there', 'stray', ['cannot be loaded', "Cannot find module 'FILES/stray/not-there.ts'"]),
  design('exports no design', 'empty', [
    'default export is missing; it must be a design: ',
    'given by ',
    'empty/design.ts',
  ]),
  design('half a design', 'half', [
    'title is ""; it must be a text: what the piece is called',
    'given by ',
    'half/design.ts',
    'revision is missing; it must be a text such as "A"',
    'units is "ft"; it must be "in" or "mm"',
    'compose is 3; it must be a function',
    'problems; nothing was written',
  ]),
  design('never finishes loading', 'waits', ['cannot be loaded', 'awaits something that never comes']),
  design('ends the process', 'leaves', ['cannot be loaded', 'it ends the process']),
  design('cannot be put together', 'compose', [
    'compose cannot be put together',
    'line 5: RangeError: no bench is 2133.6 mm long',
  ]),
  design('values that are wrong', 'values', [
    'top.length is 84 mm',
    'top.wood is "chery"',
    'given by the design file',
    '2 problems',
  ]),
  design('site and loads that cannot be', 'site', [
    'site.room.length is "3", without a unit; write 3 mm or 3 in',
    'given by ',
    'site/design.ts',
    "try site: { room: { length: '3 mm' } }",
    'loads.lean is -3 N; it must be 0 N to 5000 N',
    "try loads: { lean: '0 N' }",
    '2 problems; nothing was written for site',
  ]),
  design('shop that cannot be', 'shop', [
    'clamps.short.count is -2; it must be 0 to 200',
    'given by ',
    'shop/design.ts',
    'try clamps: { short: { count: 0 } }',
    'there is no parameter machines.planer',
    'given by ',
    '2 problems',
  ]),
  design('a fault of the library', 'ours', ['a fault of tablewright', 'TypeError: ', 'at buildTop'], 70),
  {
    name: 'blocked by its checks',
    args: ['build', 'reading-table', '--out', 'OUT', '--set', 'top.edgeThickness=12 mm'],
    exit: 1,
    says: [
      'reading-table is not built',
      'findings "change it"',
      'slot cover: strip T1',
      '--force to build all the same',
    ],
  },
  {
    name: 'blocked by a check alone',
    args: ['check', 'reading-table', '--set', 'top.edgeThickness=19 mm', '--strict', '--quiet'],
    exit: 1,
    says: [],
  },
  {
    name: 'file where the output should go',
    args: ['build', 'reading-table', '--out', 'FILES/list.json'],
    exit: 1,
    says: ['FILES/list.json/reading-table cannot be written', 'a file is in the way', 'try --out with a folder'],
  },
  {
    name: 'place that cannot be written',
    args: ['build', 'reading-table', '--out', '/dev/null/out'],
    exit: 1,
    says: ['/dev/null/out/reading-table cannot be written'],
  },
  {
    name: 'folder with files of the maker',
    args: ['build', 'FILES/good', '--only', 'lists', '--out', 'FILES'],
    exit: 1,
    says: ['FILES/good would be replaced as a whole', 'no build made FILES/good/design.ts', 'try moving it elsewhere'],
  },
];
