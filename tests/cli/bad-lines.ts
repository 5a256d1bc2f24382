import type { BadInput } from './bad-input.ts';

/** Command lines that are wrong before any design is looked at. OUT and FILES stand for folders. */
export const BAD_LINES: readonly BadInput[] = [
  { name: 'no command', args: [], says: ['usage: npm start -- <command>', 'build [design…]'] },
  { name: 'unknown command', args: ['buld'], says: ['there is no command buld', 'did you mean build?'] },
  { name: 'help as a command', args: ['help'], says: ['there is no command help', 'did you mean --help?'] },
  {
    name: 'command like no other',
    args: ['furnish'],
    says: ['there is no command furnish', 'there are list, params, check, lists, lumber, build and watch'],
  },
  {
    name: 'misspelt option, its value no design',
    args: ['build', '--sett', 'top.length=70 in'],
    says: ['there is no option --sett', 'did you mean --set?', '1 problem; nothing was done'],
  },
  {
    name: 'unknown option',
    args: ['list', '--color'],
    says: ['there is no option --color', 'there are --units, --json and --quiet'],
  },
  { name: 'short option', args: ['list', '-u'], says: ['there is no option -u'] },
  {
    name: 'option of another command',
    args: ['list', '--strict'],
    says: ['list takes no --strict', 'it goes with check, build and watch'],
  },
  {
    name: 'no value at the end',
    args: ['build', '--set'],
    says: ['--set needs a value', 'try --set "top.length=72 in"'],
  },
  {
    name: 'option where a value is due',
    args: ['build', '--out', '--force'],
    says: ['--out needs a value', '"--force" behind it is an option', 'try --out out'],
  },
  { name: 'empty value', args: ['build', '--params='], says: ['--params needs a value', 'try --params values.json'] },
  { name: 'value for a switch', args: ['build', '--force=yes'], says: ['--force takes no value; it came with "yes"'] },
  {
    name: 'two output folders',
    args: ['build', '--out', 'a', '--out', 'b'],
    says: ['--out is given more than once: a and b'],
  },
  {
    name: 'unknown units',
    args: ['check', 'reading-table', '--units', 'feet'],
    says: ['--units is "feet"; it must be in or mm', 'try --units mm'],
  },
  {
    name: 'unknown outputs',
    args: ['build', 'reading-table', '--out', 'OUT', '--only', 'stll, dxf,'],
    says: [
      '--only is "stll"; it must be model, lists',
      'did you mean stl?',
      '--only is ""',
      '2 problems; nothing was written',
    ],
  },
  {
    name: 'two problems of the line at once',
    args: ['chek', 'reading-table', '--forse'],
    says: ['did you mean check?', 'did you mean --force?', '2 problems'],
  },
  { name: 'no design', args: ['check'], says: ['check needs a design', 'reading-table'] },
  {
    name: 'two designs where one is due',
    args: ['lists', 'reading-table', 'study-table'],
    says: ['"study-table" is one too many for lists', 'it takes one'],
  },
  { name: 'design where none is due', args: ['list', 'reading-table'], says: ['list takes no arguments'] },
  {
    name: 'misspelt design',
    args: ['build', 'reading-tabel', '--out', 'OUT'],
    says: ['there is no design reading-tabel', 'did you mean reading-table?', 'nothing was written'],
  },
  {
    name: 'assignment without its option',
    args: ['build', 'top.length=72 in', '--out', 'OUT'],
    says: ['there is no design top.length=72 in', 'try --set "top.length=72 in"'],
  },
  {
    name: 'path that leads nowhere',
    args: ['build', '../../../no-such/design.ts', '--out', 'OUT'],
    says: ['there is no design ../../../no-such/design.ts', 'there is no such file'],
  },
  {
    name: 'folder without a design',
    args: ['build', 'lib/units', '--out', 'OUT'],
    says: ['there is no design lib/units', 'there is no design.ts in that folder'],
  },
  {
    name: 'chart of nothing',
    args: ['check', 'reading-table', '--chart', 'x.svg'],
    says: ['--chart goes only with --vary', 'try --vary "top.edgeThickness=1 in..1 1/2 in:5"'],
  },
  {
    name: 'chart in another format, strict beside a range',
    args: ['check', 'reading-table', '--vary', 'top.layers=1,2', '--chart', 'x.png', '--strict'],
    says: [
      '--chart is "x.png"; its name must end in .svg',
      'try --chart "x.svg"',
      '--strict does not go with --vary',
      'neither passes nor fails',
      '2 problems',
    ],
  },
  {
    name: 'values for several designs',
    args: ['build', '--set', 'top.length=72 in', '--out', 'OUT'],
    says: ['--set is for one design', 'try build'],
  },
];
