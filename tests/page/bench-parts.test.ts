import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import meeting from '../../designs/meeting-table/design.ts';
import reading from '../../designs/reading-table/design.ts';
import type { Assets } from '../../lib/build/assets.ts';
import type { Design } from '../../lib/build/design.ts';
import { checkContext, type Job, makeJob } from '../../lib/build/job.ts';
import { benchFile } from '../../lib/build/output-bench.ts';
import { CHECKS, runChecks as runAll } from '../../lib/derive/checks/checks.ts';
import { type Bench, benchOf } from '../../lib/page/bench/bench.ts';
import { type Edits, NO_EDITS, withEdit } from '../../lib/page/bench/edits.ts';
import { findingsOf, foundAtOnce, foundMore, isComplete, NOTHING_FOUND } from '../../lib/page/bench/found.ts';
import { moveOn, redo, startHistory, undo } from '../../lib/page/bench/history.ts';
import { asOptions, asValues } from '../../lib/page/bench/keep.ts';
import { readEdits, withoutIdle } from '../../lib/page/bench/read-edits.ts';
import { remedyOf } from '../../lib/page/bench/remedy.ts';
import { scaleOf, stopsOf } from '../../lib/page/bench/scale.ts';
import { openDesk } from '../../lib/page/worker/ask-checks.ts';
import type { CheckAnswer, CheckQuestion } from '../../lib/page/worker/messages.ts';
import { COSTLY_CHECKS, QUICK_CHECKS } from '../../lib/page/worker/quick-checks.ts';
import { runChecks } from '../../lib/page/worker/run-checks.ts';
import { serveChecks } from '../../lib/page/worker/serve-checks.ts';
import { parseAssignment } from '../../lib/params/assignment.ts';
import { readParam } from '../../lib/params/read-param.ts';
import { readSources, readValues } from '../../lib/params/read-values.ts';
import { defineShop } from '../../lib/shop/shop.ts';
import { benchHtml } from '../../lib/writers/bench-html.ts';

const bench: Bench = benchOf(reading as unknown as Design, undefined, { set: [] });
const table = reading.params.table;

describe('sliders', () => {
  it('give texts that read back, within the limits of their parameter, in both systems', () => {
    for (const [path, param] of table) {
      for (const units of ['in', 'mm'] as const) {
        const scale = scaleOf(param, units);
        if (!scale || !('min' in param)) continue;
        const { first, last } = stopsOf(scale, param);
        expect(last - first, path).toBeGreaterThan(0);
        fc.assert(
          fc.property(fc.integer({ min: first, max: last }), (count) => {
            const reading = readParam(param, scale.text(count));
            expect(reading.faults, `${path} ${scale.text(count)}`).toBeUndefined();
            expect(reading.value as number).toBeCloseTo(count * scale.step, 6);
          }),
          { numRuns: 25, seed: 7 },
        );
      }
    }
  });

  it('step as a maker cuts: 1/16 in over a few inches, 1/8 in over feet, 1 mm in a metric shop', () => {
    expect(scaleOf(table.get('top.thickness')!, 'in')!.step).toBe(25.4 / 16);
    expect(scaleOf(table.get('top.length')!, 'in')!.step).toBe(25.4 / 8);
    expect(scaleOf(table.get('edgeJoint.endPlay')!, 'in')!.step).toBe(25.4 / 64);
    expect(scaleOf(table.get('top.length')!, 'mm')!.step).toBe(1);
    expect(scaleOf(table.get('moisture.low')!, 'in')!.step).toBe(0.1);
  });
});

describe('history', () => {
  const edits = (text: string): Edits => withEdit(NO_EDITS, 'top.length', text);

  it('takes a drag back as a whole, and forth again', () => {
    let history = startHistory(NO_EDITS);
    for (const text of ['70 in', '71 in', '72 in']) history = moveOn(history, edits(text), 'drag 1');
    history = moveOn(history, edits('80 in'), 'drag 2');
    history = undo(history);
    expect(history.now.get('top.length')).toBe('72 in');
    history = undo(history);
    expect(history.now).toBe(NO_EDITS);
    expect(undo(history)).toEqual(history);
    history = redo(redo(redo(history)));
    expect(history.now.get('top.length')).toBe('80 in');
  });

  it('forgets what was taken back once something else is done', () => {
    const history = moveOn(undo(moveOn(startHistory(NO_EDITS), edits('70 in'))), edits('60 in'));
    expect(history.future).toEqual([]);
    expect(redo(history).now.get('top.length')).toBe('60 in');
  });
});

describe('keeping', () => {
  const edits: Edits = new Map([
    ['top.width', '1000 mm'],
    ['top.length', '72 1/2 in'],
    ['stretcher.count', '2'],
  ]);
  const wanted = readEdits(bench, edits).values!;

  it('says the edits as options that give the same values, in the order of the table', () => {
    const text = asOptions(reading.params, edits);
    expect(text).toBe('--set "top.length=72 1/2 in" --set "top.width=1000 mm" --set "stretcher.count=2"');
    const overrides = [...text.matchAll(/--set "([^"]*)"/g)].map(([, one]) => parseAssignment(one!).override!);
    expect(readValues(reading.params, reading.values, overrides).values).toEqual(wanted);
  });

  it('writes values that a file for --params, or a design, may hold', () => {
    const values = JSON.parse(JSON.stringify(asValues(bench, edits)));
    expect(readSources(reading.params, [{ values, from: 'values.json' }]).values).toEqual(wanted);
    expect(reading.values.top?.length).toBe('84 in');
  });

  it('drops an edit that gives what the design has anyway, in whatever words', () => {
    const design = readEdits(bench, NO_EDITS).values;
    const same = withoutIdle(bench, new Map([['top.length', '7 ft']]), 'top.length', design);
    expect(same.size).toBe(0);
  });
});

describe('checks by turns', () => {
  const question = (serial: number, edge: string): CheckQuestion => ({
    serial,
    values: readEdits(bench, new Map([['top.edgeThickness', edge]])).values!,
    units: 'in',
    shop: defineShop(),
    records: {},
  });

  it('knows every check once', () => {
    expect([...QUICK_CHECKS, ...COSTLY_CHECKS].map(({ name }) => name).sort()).toEqual(
      CHECKS.map(({ name }) => name).sort(),
    );
    expect(COSTLY_CHECKS).toHaveLength(9);
  });

  it.each([
    ['reading table', reading, '1/2 in'],
    ['meeting table', meeting, '30 mm'],
  ])('find in the end what the command line finds: %s', async (_, design, edge) => {
    const own = benchOf(design as unknown as Design, undefined, { set: [] });
    const values = readEdits(own, new Map([['top.edgeThickness', edge]])).values!;
    const { shop, records } = own;
    const job = makeJob(own.design, values, shop);
    const context = checkContext(own.design, values, job.assembly, shop);
    const { tune: __, ...plain } = context;
    let found = foundAtOnce(NOTHING_FOUND, plain);
    const answers: CheckAnswer[] = [];
    await runChecks(
      own.design,
      { serial: 1, values, units: own.design.units, shop, records },
      {
        answer: (answer) => answers.push(answer),
        isStale: () => false,
        turn: async () => {},
        rest: async () => {},
      },
    );
    expect(isComplete(found)).toBe(false);
    for (const answer of answers) found = foundMore(found, answer);
    expect(isComplete(found)).toBe(true);
    expect(findingsOf(found)).toEqual(runAll(context));
  });

  it('stop for a later question, and answer that one', async () => {
    const answers: CheckAnswer[] = [];
    const done = new Promise<void>((go) => {
      const server = serveChecks(bench.design, (answer) => {
        answers.push(answer);
        if (answer.serial === 1 && answers.length === 1) server.ask(question(2, '1 in'));
        if (answer.serial === 2 && answer.kind === 'done') go();
      });
      server.ask(question(1, '1 1/4 in'));
    });
    await done;
    expect(answers.filter(({ serial }) => serial === 1)).toHaveLength(1);
    expect(answers.some(({ serial, kind }) => serial === 1 && kind === 'done')).toBe(false);
  });

  it('are not heard any more once something else was asked, however late a worker answers', () => {
    const posted: CheckQuestion[] = [];
    let worker: { onmessage?: (event: { data: CheckAnswer }) => void } = {};
    vi.stubGlobal(
      'Worker',
      class {
        onmessage?: (event: { data: CheckAnswer }) => void;
        constructor() {
          worker = this;
        }
        postMessage(asked: CheckQuestion): void {
          posted.push(asked);
        }
      },
    );
    const heard: string[] = [];
    const desk = openDesk(bench.design, '');
    const { serial: _, ...asked } = question(0, '1 in');
    desk.ask(asked, ({ kind }) => heard.push(`first ${kind}`));
    desk.ask(asked, ({ kind }) => heard.push(`second ${kind}`));
    vi.unstubAllGlobals();
    const [first, second] = posted.map(({ serial }) => serial);
    for (const serial of [first!, second!, first!]) worker.onmessage!({ data: { serial, kind: 'done' } });
    expect(heard).toEqual(['second done']);
  });

  it('are made in the page where no worker can start', async () => {
    const heard: string[] = [];
    const { serial: _, ...asked } = question(0, '1 in');
    await new Promise<void>((go) => {
      openDesk(bench.design, '').ask(asked, ({ kind }) => {
        heard.push(kind);
        if (kind === 'done') go();
      });
    });
    expect(heard.filter((kind) => kind === 'plain')).toHaveLength(COSTLY_CHECKS.length);
  });

  it('tell when a piece cannot be put together', async () => {
    const broken = { ...bench.design, compose: () => raise('a joint has no wood') } as unknown as Design;
    const answers: CheckAnswer[] = [];
    const turns = { isStale: () => false, turn: async () => {}, rest: async () => {} };
    await runChecks(broken, question(3, '1 in'), { ...turns, answer: (answer) => answers.push(answer) });
    expect(answers).toEqual([{ serial: 3, kind: 'failed', because: 'a joint has no wood' }]);
  });
});

it('a fix that names a parameter and a value can be tried; a sentence cannot', () => {
  expect(remedyOf(reading.params, 'frame.inset 13 7/8 in brings 165 kg')).toEqual({
    path: 'frame.inset',
    text: '13 7/8 in',
  });
  expect(remedyOf(reading.params, 'use tenons 1/4 in thick, gauged 33/64 in from the show face')).toBeUndefined();
});

it('a page that is made in spite of "change it" says so', () => {
  const values = readValues(reading.params, reading.values, [{ path: 'top.edgeThickness', text: '12 mm', from: '' }])
    .values!;
  const made = (job: Job): string =>
    new TextDecoder().decode(
      benchFile(job, { pages: { client: '', bench: 'x' } } as unknown as Assets).get('bench.html'),
    );
  expect(made(makeJob(reading, values))).toContain('Made in spite of &quot;change it&quot;: slot cover');
  expect(made(makeJob(reading, values))).toContain('"set":[["top.edgeThickness","12 mm"]]');
  expect(made(makeJob(reading, readValues(reading.params, reading.values).values!))).not.toContain('in spite');
});

it('the page forbids itself to ask for anything, and cannot be broken out of by its data', () => {
  const html = benchHtml({ title: 'A & B', script: 'x', data: { a: '</script><script>alert(1)' } });
  expect(html).toContain("connect-src 'none'");
  expect(html.match(/<script/g)).toHaveLength(3);
  expect(() => benchHtml({ title: '', script: "'</script>'", data: {} })).toThrow(/cannot hold/);
});

function raise(message: string): never {
  throw new RangeError(message);
}
