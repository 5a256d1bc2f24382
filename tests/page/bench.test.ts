import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import meeting from '../../designs/meeting-table/design.ts';
import reading from '../../designs/reading-table/design.ts';
import { cutListTable } from '../../lib/build/cut-list-table.ts';
import { derivedNumbers } from '../../lib/build/derived.ts';
import type { Design } from '../../lib/build/design.ts';
import { type Job, makeJob } from '../../lib/build/job.ts';
import { drawTogether, likeText } from '../../lib/model/like-findings.ts';
import { readSources, readValues } from '../../lib/params/read-values.ts';
import { defineShop } from '../../lib/shop/shop.ts';
import { formatMass } from '../../lib/units/format-load.ts';
import { makeLivePage } from '../../scripts/watch/make-live-page.ts';
import { servePage } from '../../scripts/watch/page-server.ts';
import { run } from '../cli/run-cli.ts';
import { put, tempFolder } from '../cli/temp-folder.ts';
import { benchPageOf, designFile } from './bench-page.ts';
import { hasBrowser, launchBrowser } from './browser.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const DESKTOP = { width: 1280, height: 800 };
const PHONE = { width: 390, height: 844 };

const folder = tempFolder();
const fileOf = (name: string): string => path.join(folder, `${name}.html`);

let browser: Browser;
/** What a page asked for, and what it complained of. */
const noticed: string[] = [];

if (!hasBrowser) console.warn('Left out: the live page in a browser (on Debian: apt-get install chromium).');

describe.skipIf(!hasBrowser)('the live page', () => {
  beforeAll(async () => {
    const pages = [
      ['reading-table', reading],
      ['meeting-table', meeting],
    ] as const;
    for (const [name, design] of pages)
      writeFileSync(fileOf(name), await benchPageOf(name, design as unknown as Design));
    browser = (await launchBrowser())!;
  });
  afterAll(async () => {
    await browser.close();
    expect(noticed).toEqual([]);
  });

  /** A page opened from its file, in a context of its own. */
  async function open(
    name: string,
    viewport: { readonly width: number; readonly height: number },
    before?: () => void,
    address = `file://${fileOf(name)}`,
  ): Promise<Page> {
    const context = await browser.newContext({ viewport, acceptDownloads: true });
    const page = await context.newPage();
    if (before) await page.addInitScript(before);
    page.on('pageerror', (error) => noticed.push(error.message));
    page.on('console', (message) => message.type() === 'error' && noticed.push(message.text()));
    page.on('request', (request) => {
      const { protocol, origin } = new URL(request.url());
      if (!['file:', 'blob:', 'data:'].includes(protocol) && origin !== new URL(address).origin)
        noticed.push(request.url());
    });
    await page.goto(address);
    return page;
  }

  it('shows the piece within its first second of work, and asks nobody for anything', async () => {
    const html = readFileSync(fileOf('reading-table'), 'utf8');
    expect(html.length).toBeLessThan(1_200_000);
    expect(html).not.toMatch(/(?:src|href)="https?:/);
    const page = await open('reading-table', DESKTOP);
    await page.waitForSelector('.scene[data-drawn]');
    expect(await page.title()).toBe('At the bench: Reading-room table');
    expect(await page.locator('.figures').textContent()).toContain('84 in × 40 in × 29 1/2 in');
    await page.context().close();
  });

  it('follows a slider with table, mass and findings as the command line has them', async () => {
    const page = await open('reading-table', DESKTOP);
    await page.locator('#field-top-edgeThickness ~ input[type=range]').focus();
    for (let k = 0; k < 9; k++) await page.keyboard.press('ArrowLeft');
    const text = '9/16 in';
    await valueIs(page, 'top.edgeThickness', text);
    await settled(page);
    const job = jobWith(reading as unknown as Design, ['top.edgeThickness', text]);
    expect(await page.locator('.figures').textContent()).toContain(
      `${formatMass(derivedNumbers(job).mass, 'in')} (was `,
    );
    expect(await cells(page, '.cut-list tbody tr')).toEqual(cutListTable(job.cutList, 'in').rows);
    expect(await sentences(page)).toEqual(expectedSentences(job));
    expect(expectedSentences(job).some((one) => one.startsWith('slot cover'))).toBe(true);
    expect(await page.locator('.findings h3').first().textContent()).toMatch(/^change it/);
    // What moved is marked with what it was.
    expect(await page.locator('.sizes tr.moved', { hasText: 'long edges' }).textContent()).toContain('was 1 1/8 in');
    const verdicts = page.locator('.changes table', { hasText: 'verdicts' });
    await verdicts.waitFor();
    expect(await verdicts.textContent()).toContain('slot cover, strip T1');
    // One drag with the keys, one step back.
    await page.keyboard.press('Control+z');
    await page.waitForFunction(() => !document.querySelector('.sizes tr.moved'));
    expect(await page.locator('#field-top-edgeThickness').inputValue()).toBe('1 1/8 in');
    await page.getByRole('button', { name: 'redo' }).click();
    await page.waitForFunction(() => document.querySelector('.sizes tr.moved'));
    expect(await page.locator('#field-top-edgeThickness').inputValue()).toBe('9/16 in');
    expect(await sentences(page)).toEqual(expectedSentences(job));
    await page.context().close();
  });

  it('says what is wrong with an entry in the words of the terminal, and takes what it advises', async () => {
    const wrong = [
      ['top.edgeThickness', '3 mm'],
      ['top.width', '40'],
      ['stretcher.count', 'two'],
    ] as const;
    const { err } = await run(['check', 'reading-table', ...wrong.flatMap(([at, text]) => ['--set', `${at}=${text}`])]);
    const page = await open('reading-table', DESKTOP);
    await page.evaluate(() => {
      for (const group of document.querySelectorAll('details')) group.open = true;
    });
    for (const [at, text] of wrong) {
      await page.locator(idOf(at)).fill(text);
      await page.keyboard.press('Tab');
    }
    await page.waitForFunction(() => document.querySelectorAll('.field-problems .problem').length === 3);
    const told = await page
      .locator('.field-problems .problem')
      .evaluateAll((all) => all.map((one) => [...one.children].map((line) => line.textContent).join('\n')));
    expect(told).toHaveLength(3);
    expect(`${told.join('\n\n')}\n\n3 problems\n`).toBe(err.replace(/^ +/gm, ''));
    expect(await page.locator(idOf('top.width')).getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('.problems').textContent()).toContain(
      '3 problems; shown is the last piece that went together',
    );
    expect(await serious(page)).toEqual([]);
    await page.getByRole('button', { name: 'take 40 in' }).click();
    await page.locator(`${idOf('stretcher.count')}`).fill('2');
    await page.locator(`${idOf('top.edgeThickness')}`).fill('1 in');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.problems', { state: 'hidden' });
    expect(await page.locator('.keep textarea').inputValue()).toBe(
      '--set "top.edgeThickness=1 in" --set "stretcher.count=2"',
    );
    await page.context().close();
  });

  it('lets go of a text that is not good yet, and follows it as soon as it is', async () => {
    const page = await open('reading-table', DESKTOP);
    await page.locator(idOf('top.length')).click();
    await page.locator(idOf('top.length')).fill('');
    await page.keyboard.type('6 ft 2');
    expect(await page.locator('.problems').isHidden()).toBe(true);
    await page.keyboard.type(' 1/2 in');
    await page.waitForFunction(() => document.querySelector('.figures')?.textContent?.startsWith('74 1/2 in'));
    // What was typed is one step back, from inside the field, too.
    await page.keyboard.press('Enter');
    await page.keyboard.press('Control+z');
    await page.waitForFunction(() => document.querySelector('.figures')?.textContent?.startsWith('84 in'));
    await valueIs(page, 'top.length', '84 in');
    await page.context().close();
  });

  it('keeps what was found: options, a file of values, over a reload', async () => {
    const page = await open('meeting-table', DESKTOP);
    await page.locator(idOf('top.length')).fill('2.1 m');
    await page.locator(idOf('top.wood')).selectOption('walnut');
    await page.getByRole('button', { name: 'end', exact: true }).click();
    await page.waitForFunction(() => document.querySelector('.figures')?.textContent?.startsWith('2100 mm'));
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'download design values' }).click(),
    ]);
    const values = JSON.parse(readFileSync(await download.path(), 'utf8'));
    const wanted = readValues(meeting.params, meeting.values, [
      { path: 'top.length', text: '2.1 m', from: '' },
      { path: 'top.wood', text: 'walnut', from: '' },
    ]).values;
    expect(readSources(meeting.params, [{ values, from: 'values.json' }]).values).toEqual(wanted);
    await page.reload();
    await page.waitForFunction(() => document.querySelector('.figures')?.textContent?.startsWith('2100 mm'));
    expect(await page.locator('.keep textarea').inputValue()).toBe('--set "top.length=2.1 m" --set "top.wood=walnut"');
    expect(await page.getByRole('button', { name: 'end', exact: true }).getAttribute('aria-pressed')).toBe('true');
    await page.getByRole('button', { name: 'in', exact: true }).click();
    await page.waitForFunction(() => document.querySelector('.figures')?.textContent?.startsWith('82 11/16 in'));
    await page.context().close();
  });

  it('is served by watch, and takes values and view over when the design is saved', async () => {
    const source = readFileSync(designFile('meeting-table'), 'utf8');
    const file = put(folder, 'boat/design.ts', source);
    const made = (): ReturnType<typeof makeLivePage> => makeLivePage({ name: 'boat', file }, { set: [] } as never);
    const server = await servePage(0);
    server.show((await made()).page!);
    const page = await open('meeting-table', DESKTOP, undefined, server.address);
    await page.locator(idOf('top.length')).fill('2.2 m');
    await page.getByRole('button', { name: 'underside' }).click();
    await page.waitForFunction(() => document.querySelector('.figures')?.textContent?.startsWith('2200 mm'));
    server.broken('design.ts, line 3: Expected "}"');
    await page.getByText('cannot be read at the moment: design.ts, line 3').waitFor();
    put(folder, 'boat/design.ts', source.replace('740 mm', '720 mm').replace('Boathouse meeting', 'Boathouse long'));
    server.show((await made()).page!);
    await page.getByRole('heading', { name: 'Boathouse long table' }).waitFor();
    await page.waitForFunction(() =>
      document.querySelector('.figures')?.textContent?.startsWith('2200 mm × 960 mm × 720 mm'),
    );
    await page.waitForSelector('[aria-pressed=true]:has-text("underside")');
    expect(await page.locator('#failed').textContent()).toBe('');
    await page.context().close();
    server.close();
  });

  it('can be used on a phone, and by whoever does not see it', async () => {
    const page = await open('reading-table', PHONE);
    await page.waitForSelector('.scene[data-drawn]');
    expect(await serious(page)).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(PHONE.width);
    await page.locator(idOf('top.length')).scrollIntoViewIfNeeded();
    await page.evaluate(() => scrollTo(0, 1500));
    const { top, bottom } = await page.evaluate(() => {
      const box = document.querySelector('.summary')!.getBoundingClientRect();
      return { top: box.top, bottom: box.bottom };
    });
    expect(top).toBeGreaterThanOrEqual(0);
    expect(bottom).toBeLessThan(PHONE.height / 2);
    const names = await page
      .locator('.field input:visible, .field select:visible')
      .evaluateAll((all) =>
        all.map((one) => (one as HTMLInputElement).labels?.[0]?.textContent ?? one.getAttribute('aria-label') ?? ''),
      );
    expect(names.length).toBeGreaterThan(10);
    expect(names.every((name) => name.trim() !== '')).toBe(true);
    const headings = await page.locator('.group > summary .heading').allTextContents();
    expect(headings.slice(0, 3)).toEqual(['Table', 'Top', 'Edge joints of the top']);
    await page.context().close();
  });

  it('holds no more memory after 500 changes than after some', async () => {
    // Buffers are made and thrown away as ever; only a renderer in software would need minutes for the pictures.
    const page = await open('reading-table', { width: 320, height: 240 }, () => {
      // Nor does it matter to this page what the checks say.
      globalThis.Worker = class {
        postMessage(): void {}
      } as unknown as typeof Worker;
      for (const draw of ['drawElements', 'drawArrays'] as const) WebGL2RenderingContext.prototype[draw] = () => {};
      globalThis.requestAnimationFrame = (frame) => setTimeout(() => frame(performance.now()), 0) as unknown as number;
    });
    const cdp = await page.context().newCDPSession(page);
    const change = (rounds: number): Promise<void> =>
      page.evaluate(async (count) => {
        const input = document.getElementById('field-table-height') as HTMLInputElement;
        for (let k = 0; k < count; k++) {
          const shown = new Promise((go) => document.addEventListener('shown', go, { once: true }));
          input.value = `${28 * 64 + (k % 90)}/64 in`;
          input.dispatchEvent(new Event('change'));
          await shown;
        }
      }, rounds);
    const used = async (): Promise<number> => {
      await cdp.send('HeapProfiler.collectGarbage');
      return (await cdp.send('Runtime.getHeapUsage')).usedSize / 1e6;
    };
    await change(100);
    const before = await used();
    await change(400);
    const after = await used();
    expect(after - before, `MB: ${before} before, ${after} after`).toBeLessThan(4);
    await page.context().close();
  });
});

const idOf = (at: string): string => `#field-${at.replaceAll('.', '-')}`;

/** Until a field shows a text. */
const valueIs = (page: Page, at: string, text: string): Promise<unknown> =>
  page.waitForFunction(
    ([id, wanted]) => (document.querySelector(id!) as HTMLInputElement | null)?.value === wanted,
    [idOf(at), text],
  );

/** Until every check has looked at the values, fixes included. */
const settled = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => document.querySelector('.working')?.textContent === 'All checks are done.');

function jobWith(design: Design, [at, text]: readonly [string, string]): Job {
  const { values } = readValues(design.params, design.values, [{ path: at, text, from: '' }]);
  return makeJob(design, values!, defineShop());
}

/** What is to be changed or looked at: the sentence with its fixes, worst first. */
const expectedSentences = ({ findings }: Job): string[] =>
  (['change it', 'look again', 'not checked'] as const).flatMap((verdict) =>
    drawTogether(findings.filter((one) => one.verdict === verdict)).map((like) =>
      [likeText(like), ...like.worst.fixes.map((fix) => `try: ${fix}`)].join('|'),
    ),
  );

/** The same as the page shows it; texts of buttons left out. */
const sentences = (page: Page): Promise<string[]> =>
  page
    .locator('.findings li')
    .evaluateAll((all) =>
      all.map((one) =>
        [...one.querySelectorAll(':scope > p')].map((line) => line.firstChild?.textContent ?? '').join('|'),
      ),
    );

/** Texts of the cells, without what they were. */
const cells = (page: Page, rows: string): Promise<string[][]> =>
  page
    .locator(rows)
    .evaluateAll((all) =>
      all.map((row) =>
        [...row.children].map((cell) => (cell.firstChild?.nodeType === 3 ? cell.firstChild.textContent! : '')),
      ),
    );

/** Faults that keep someone from using the page, by the rules of axe-core. */
async function serious(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const { violations } = await page.evaluate(async () => {
    const axe = (globalThis as unknown as { axe: { run(): Promise<{ violations: Violation[] }> } }).axe;
    const { violations } = await axe.run();
    return {
      violations: violations.map(({ id, impact, nodes }) => ({
        id,
        impact,
        nodes: nodes.map(({ html }) => ({ html })),
      })),
    };
  });
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}

interface Violation {
  readonly id: string;
  readonly impact: string | null;
  readonly nodes: readonly { readonly html: string }[];
}
