import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { openOutFolder } from '../../scripts/output/out-folder.ts';
import { writeProblem } from '../../scripts/output/write-problem.ts';
import { contents, put, tempFolder } from './temp-folder.ts';

const temp = tempFolder();

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** A process id that nobody has any more. */
const DEAD = spawnSync(process.execPath, ['-e', '']).pid;

/** A finished folder "desk" with one file. */
function finished(out: string): string {
  const folder = openOutFolder(out, 'desk');
  folder.write('solids/t.stl', bytes('old'));
  folder.swapIn();
  return folder.target;
}

function problemOf(action: () => void, target = '/out/desk') {
  try {
    action();
  } catch (error) {
    return writeProblem(error, target);
  }
  return undefined;
}

test.each(['../x', 'a/../../x', '/etc/x', '', 'a//b', './x', 'a\\..\\x', 'c:x', 'a\0b'])(
  '%j leads out of the folder',
  (file) => {
    const out = path.join(temp, 'outside');
    const folder = openOutFolder(out, 'desk');
    expect(problemOf(() => folder.write(file, bytes('x')))?.code).toBe('outside');
    expect(contents(out)).toEqual([]);
  },
);

test('nothing shows before the swap, and nothing of the old is left after it', () => {
  const out = path.join(temp, 'swap');
  const target = finished(out);
  const next = openOutFolder(out, 'desk');
  next.write('lists/a.csv', bytes('new'));
  expect(readFileSync(path.join(target, 'solids/t.stl'), 'utf8')).toBe('old');
  expect(existsSync(path.join(target, 'lists'))).toBe(false);
  next.swapIn();
  expect(existsSync(path.join(target, 'solids'))).toBe(false);
  expect(readFileSync(path.join(target, 'lists/a.csv'), 'utf8')).toBe('new');
  expect(contents(out).map((line) => line.split(' ')[0])).toEqual([
    'desk',
    'desk/.made-by-build',
    'desk/lists',
    'desk/lists/a.csv',
  ]);
});

test('a file of somebody else keeps the folder from being replaced', () => {
  const out = path.join(temp, 'stranger');
  const target = finished(out);
  put(target, 'notes/mine.txt', 'oak from the barn');
  const before = contents(target);
  const next = openOutFolder(out, 'desk');
  next.write('lists/a.csv', bytes('new'));
  const problem = problemOf(() => next.swapIn(), target);
  next.discard();
  expect(problem).toMatchObject({ code: 'not-ours', given: `${target}/notes/mine.txt` });
  expect(contents(out).filter((line) => !line.startsWith('desk'))).toEqual([]);
  expect(contents(target)).toEqual(before);
});

test('a folder without the list of its files is replaced when the build makes all of them', () => {
  const out = path.join(temp, 'unlisted');
  const target = finished(out);
  rmSync(path.join(target, '.made-by-build'));
  const next = openOutFolder(out, 'desk');
  next.write('solids/t.stl', bytes('new'));
  next.swapIn();
  expect(readFileSync(path.join(target, 'solids/t.stl'), 'utf8')).toBe('new');
});

test('leftovers of dead builds go, those of living ones stay', () => {
  const out = path.join(temp, 'leftovers');
  const target = finished(out);
  const before = contents(target);
  mkdirSync(path.join(out, `.desk.${DEAD}.partial/solids`), { recursive: true });
  mkdirSync(path.join(out, `.bench.${DEAD}.old`));
  mkdirSync(path.join(out, `.desk.${process.ppid}.partial`));
  put(out, `.bench.${DEAD}.txt`, 'not ours');
  renameSync(path.join(out, `.bench.${DEAD}.old`), path.join(out, `.desk.${DEAD}.old`));
  openOutFolder(out, 'desk');
  const names = new Set(contents(out).map((line) => line.split(/[ /]/)[0]));
  expect([...names]).toEqual([`.bench.${DEAD}.txt`, `.desk.${process.ppid}.partial`, 'desk'].toSorted());
  expect(contents(target)).toEqual(before);
});

test('a folder that was just being replaced when the build was killed comes back', () => {
  const out = path.join(temp, 'between');
  const target = finished(out);
  const before = contents(target);
  renameSync(target, path.join(out, `.desk.${DEAD}.old`));
  openOutFolder(out, 'desk');
  expect(contents(target)).toEqual(before);
});
