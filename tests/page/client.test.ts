import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { OUTPUTS } from '../../lib/build/outputs.ts';
import { bundleClient } from '../../scripts/page/client-bundle.ts';
import { jobOf } from '../written.ts';
import { hasBrowser, launchBrowser } from './browser.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;
const DESK = { viewport: { width: 1100, height: 760 } } as const;

const folder = mkdtempSync(join(tmpdir(), 'preview-'));
const file = join(folder, 'preview.html');
let browser: Browser;
let bytes: Uint8Array;

beforeAll(async () => {
  const output = OUTPUTS.find(({ name }) => name === 'preview')!;
  const files = await output.files(jobOf('reading-table'), {
    fonts: { regular: new Uint8Array(), bold: new Uint8Array() },
    pages: { client: await bundleClient(), bench: '' },
  });
  bytes = files.get('preview.html')!;
  writeFileSync(file, bytes);
  if (hasBrowser) browser = (await launchBrowser())!;
});

afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Opened {
  readonly page: Page;
  readonly asked: readonly string[];
  readonly said: readonly string[];
}

/** The page from its file, as one opens it from a mail. */
async function open(options: BrowserContextOptions, before = ''): Promise<Opened> {
  const context = await browser.newContext({ reducedMotion: 'reduce', ...options });
  const page = await context.newPage();
  const [asked, said]: [string[], string[]] = [[], []];
  page.on('request', (request) => asked.push(request.url()));
  page.on('console', (message) => ['error', 'warning'].includes(message.type()) && said.push(message.text()));
  page.on('pageerror', (error) => said.push(error.message));
  if (before !== '') await page.addInitScript(before);
  await page.goto(`file://${file}`);
  return { page, asked, said };
}

const drawn = (page: Page): Promise<number> =>
  page.locator('.scene').evaluate((scene) => Number((scene as HTMLElement).dataset['drawn'] ?? 0));

const drawnAfter = async (page: Page, count: number): Promise<void> => {
  await page.waitForFunction(
    (before) => Number(document.querySelector<HTMLElement>('.scene')?.dataset['drawn'] ?? 0) > before,
    count,
  );
};

const serious = async (page: Page): Promise<string[]> => {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const axe = (globalThis as unknown as { axe: { run(): Promise<{ violations: { id: string; impact: string }[] }> } })
      .axe;
    const { violations } = await axe.run();
    return violations.filter(({ impact }) => ['serious', 'critical'].includes(impact)).map(({ id }) => id);
  });
};

describe('the page for the client', () => {
  it('is small, and holds nothing of the shop', () => {
    expect(bytes.length).toBeLessThan(900_000);
    expect(gzipSync(bytes).length).toBeLessThan(250_000);
    const text = new TextDecoder().decode(bytes).replace(/<script>.*?<\/script>/gs, '');
    expect(text).not.toMatch(/price|wage|planer|look again|change it|[$€]\s?\d/i);
    expect(text).not.toMatch(/(?:src|href)="(?!data:,)|url\(|@import/);
  });
});

describe.skipIf(!hasBrowser)('in Chromium (left out where it is not installed)', () => {
  it('opens on a desk without a request or a complaint, and draws only on change', async () => {
    const { page, asked, said } = await open(DESK);
    await page.waitForSelector('.scene[data-drawn]');
    await page.waitForTimeout(300);
    const still = await drawn(page);
    await page.waitForTimeout(400);
    expect(await drawn(page)).toBe(still);
    expect(asked.filter((url) => !url.startsWith('file:') && !url.startsWith('data:'))).toEqual([]);
    expect(said).toEqual([]);
    expect(await serious(page)).toEqual([]);
    await page.context().close();
  });

  it('answers buttons, keys and units', async () => {
    const { page, said } = await open(DESK);
    await page.waitForSelector('.scene[data-drawn]');
    for (const view of ['end', 'underside', 'joints', 'whole']) {
      const before = await drawn(page);
      await page.click(`[data-view=${view}]`);
      await drawnAfter(page, before);
      expect(await page.getAttribute(`[data-view=${view}]`, 'aria-pressed')).toBe('true');
    }
    await page.click('[data-toggle=dimensions]');
    await page.waitForFunction(() => document.querySelector('.scene-labels')?.textContent?.includes('84 in'));
    await page.click('[data-unit=mm]');
    await page.waitForFunction(() => document.querySelector('.scene-labels')?.textContent?.includes('2134 mm'));
    expect(await page.locator('dd span:visible').first().textContent()).toBe('2134 mm');
    for (const toggle of ['seats', 'people']) await page.click(`[data-toggle=${toggle}]`);
    const before = await drawn(page);
    await page.focus('.scene');
    await page.keyboard.press('ArrowLeft');
    await drawnAfter(page, before);
    expect(await page.getAttribute('[data-view=whole]', 'aria-pressed')).toBe('false');
    await page.keyboard.press('2');
    expect(await page.getAttribute('[data-view=end]', 'aria-pressed')).toBe('true');
    expect(said).toEqual([]);
    await page.context().close();
  });

  it('fits a phone and turns under a finger', async () => {
    const { page, said } = await open(PHONE);
    await page.waitForSelector('.scene[data-drawn]');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    const before = await drawn(page);
    const { x, y } = (await page.locator('.scene').boundingBox())!;
    const touch = await page.context().newCDPSession(page);
    const finger = (type: 'touchStart' | 'touchMove', dx: number) =>
      touch.send('Input.dispatchTouchEvent', { type, touchPoints: [{ x: x + 150 + dx, y: y + 150 }] });
    await finger('touchStart', 0);
    await finger('touchMove', 60);
    await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await drawnAfter(page, before);
    expect(await page.getAttribute('[data-view=whole]', 'aria-pressed')).toBe('false');
    expect(await serious(page)).toEqual([]);
    expect(said).toEqual([]);
    await page.context().close();
  });

  it('is a page of still pictures without WebGL', async () => {
    const { page } = await open(DESK, 'HTMLCanvasElement.prototype.getContext = () => null;');
    await page.waitForSelector('body.flat');
    expect(await page.locator('.show').isVisible()).toBe(false);
    const stills = page.locator('.stills svg');
    expect(await stills.count()).toBe(4);
    for (const still of await stills.all()) expect((await still.boundingBox())!.width).toBeGreaterThan(200);
    expect(await serious(page)).toEqual([]);
    await page.context().close();
  });

  it('prints its words and stills', async () => {
    const { page } = await open(DESK);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.show').isVisible()).toBe(false);
    expect(await page.locator('.stills figure').last().isVisible()).toBe(true);
    expect(await page.locator('dl').isVisible()).toBe(true);
    await page.context().close();
  });
});
