import { request } from 'node:http';
import { networkInterfaces } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { run, start } from './run-cli.ts';
import { put, tempFolder } from './temp-folder.ts';

const folder = tempFolder();

const design = (title: string): string =>
  `import { defineDesign, trestleParams, trestleTable } from 'tablewright';
export default defineDesign({ title: '${title}', revision: 'A', date: '2026-01-02', units: 'in', params: trestleParams,
  values: { top: { edgeThickness: '3 mm' } }, compose: trestleTable });\n`;

const file = put(folder, 'desk/design.ts', design('First desk'));
const watch = start(['watch', file, '--only', 'lists', '--set', 'top.length=70 in', '--out', path.join(folder, 'out')]);
afterAll(async () => {
  watch.child.kill('SIGINT');
  expect((await watch.ended).code).toBe(130);
});

const address = new Promise<URL>((found) => {
  watch.child.stdout!.on('data', (text: string) => {
    const [, url] = /live at (\S+)/.exec(text) ?? [];
    if (url) found(new URL(url));
  });
});

interface Answer {
  readonly status: number;
  readonly text: string;
}

const ask = async (url: URL | string, options: { method?: string; headers?: Record<string, string> } = {}) =>
  new Promise<Answer>((done, failed) => {
    const asked = request(url, { timeout: 5000, ...options }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (more) => {
        text += more;
      });
      response.on('end', () => done({ status: response.statusCode!, text }));
    });
    asked.on('error', failed);
    asked.end();
  });

/** What the server tells, as it comes. */
async function hears(): Promise<{ readonly until: (text: RegExp) => Promise<string>; readonly stop: () => void }> {
  let heard = '';
  const asked = request(new URL('/events', await address), (response) => {
    response.setEncoding('utf8').on('data', (more) => {
      heard += more;
    });
  });
  asked.on('error', () => {});
  asked.end();
  return {
    stop: () => asked.destroy(),
    async until(text) {
      for (;;) {
        const found = text.exec(heard);
        if (found) {
          heard = heard.slice(found.index + found[0].length);
          return found[0];
        }
        await new Promise((go) => setTimeout(go, 20));
      }
    },
  };
}

test('watch serves the live page, whatever the checks and rules say of the design, and tells of each change', async () => {
  const events = await hears();
  const first = await events.until(/event: page\ndata: \w{64}\n/);
  const page = await ask(await address);
  expect(page.status).toBe(200);
  expect(page.text).toContain('First desk');
  expect(page.text).toContain('"set":[["top.length","70 in"]]');
  expect(page.text).toContain(`data-version="${/\w{64}/.exec(first)![0]}"`);
  expect(page.text).toContain("connect-src 'self'");
  put(folder, 'desk/design.ts', 'export default {\n');
  expect(await events.until(/event: broken\ndata: .*\n/)).toContain('desk/design.ts, line 2');
  expect((await ask(await address)).text).toContain('First desk');
  put(folder, 'desk/design.ts', design('Second desk'));
  const second = await events.until(/event: page\ndata: \w{64}\n/);
  expect(second).not.toBe(first);
  expect((await ask(await address)).text).toContain('Second desk');
  events.stop();
});

test('the server answers this machine alone, by its own name, and nothing but its page and its events', async () => {
  const url = await address;
  expect(url.hostname).toBe('127.0.0.1');
  expect((await ask(new URL('/package.json', url))).status).toBe(404);
  expect((await ask(new URL('/../../package.json', url))).status).toBe(404);
  expect((await ask(url, { method: 'POST' })).status).toBe(405);
  expect((await ask(url, { headers: { host: `elsewhere.test:${url.port}` } })).status).toBe(403);
  const outside = Object.values(networkInterfaces())
    .flatMap((all) => all ?? [])
    .find(({ family, internal }) => family === 'IPv4' && !internal);
  if (outside) await expect(ask(`http://${outside.address}:${url.port}/`)).rejects.toThrow();
});

test('a port that is no port, or is taken, ends it with a sentence', async () => {
  const wrong = await run(['watch', file, '--port', '80']);
  expect(wrong.code).toBe(2);
  expect(wrong.err).toContain('--port is "80"; it must be a whole number from 1024 to 65535');
  const { port } = await address;
  const taken = await run(['watch', file, '--port', port]);
  expect(taken.code).toBe(1);
  expect(taken.err).toContain(`the live page cannot be served at port ${port}`);
});
