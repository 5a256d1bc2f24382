import { expect, test } from 'vitest';
import { parseAssignment, setOption } from '../../lib/params/assignment.ts';

test.each([
  ['top.length=72 in', 'top.length', '72 in'],
  [' top.length = 72 in ', 'top.length', ' 72 in '],
  ['note=a=b', 'note', 'a=b'],
  ['note=', 'note', ''],
])('%j is split at the first =', (argument, path, text) => {
  expect(parseAssignment(argument).override).toMatchObject({ path, text });
});

test.each([
  ['top.length 72 in', 'there is no = in it'],
  ['', 'there is no = in it'],
  ['=72 in', 'there is no path before the ='],
  ['  = 72 in', 'there is no path before the ='],
])('%j is no assignment', (argument, because) => {
  const { issue, override } = parseAssignment(argument);
  expect(override).toBeUndefined();
  expect(issue).toMatchObject({ code: 'not-an-assignment', path: '', given: argument, because });
});

test('remembers how it was given', () => {
  expect(parseAssignment('a=1 in').override?.from).toBe('--set "a=1 in"');
  expect(parseAssignment('a=1 in', '-s').override?.from).toBe('-s "a=1 in"');
});

test.each([
  ['72 in', '--set "a=72 in"'],
  ['72"', `--set 'a=72"'`],
  ["7'", `--set "a=7'"`],
  [`7' 2"`, `--set "a=7' 2\\""`],
  ['$HOME', "--set 'a=$HOME'"],
  ["it's $5", `--set "a=it's \\$5"`],
  ['a\nb', '--set "a=a\\nb"'],
])('%j is quoted as one would type it', (text, option) => {
  expect(setOption('a', text)).toBe(option);
});
