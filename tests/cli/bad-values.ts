import type { BadInput } from './bad-input.ts';

/** What `build` is told of one assignment or several. */
const set = (name: string, assignments: readonly string[], says: readonly string[]): BadInput => ({
  name,
  args: ['build', 'reading-table', '--out', 'OUT', ...assignments.flatMap((one) => ['--set', one])],
  says: [...says, 'nothing was written; OUT/reading-table is as it was'],
});

const file = (name: string, params: string, says: readonly string[], ...more: readonly string[]): BadInput => ({
  name,
  args: ['build', 'reading-table', '--out', 'OUT', '--params', `FILES/${params}`, ...more],
  says,
});

const vary = (name: string, given: readonly string[], says: readonly string[]): BadInput => ({
  name,
  args: ['check', 'reading-table', ...given.flatMap((one) => ['--vary', one])],
  says: [...says, 'nothing was tried'],
});

/** Values that parameters cannot have. OUT and FILES stand for folders. */
export const BAD_VALUES: readonly BadInput[] = [
  set('no assignment', ['top.length 72 in'], ['"top.length 72 in" is no assignment; write path=value']),
  set(
    'misspelt parameter',
    ['top.edgeThicknes=8 mm'],
    ['no parameter top.edgeThicknes', 'did you mean top.edgeThickness?'],
  ),
  set('name that every object has', ['toString=1'], ['there is no parameter toString']),
  set(
    'group as a parameter',
    ['top=3 mm'],
    ['top is a group of parameters; it cannot be 3 mm', 'it has length, width'],
  ),
  set('something below a parameter', ['top.length.max=3 mm'], ['top.length is a parameter, not a group']),
  set(
    'number without a unit',
    ['top.edgeThickness=19'],
    ['"19", without a unit; write 19 mm or 19 in', 'edgeThickness=19 mm"'],
  ),
  set(
    'fraction over nothing',
    ['top.thickness=1/0 in'],
    ['"1/0 in"; it must be a length, 1/2 in to 5 in', 'try --set'],
  ),
  set(
    'negative length',
    ['top.length=-72 in'],
    ['top.length is -72 in; it must be 16 in to 192 in', 'try --set "top.length='],
  ),
  set('too long', ['top.length=20 ft'], ['top.length is 20 ft; it must be 16 in to 192 in', 'try --set "top.length=']),
  set('not a number', ['top.length=NaN mm'], ['top.length is "NaN mm"; it must be a length']),
  set('endless', ['top.length=1e999 mm'], ['top.length is "1e999 mm"; it must be a length']),
  set('nothing', ['top.length='], ['top.length is ""', 'try --set "top.length=84 in"']),
  set(
    'half a layer',
    ['top.layers=1.5'],
    ['top.layers is 1.5; it must be a whole number, 1 to 2', 'try --set "top.layers='],
  ),
  set('misspelt wood', ['top.wood=chery'], ['top.wood is "chery"; it must be', 'did you mean cherry?']),
  set('neither yes nor no', ['edgeJoint.tenons=maybe'], ['edgeJoint.tenons is "maybe"; it must be yes or no']),
  set('control character', ['top.wood=cher\nry'], ['top.wood is "cher\\nry"']),
  set(
    'two values for one',
    ['top.length=70 in', 'top.length=72 in'],
    ['top.length is given more than once: 70 in and 72 in'],
  ),
  set(
    'edge thicker than the center',
    ['top.edgeThickness=3 in'],
    ['is 3 in; it must be', 'the upper limit is top.thickness'],
  ),
  set(
    'frames that cross',
    ['frame.inset=50 in'],
    ['frame.inset is 50 in; it must be', ' in to ', 'try --set "frame.inset='],
  ),
  set(
    'posts wider than the foot',
    ['post.spacing=29 in'],
    ['post.spacing is 29 in; it must be', ' in to ', 'try --set "post.spacing='],
  ),
  set(
    'tenon deeper than the stock',
    ['frameJoint.tenonDepth=3 in'],
    ['frameJoint.tenonDepth is 3 in; it must be', ' in to ', 'try --set "frameJoint.tenonDepth='],
  ),
  set('strips that do not add up', ['top.strips=5 in, 6 in'], ['the strips add up to 11 in and the top is 40 in wide']),
  set(
    'two problems, in the order of the table',
    ['fixing.perSide=0', 'top.length=3'],
    ['top.length is "3"', 'fixing.perSide is 0; it must be 1 to 6', '2 problems'],
  ),
  vary(
    'ranges that are none, all at once',
    ['top.edgeThickness', 'top.lenght=1 m..2 m', 'frame.kind=bearer..panel'],
    [
      '"top.edgeThickness" does not say what to try; write path=from..to:count or path=one,other',
      'try --vary "top.edgeThickness=1/2 in..',
      'there is no parameter top.lenght',
      'did you mean top.length?',
      'frame.kind cannot be tried over "bearer..panel"',
      'try --vary "frame.kind=bearer,',
      '3 problems',
    ],
  ),
  vary(
    'range with an end that cannot be',
    ['top.edgeThickness=1/8 in..1 in:5'],
    [
      'top.edgeThickness is 1/8 in; it must be',
      'given by --vary "top.edgeThickness=1/8 in..1 in:5"',
      'try --vary "top.edgeThickness=',
    ],
  ),
  file('no such file', 'none.json', ['--params "FILES/none.json" cannot be read', 'there is no such file']),
  file('folder as a file', '.', ['cannot be read', 'it is a folder']),
  file('no JSON', 'comma.json', ['comma.json" is no JSON', 'line 3, column 1', 'try a file with {']),
  file('NaN in a file', 'nan.json', ['nan.json" is no JSON', "Unexpected token 'N'"]),
  file('null in a file', 'null.json', ['top.length is null; it must be a length, 16 in to 192 in', 'null.json']),
  file('negative number in a file', 'negative.json', [
    'top.width is -3 mm; it must be 254 mm to 1828.8 mm',
    'negative.json',
  ]),
  file('list instead of a record', 'list.json', ['the parameters cannot be a list', 'list.json']),
  file('path instead of a nested record', 'dotted.json', ['there is no parameter top.length', '{ top: { length']),
  file('group that is none', 'group.json', ['there is no group tops', 'did you mean top?']),
  file(
    'file and assignment both wrong',
    'none.json',
    ['cannot be read', '"top" is no assignment', '2 problems'],
    '--set',
    'top',
  ),
];

/** The files that the table names. */
export const PARAMS_FILES: Readonly<Record<string, string>> = {
  'comma.json': '{\n  "top": { "length": "72 in" },\n}\n',
  'nan.json': '{ "top": { "length": NaN } }\n',
  'null.json': '{ "top": { "length": null } }\n',
  'negative.json': '{ "top": { "width": -3 } }\n',
  'list.json': '["72 in"]\n',
  'dotted.json': '{ "top.length": "72 in" }\n',
  'group.json': '{ "tops": { "length": "72 in" } }\n',
};
