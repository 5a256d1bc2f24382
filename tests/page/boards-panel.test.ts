import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import reading from '../../designs/reading-table/design.ts';
import type { Assets } from '../../lib/build/assets.ts';
import type { Design } from '../../lib/build/design.ts';
import { type Job, makeJob } from '../../lib/build/job.ts';
import { FULL_WORK, lumberPlan } from '../../lib/build/lumber-plan.ts';
import { benchFile } from '../../lib/build/output-bench.ts';
import { searchStrips } from '../../lib/build/search-strips.ts';
import { stripPlanTable } from '../../lib/build/strip-plan-table.ts';
import { stripProblemOf } from '../../lib/build/strip-problem-of.ts';
import { stripsAsPlanned } from '../../lib/build/strips-as-planned.ts';
import { openBoardsDesk } from '../../lib/page/worker/ask-boards.ts';
import type { BoardsAnswer, BoardsQuestion } from '../../lib/page/worker/messages.ts';
import { serveBoards } from '../../lib/page/worker/serve-boards.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { bundleBench } from '../../scripts/page/bench-bundle.ts';
import { tempFolder } from '../cli/temp-folder.ts';
import { readingWithBoards } from '../lumber/reading-boards.ts';
import { designFile } from './bench-page.ts';
import { hasBrowser, launchBrowser } from './browser.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const job = readingWithBoards();
const design = reading as unknown as Design;

/** The same pile under other values. */
function jobWith(at: string, text: string): Job {
  const { values } = readValues(design.params, design.values, [{ path: at, text, from: '' }]);
  return makeJob(design, values!, job.shop, job.records);
}

const question = ({ values, shop, records }: Job, serial: number): BoardsQuestion => {
  return { serial, about: 'boards', values, units: 'in', shop, records };
};

/** All answers until the question with this number is done. */
const answersTo = (last: number, ...jobs: readonly Job[]): Promise<BoardsAnswer[]> =>
  new Promise((go) => {
    const answers: BoardsAnswer[] = [];
    const server = serveBoards(design, (answer) => {
      answers.push(answer);
      const next = answer.serial < last ? jobs[answer.serial] : undefined;
      if (next) server.ask(question(next, answer.serial + 1));
      if (answer.serial === last && answer.kind === 'done') go(answers);
    });
    server.ask(question(jobs[0]!, 1));
  });

describe('boards by turns', () => {
  it('come to the plan of the papers', async () => {
    const last = (await answersTo(1, job)).at(-1)!;
    const { status, problem } = (await lumberPlan(job, FULL_WORK)).strips!;
    const { told } = last as Extract<BoardsAnswer, { kind: 'done' }>;
    const papers = stripPlanTable(status.plan!, 'in');
    const column = (table: typeof papers, head: string): string[] => {
      const at = table.columns.findIndex((one) => one.head === head);
      return table.rows.map((cells) => cells[at]!);
    };
    for (const { head } of papers.columns) expect(column(told!.table!, head)).toEqual(column(papers, head));
    expect(told!.table!.columns.slice(0, 3).map(({ head }) => head)).toEqual(['strip', 'board', 'face up']);
    expect(told!.lines.at(-1)).toMatch(/^the strips alone: .* the papers keep boards for them/);
    expect(told!.lines[0]).toMatch(/^cost \d+\.?\d*; best possible$/);
    expect(`top.strips=${told!.joints!.text}`).toBe(stripsAsPlanned(status.plan!, problem, 'in'));
  });

  it('stop for a later question, and answer that one', async () => {
    const answers = await answersTo(2, job, jobWith('top.edgeThickness', '1 1/4 in'));
    expect(answers.filter(({ serial, kind }) => serial === 1 && kind === 'done')).toEqual([]);
    expect(answers.at(-1)).toMatchObject({ serial: 2, kind: 'done' });
  });

  it('tell what would mend a top that is too thick for them', async () => {
    const answers = await answersTo(1, jobWith('top.thickness', '3 in'));
    expect(answers.map(({ kind }) => kind)).toEqual(['mending', 'done']);
    const { told } = answers[1] as Extract<BoardsAnswer, { kind: 'done' }>;
    expect(told!.table).toBeUndefined();
    const words = told!.lines.join(' ');
    expect(words).toContain('boards are thick enough for the center line');
    expect(words).toContain('any one of these would do: ');
  });

  it('have one worker, and are not heard once something else was asked or is about to be', () => {
    const asked: BoardsQuestion[] = [];
    const started: { onmessage?: (event: { data: BoardsAnswer }) => void }[] = [];
    vi.stubGlobal(
      'Worker',
      class {
        onmessage?: (event: { data: BoardsAnswer }) => void;
        constructor() {
          started.push(this);
        }
        postMessage(question: BoardsQuestion): void {
          asked.push(question);
        }
      },
    );
    const heard: string[] = [];
    const desk = openBoardsDesk('');
    const { serial: _, about: __, ...plain } = question(job, 0);
    const ask = (name: string): void => desk.ask(plain, ({ kind }) => heard.push(`${name} ${kind}`));
    const answer = (at: number, kind: 'searching' | 'mending' | 'done'): void =>
      started[0]!.onmessage!({ data: { serial: asked[at]!.serial, kind } });
    ask('first');
    answer(0, 'searching');
    ask('second');
    answer(0, 'searching');
    answer(1, 'mending');
    desk.forget();
    answer(1, 'done');
    ask('third');
    answer(2, 'done');
    vi.unstubAllGlobals();
    expect(started).toHaveLength(1);
    expect(heard).toEqual(['first searching', 'second mending', 'third done']);
  });

  it('say so where no worker starts', () => {
    const heard: BoardsAnswer[] = [];
    const { serial: _, about: __, ...plain } = question(job, 0);
    openBoardsDesk('').ask(plain, (answer) => heard.push(answer));
    expect(heard).toMatchObject([{ kind: 'failed', because: 'this browser lets no worker start' }]);
  });
});

const folder = tempFolder();
const fileOf = (name: string): string => path.join(folder, `${name}.html`);
let browser: Browser;
const noticed: string[] = [];

if (!hasBrowser)
  console.warn('Left out: the boards of the live page in a browser (on Debian: apt-get install chromium).');

describe.skipIf(!hasBrowser)('the panel of boards', () => {
  beforeAll(async () => {
    const pages = { client: '', bench: await bundleBench(designFile('reading-table')) };
    const { records: _, ...bare } = job;
    for (const [name, one] of [
      ['boards', job],
      ['none', { ...bare, records: {} }],
    ] as const) {
      writeFileSync(fileOf(name), benchFile(one as Job, { pages } as unknown as Assets).get('bench.html')!);
    }
    browser = (await launchBrowser())!;
  });
  afterAll(async () => {
    await browser?.close();
    expect(noticed).toEqual([]);
  });

  async function open(name: string, viewport = { width: 1280, height: 800 }): Promise<Page> {
    const page = await browser.newPage({ viewport });
    // The picture is not looked at here, and drawing it in software takes most of the time.
    await page.addInitScript(() => {
      for (const draw of ['drawElements', 'drawArrays'] as const) WebGL2RenderingContext.prototype[draw] = () => {};
    });
    page.on('pageerror', ({ message }) => noticed.push(message));
    page.on('console', (message) => message.type() === 'error' && noticed.push(message.text()));
    await page.goto(`file://${fileOf(name)}`);
    return page;
  }
  const says = (page: Page, text: string): Promise<unknown> =>
    page.waitForFunction((wanted) => document.querySelector('.boards .working')?.textContent === wanted, text);
  const set = async (page: Page, at: string, text: string): Promise<void> => {
    await page.locator(`#field-${at.replaceAll('.', '-')}`).fill(text);
    await page.keyboard.press('Enter');
  };
  const marks = (page: Page): Promise<string[]> => page.locator('.boards tbody tr td:nth-child(2)').allTextContents();
  const DONE = 'The strips of this top, from the left edge.';

  it('tells which board goes where, follows the sizes, and draws the piece with its joints', async () => {
    const page = await open('boards');
    await says(page, DONE);
    const planned = async (one: Job) =>
      (await searchStrips(stripProblemOf(one, one.records.boards!)!, FULL_WORK)).status.plan!;
    const marksOf = async (one: Job): Promise<string[]> => (await planned(one)).strips.map(({ show }) => show.mark);
    expect(await marks(page)).toEqual(await marksOf(job));
    await page.evaluate(AXE);
    const violations = await page.evaluate(async () => {
      const { axe } = globalThis as unknown as {
        axe: { run(at: string): Promise<{ violations: { id: string; impact: string }[] }> };
      };
      return (await axe.run('.boards')).violations.filter(({ impact }) => ['serious', 'critical'].includes(impact));
    });
    expect(violations).toEqual([]);
    await set(page, 'top.width', '38 in');
    await says(page, 'Of the last piece; the strips are being planned again.');
    await says(page, DONE);
    const narrower = jobWith('top.width', '38 in');
    expect(await marks(page)).toEqual(await marksOf(narrower));
    await page.getByRole('button', { name: 'draw the piece with them' }).click();
    await says(page, DONE);
    const strips = stripsAsPlanned(await planned(narrower), stripProblemOf(narrower, narrower.records.boards!)!, 'in');
    expect(`top.strips=${await page.locator('#field-top-strips').inputValue()}`).toBe(strips);
    await page.waitForFunction(() => !document.querySelector('.boards button'));
    expect(await marks(page)).toEqual(await marksOf(narrower));
    await page.context().close();
  });

  it('tells what would mend it when there is no plan, and leaves off when a value changes', async () => {
    const page = await open('boards', { width: 390, height: 844 });
    await set(page, 'top.thickness', '3 in');
    await says(page, 'No plan; what would mend that is being looked for.');
    await set(page, 'top.thickness', '2 1/4 in');
    await says(page, DONE);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await set(page, 'top.thickness', '3 in');
    await says(page, 'These boards do not make this top.');
    expect(await page.locator('.boards').textContent()).toContain('boards are thick enough for the center line');
    await page.context().close();
  });

  it('is not there without boards beside the design', async () => {
    const page = await open('none');
    await page.waitForSelector('.scene[data-drawn]');
    expect(await page.locator('.boards').count()).toBe(0);
    expect(page.workers()).toHaveLength(1);
    await page.context().close();
  });
});
