import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { putBadDesigns } from './bad-designs.ts';
import { type BadInput, firstMissing } from './bad-input.ts';
import { BAD_LINES } from './bad-lines.ts';
import { BAD_PLACES } from './bad-places.ts';
import { BAD_VALUES, PARAMS_FILES } from './bad-values.ts';
import { run } from './run-cli.ts';
import { contents, put, tempFolder } from './temp-folder.ts';

const folder = tempFolder();
const out = path.join(folder, 'out');
const files = path.join(folder, 'files');

const placed = (text: string): string => text.replace(/\bOUT\b/g, out).replace(/\bFILES\b/g, files);

/** A stack is only for faults of the library. */
const STACK = /^ +at .+:\d+:\d+\)?$/m;

/** All that stands in the folders before anything wrong is tried. */
let before: readonly string[] = [];

beforeAll(async () => {
  putBadDesigns(files);
  for (const [name, text] of Object.entries(PARAMS_FILES)) put(files, name, text);
  const built = await run(['build', 'reading-table', '--only', 'lists,stl', '--out', out]);
  expect(built.code, built.err).toBe(0);
  before = contents(folder);
  expect(before.length).toBeGreaterThan(20);
});

async function refuses({ args, exit = 2, says }: BadInput): Promise<void> {
  const ended = await run(args.map(placed));
  expect(firstMissing(ended.err, says.map(placed)), ended.err).toBeUndefined();
  expect(ended.code, ended.err).toBe(exit);
  expect(STACK.test(ended.err)).toBe(exit === 70);
  if (args[0] === 'build') expect(ended.out).toBe('');
  expect(contents(folder)).toEqual(before);
}

describe.concurrent('wrong command lines', () => {
  test.each(BAD_LINES)('$name', refuses);
});

describe.concurrent('wrong values', () => {
  test.each(BAD_VALUES)('$name', refuses);
});

describe.concurrent('wrong designs and folders', () => {
  test.each(BAD_PLACES)('$name', refuses);
});

test('there are enough of them, and none twice', () => {
  const names = [...BAD_LINES, ...BAD_VALUES, ...BAD_PLACES].map(({ name }) => name);
  expect(names.length).toBeGreaterThan(60);
  expect(new Set(names).size).toBe(names.length);
});

test('a part that is missing, or out of order, is seen', () => {
  expect(firstMissing('one two', ['one', 'two'])).toBeUndefined();
  expect(firstMissing('one two', ['two', 'one'])).toBe('one');
  expect(firstMissing('one two', ['three'])).toBe('three');
});
