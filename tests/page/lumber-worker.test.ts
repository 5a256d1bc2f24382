import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { createRequire } from 'node:module';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { FULL_WORK, type LumberPlan } from '../../lib/build/lumber-plan.ts';
import { checkCutPlan } from '../../lib/derive/lumber/cut-plan/check-cut-plan.ts';
import { cutPlanOf } from '../../lib/derive/lumber/cut-plan/plan-cuts.ts';
import { loadSolver } from '../../lib/derive/lumber/master.ts';
import { checkStripPlan } from '../../lib/derive/lumber/strip-plan/check-strip-plan.ts';
import { pageScript } from '../../scripts/page/page-script.ts';
import { drawnProblem } from '../lumber/cut-plan/drawn-problem.ts';
import { readingWithBoards } from '../lumber/reading-boards.ts';
import { hasBrowser, launchBrowser } from './browser.ts';
import { type LumberAnswer, type LumberQuestion, readingLumber } from './lumber-in-worker.ts';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const WASM = createRequire(import.meta.url).resolve('highs/runtime');
const BOARDS = readingWithBoards().records.boards!;

let browser: Browser;
let server: Server;
let page: Page;
const asked: string[] = [];

/** Asks a worker of its own; `stopAfter` so many reports of progress it is told to stop. */
const ask = (question: LumberQuestion, stopAfter = Infinity): Promise<string> =>
  page.evaluate(
    ([asked, reports]) =>
      new Promise<string>((resolve, reject) => {
        const worker = new Worker('/worker.js');
        let left = reports;
        worker.onerror = ({ message }) => reject(new Error(message));
        worker.onmessage = ({ data }: MessageEvent<LumberAnswer>) => {
          if (data.progress !== undefined && --left === 0) worker.postMessage({ kind: 'stop' });
          if (data.failed !== undefined) reject(new Error(data.failed));
          if (data.found === undefined) return;
          worker.terminate();
          resolve(data.found);
        };
        worker.postMessage(asked);
      }),
    [question, stopAfter] as const,
  );

if (!hasBrowser) console.warn('Left out: the lumber plan in a worker (on Debian: apt-get install chromium).');

describe.skipIf(!hasBrowser)('the lumber plan in a worker of a browser', () => {
  beforeAll(async () => {
    const script = await pageScript({
      entryPoints: [here('lumber-in-worker.ts')],
      alias: { tablewright: here('../../lib/index.ts') },
      external: ['node:*'],
      define: { 'import.meta.url': 'globalThis.location.href' },
    });
    const files: Readonly<Record<string, readonly [type: string, content: string | Uint8Array]>> = {
      '/': ['text/html', '<!DOCTYPE html><title>worker</title><link rel="icon" href="data:,">'],
      '/worker.js': ['text/javascript', script],
      '/highs.wasm': ['application/wasm', readFileSync(WASM)],
      '/elsewhere/solver.bin': ['application/wasm', readFileSync(WASM)],
    };
    server = createServer(({ url = '' }, response) => {
      asked.push(url);
      const [type, content] = files[url] ?? ['text/plain', ''];
      response.writeHead(files[url] ? 200 : 404, { 'content-type': type }).end(content);
    });
    await new Promise<void>((go) => server.listen(0, '127.0.0.1', go));
    browser = (await launchBrowser())!;
    page = await browser.newPage();
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  });
  afterAll(async () => {
    await browser?.close();
    server?.close();
  });

  it('is the plan of Node byte for byte: strips, cuts, bounds and steps', async () => {
    const { strips, cuts } = FULL_WORK;
    const [there, own] = [
      await ask({ kind: 'lumber', boards: BOARDS, strips, cuts }),
      await readingLumber(BOARDS, FULL_WORK),
    ];
    expect(there).toBe(JSON.stringify(own));
    expect(own.strips!.status.plan).toBeDefined();
    expect(own.cuts.map(({ progress }) => progress.state)).toContain('optimal');
  });

  it('stopped in the middle, is the best so far, with a bound that holds', async () => {
    const { strips, cuts } = FULL_WORK;
    const best = (await readingLumber(BOARDS, FULL_WORK)).strips!.status.plan!.value;
    const found: LumberPlan = JSON.parse(await ask({ kind: 'lumber', boards: BOARDS, strips, cuts }, 2));
    const { problem, status, stopped } = found.strips!;
    expect([found.stopped, stopped, status.done]).toEqual([true, true, false]);
    expect(status.work).toBeLessThan(0.9 * strips);
    expect(checkStripPlan(problem, status.plan!)).toEqual([]);
    expect(status.bound).toBeLessThanOrEqual(best + 1e-9);
    expect(status.plan!.value).toBeGreaterThanOrEqual(best - 1e-9);
    expect(found.cuts).toEqual([]);
  });

  it('takes its solver from another address, or from bytes', async () => {
    const problem = drawnProblem(30, 9, 2);
    const own = cutPlanOf(problem, await loadSolver(), 60);
    expect(checkCutPlan(problem, own.plan!)).toEqual([]);
    const before = asked.length;
    for (const solver of [{ address: '/elsewhere/solver.bin' }, { fetched: '/elsewhere/solver.bin' }]) {
      expect(await ask({ kind: 'cuts', problem, steps: 60, solver })).toBe(JSON.stringify(own));
    }
    expect([...new Set(asked.slice(before))].sort()).toEqual(['/elsewhere/solver.bin', '/worker.js']);
  });
});
