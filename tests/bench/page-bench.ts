import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import design from '../../designs/reading-table/design.ts';
import { tableText } from '../../lib/writers/table-text.ts';
import { benchPageOf } from '../page/bench-page.ts';
import { launchBrowser } from '../page/browser.ts';
import { ms } from './clock.ts';

/** One parameter that is dragged, and the texts it passes. */
const DRAGS: readonly (readonly [what: string, path: string, texts: readonly string[]])[] = [
  ['edge thickness: every strip and both frames', 'top.edgeThickness', sixtyFourths(64, 140)],
  ['length of the top: every strip, the stretcher', 'top.length', sixtyFourths(80 * 64, 76 * 64 + 200)],
  ['foot: two feet', 'foot.length', sixtyFourths(28 * 64, 28 * 64 + 200)],
  ['height: the posts', 'table.height', sixtyFourths(28 * 64, 28 * 64 + 200)],
  ['profile of the arris: the top alone', 'top.showEdgeSize', sixtyFourths(4, 40)],
];

const ROUNDS = 200;

/** ms between two changes, as a hand drags. */
const REST = 30;

/** Meshes are made and handed over as ever, but not drawn: a renderer in software takes both cores for each picture. */
const UNDRAWN = `for (const draw of ['drawElements', 'drawArrays']) WebGL2RenderingContext.prototype[draw] = () => {};`;

/** The live page of the demo in a real browser: from a changed value to its meshes in the scene. */
export async function pageBench(): Promise<string> {
  const folder = mkdtempSync(path.join(tmpdir(), 'tablewright-'));
  const browser = await launchBrowser();
  if (!browser) return 'live page: left out, there is no Chromium (on Debian: apt-get install chromium)';
  try {
    const file = path.join(folder, 'bench.html');
    const html = await benchPageOf('reading-table', design);
    writeFileSync(file, html);
    const viewport = { width: 1280, height: 800 };
    const first = await opened(await browser.newPage({ viewport }), file);
    const page = await browser.newPage({ viewport });
    await page.addInitScript(UNDRAWN);
    await page.goto(`file://${file}`);
    await page.waitForSelector('.scene[data-drawn]');
    const rows = [];
    const all: number[] = [];
    for (const [what, at, texts] of DRAGS) {
      const times = await dragged(page, at, texts, Math.ceil(ROUNDS / DRAGS.length) * 2);
      const warm = times.slice(times.length / 2);
      all.push(...warm);
      rows.push([what, ...spread(warm)]);
    }
    rows.push([`all ${all.length}`, ...spread(all)]);
    const right = (head: string) => ({ head, align: 'right' as const });
    const table = tableText(
      [{ head: 'a value changes: its meshes are in the scene' }, right('least'), right('median'), right('95 %')],
      rows,
    );
    const size = `bench.html ${(html.length / 1024).toFixed(0)} KB; first picture, drawn in software, after ${ms(first)}`;
    return `live page\n${table}\n${size}`;
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true });
  }
}

function sixtyFourths(from: number, to: number): string[] {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  return Array.from({ length: high - low }, (_, k) => `${(low + k) / 64} in`);
}

/** ms from the start of the navigation to the first drawn picture. */
async function opened(page: Page, file: string): Promise<number> {
  await page.goto(`file://${file}`);
  await page.waitForSelector('.scene[data-drawn]');
  return page.evaluate('performance.now()');
}

/** Sets one text after the other, ms of work from each change to its meshes. */
function dragged(page: Page, at: string, texts: readonly string[], rounds: number): Promise<number[]> {
  const id = `field-${at.replaceAll('.', '-')}`;
  return page.evaluate(`(async (id, texts, rounds, rest) => {
    const input = document.getElementById(id);
    const times = [];
    for (let k = 0; k < rounds; k++) {
      const start = performance.now();
      const shown = new Promise((go) => document.addEventListener('shown', (e) => go(e.detail), { once: true }));
      input.value = texts[k % texts.length];
      input.dispatchEvent(new Event('change'));
      const reading = performance.now() - start;
      times.push(reading + (await shown));
      await new Promise((go) => setTimeout(go, rest));
    }
    return times;
  })(${JSON.stringify(id)}, ${JSON.stringify(texts)}, ${rounds}, ${REST})`);
}

function spread(times: readonly number[]): string[] {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share: number): string => ms(sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!);
  return [ms(sorted[0]!), at(0.5), at(0.95)];
}
