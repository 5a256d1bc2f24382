import { describe, expect, test } from 'vitest';
import { parseAssignment } from '../../lib/params/assignment.ts';
import type { Issue, IssueCode } from '../../lib/params/issue.ts';
import { readVariation } from '../../lib/params/read-variation.ts';
import { renderIssue, renderIssues } from '../../lib/params/render-issue.ts';
import { read, refusal, spec } from './sample-spec.ts';

/** The first issue of one input. */
function first(given: unknown, ...args: readonly string[]): Issue {
  const issue = read(given, ...args).issues?.[0];
  if (!issue) throw new Error('nothing is wrong');
  return issue;
}

/** The first issue of a parameter tried over values that cannot be read. */
function varied(path: string, text: string): Issue {
  const from = `--vary "${path}=${text}"`;
  return readVariation(spec.table.get(path)!, { path, text, from }, undefined).issues![0]!;
}

const TABLE = { given: '', from: 'stations.csv', unit: '', via: 'table' } as const;

/** One input for every code, and its text: a code without an entry does not compile. */
const TEXTS: { readonly [K in IssueCode]: readonly [Issue, string] } = {
  'not-an-assignment': [
    parseAssignment('top.length 72 in').issue!,
    `error: "top.length 72 in" is no assignment; write path=value
       there is no = in it`,
  ],
  unknown: [
    first({}, 'top.edgeThicknes=3 mm'),
    `error: there is no parameter top.edgeThicknes
       did you mean top.edgeThickness?`,
  ],
  'unknown-group': [
    first({ tops: { length: 2000 } }),
    `error: there is no group tops
       did you mean top?`,
  ],
  'group-as-parameter': [
    first({}, 'top=3 mm'),
    `error: top is a group of parameters; it cannot be 3 mm
       it has length, thickness, edgeThickness, strips, layers and wood
       given by --set "top=3 mm"`,
  ],
  'parameter-as-group': [
    first({ top: { length: { value: 3 } } }),
    `error: top.length is a parameter, not a group; there is nothing below it
       given by the design file`,
  ],
  repeated: [
    first({}, 'top.length=70 in', 'top.length=72 in'),
    `error: top.length is given more than once: 70 in and 72 in
       given by --set "top.length=70 in" and --set "top.length=72 in"`,
  ],
  'wrong-type': [
    first({ top: { thickness: null } }),
    `error: top.thickness is null; it must be a length, 3/4 in to 4 in
       given by the design file
       try --set "top.thickness=2 1/4 in"`,
  ],
  unreadable: [
    first({}, 'top.thickness=1/0 in'),
    `error: top.thickness is "1/0 in"; it must be a length, 3/4 in to 4 in
       a fraction cannot have 0 below
       given by --set "top.thickness=1/0 in"
       try --set "top.thickness=2 1/4 in"`,
  ],
  'no-unit': [
    first({}, 'top.edgeThickness=19'),
    `error: top.edgeThickness is "19", without a unit; write 19 mm or 19 in
       given by --set "top.edgeThickness=19"
       try --set "top.edgeThickness=19 mm"`,
  ],
  'not-whole': [
    first({ top: { layers: 2.5 } }),
    `error: top.layers is 2.5; it must be a whole number, 1 to 3
       given by the design file
       try --set "top.layers=3"`,
  ],
  'out-of-range': [
    first({}, 'top.length=150 in'),
    `error: top.length is 150 in; it must be 24 in to 144 in
       given by --set "top.length=150 in"
       try --set "top.length=143 in"`,
  ],
  'wrong-size': [
    first({ base: { rail: { offsets: [30, 40, 50, 60, 70] } } }),
    `error: base.rail.offsets has 5 entries; it must have 0 to 4
       given by the design file
       try --set "base.rail.offsets=10 in, 20 in"`,
  ],
  'not-an-option': [
    first({}, 'top.wood=chery'),
    `error: top.wood is "chery"; it must be cherry, walnut or white oak
       did you mean cherry?
       given by --set "top.wood=chery"
       try --set "top.wood=cherry"`,
  ],
  'text-too-long': [
    first({ note: 'x'.repeat(81) }),
    `error: note has 81 characters; it may have 80
       given by the design file`,
  ],
  'control-character': [
    first({}, 'note=a\nb'),
    `error: note is "a\\nb"; it must be one line without control characters
       character 2 is one
       given by --set "note=a\\nb"`,
  ],
  rule: [
    first({}, 'base.rail.offsets=10 in, 50 in'),
    `error: base.rail.offsets is 10 in, 50 in; that does not go with the rest
       50 in is past the middle, 42 in
       given by --set "base.rail.offsets=10 in, 50 in"
       try --set "base.rail.offsets="`,
  ],
  'not-a-range': [
    varied('top.layers', '3..'),
    `error: top.layers cannot be tried over "3.."; it must be from..to, from..to:how many, or values with commas between
       each value is a whole number, 1 to 3
       nothing stands behind the two dots
       given by --vary "top.layers=3.."`,
  ],
  'cannot-vary': [
    varied('note', 'a,b'),
    `error: note cannot be tried over a range
       it is a text; lengths, numbers, choices and yes or no can be tried
       given by --vary "note=a,b"`,
  ],
  'unknown-column': [
    { ...TABLE, code: 'unknown-column', path: 'acros', given: 'acros', didYouMean: 'across' },
    `error: there is no column "acros"
       did you mean across?
       given by stations.csv`,
  ],
  'missing-column': [
    { ...TABLE, code: 'missing-column', path: 'along', because: 'the first row names the columns' },
    `error: the column along is missing
       the first row names the columns
       given by stations.csv`,
  ],
  'broken-table': [
    { ...TABLE, code: 'broken-table', path: 'line 3', because: 'a quote is opened and never closed' },
    `error: line 3 cannot be read
       a quote is opened and never closed
       given by stations.csv`,
  ],
  'no-fit': [
    { ...TABLE, code: 'no-fit', path: 'the left half', because: 'there are 2', try: 'more readings' },
    `error: no plane can be laid through the readings of the left half
       there are 2
       given by stations.csv
       try more readings`,
  ],
};

test.each(Object.entries(TEXTS))('%s', (code, [issue, text]) => {
  expect(issue.code).toBe(code);
  expect(renderIssue(issue, 'in')).toBe(text);
});

test('the limits of a parameter and of a rule make one sentence; unknown names come last', () => {
  expect(refusal({ top: { thickness: 25.4 } }, 'top.edgeThicknes=1 in', 'top.edgeThickness=3 mm')).toBe(
    `error: top.edgeThickness is 3 mm; it must be 6 mm to 25.4 mm
       the upper limit is top.thickness; under 6 mm an edge chips in use
       given by --set "top.edgeThickness=3 mm"
       try --set "top.edgeThickness=8 mm"

error: there is no parameter top.edgeThicknes
       did you mean top.edgeThickness?

2 problems; nothing was written`,
  );
});

describe('limits', () => {
  test('speak the unit of the input, rounded inward', () => {
    expect(refusal({}, 'top.edgeThickness=1/8 in')).toBe(
      `error: top.edgeThickness is 1/8 in; it must be 1/4 in to 2 1/4 in
       the upper limit is top.thickness; under 6 mm an edge chips in use
       given by --set "top.edgeThickness=1/8 in"
       try --set "top.edgeThickness=1/2 in"

1 problem; nothing was written`,
    );
    expect(refusal({}, 'top.edgeThickness=0.5 cm')).toContain('is 0.5 cm; it must be 6 mm to 57.15 mm');
    expect(refusal({ top: { edgeThickness: 5 } })).toContain('is 5 mm; it must be 6 mm to 57.15 mm');
  });

  test('speak the asked unit when the input has none', () => {
    const issue = first({ top: { thickness: Number.NaN } });
    expect(renderIssue(issue, 'in')).toContain('is NaN; it must be a length, 3/4 in to 4 in');
    expect(renderIssue(issue, 'mm')).toContain('is NaN; it must be a length, 19.05 mm to 101.6 mm');
  });

  test('closer together than a 64th stay exact', () => {
    const issue: Issue = { code: 'out-of-range', path: 'a', given: '1 in', from: 'x', unit: 'in', min: 6, max: 6.1 };
    expect(renderIssue(issue, 'in')).toContain('it must be 6 mm to 6.1 mm');
    expect(renderIssue({ ...issue, min: 6, max: 6 }, 'in')).toContain('it must be 6 mm\n');
  });

  test('may be on one side only', () => {
    const issue: Issue = { code: 'out-of-range', path: 'a', given: '1 in', from: 'x', unit: 'in', min: 76.2 };
    expect(renderIssue(issue, 'in')).toContain('it must be at least 3 in\n');
    expect(renderIssue({ ...issue, min: undefined, max: 76.2 }, 'in')).toContain('it must be at most 3 in\n');
  });

  test('of plain numbers carry their unit', () => {
    expect(refusal({ moisture: 25 })).toBe(
      `error: moisture is 25 %; it must be 4 % to 20 %
       given by the design file
       try --set "moisture=20 %"

1 problem; nothing was written`,
    );
  });
});

test('a default that no longer fits names what stands beside it', () => {
  expect(refusal({ top: { thickness: '3/4 in' } })).toBe(
    `error: top.edgeThickness is 1 1/8 in; it must be 1/4 in to 3/4 in
       the upper limit is top.thickness; under 6 mm an edge chips in use
       given by the default, beside the design file
       try --set "top.edgeThickness=3/4 in"

1 problem; nothing was written`,
  );
});

test('each bad entry of a list is a problem, and one list mends all', () => {
  expect(refusal({}, 'top.strips=5, 13 in, 6 in')).toBe(
    `error: top.strips, entry 1, is "5", without a unit; write 5 mm or 5 in
       given by --set "top.strips=5, 13 in, 6 in"
       try --set "top.strips=5 in, 11 in, 6 in"

error: top.strips, entry 2, is 13 in; it must be 1 in to 12 in
       given by --set "top.strips=5, 13 in, 6 in"
       try --set "top.strips=5 in, 11 in, 6 in"

2 problems; nothing was written`,
  );
});

test('a name with nothing near it is answered with the names there are', () => {
  expect(refusal({ base: { rail: { xyz: 3 } } })).toContain(
    `error: there is no parameter base.rail.xyz
       there is only base.rail.offsets`,
  );
  expect(refusal({}, 'zzzz=3')).toContain(
    `error: there is no parameter zzzz
       there are top, base, moisture and note`,
  );
});

test('a dotted name in a record is told how to nest', () => {
  expect(refusal({ 'top.length': 2000 })).toContain(
    `error: there is no parameter top.length
       in the design file it is nested: { top: { length: … } }`,
  );
});

test.each([null, 3, 'text', [], Number.NaN, () => 1])('parameters that are no record at all: %s', (given) => {
  expect(refusal(given)).toMatch(/^error: the parameters cannot be .*; they must be a record\n {7}it has top, base,/);
});

test('what is quoted stays on one line and of bearable length', () => {
  const long = refusal({}, `top.thickness=${'9'.repeat(5000)}`, `top.${'x'.repeat(500)}=3`, 'a\u001b[31m\nb=3');
  const [unreadable, , unknown, strange] = long.split('\n\n').flatMap((block) => block.split('\n')[0]);
  expect(unreadable!.length).toBeLessThan(150);
  expect([unknown, strange].join('\n')).not.toContain('\u001b');
  expect(long).toContain('error: there is no parameter "a\\u001b[31m\\nb"');
});

test('how it ended can be said in other words', () => {
  expect(renderIssues([], 'in')).toBe('0 problems; nothing was written');
  expect(renderIssues([first({}, 'top=1')], 'in', 'the design is as it was')).toMatch(
    /\n\n1 problem; the design is as/,
  );
});
