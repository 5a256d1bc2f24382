import { describe, expect, it } from 'vitest';
import { tipping } from '../../lib/derive/checks/tipping.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import { handContext, words } from './contexts.ts';
import { boards, flat } from './trial-pieces.ts';
import { afterFix, at, GOLDEN, LIGHTER, tried, untuned } from './tried.ts';

const END = 'tipping at an end';
const SIDE = 'tipping at a long edge';
const NEAR = 'tipping near an edge';
const PUSHED = 'tipping when pushed';
const SAT_ON = 'tipping when sat on';

/** kg that tip it over, as the sentence says, and what the margin says of it. */
const tipsAt = (sentence: string): number => Number(/tips over at ([\d.]+) kg/.exec(sentence)![1]);

describe('tipping of the reading-room table of the check values', () => {
  const findings = tipping.run(untuned(tried('reading-table', GOLDEN, { units: 'mm' })));
  const rows = [
    // Margin of 110 kg: 1079.1 N, where the check values have 1079.
    [END, 1426.434 / 1079.1],
    [SIDE, 1664.173 / 1079.1],
    [NEAR, 2.766361],
    [PUSHED, 338.4759 / 300],
  ] as const;

  it.each(rows)('%s it has a margin of %f', (name, margin) => {
    expect(Math.abs(at(findings, name).value! / margin - 1)).toBeLessThan(LIGHTER);
  });

  it('tips at 145 kg on the very end, and slides at 285 N before 338 N tip it', () => {
    expect(tipsAt(at(findings, END).because)).toBe(145);
    expect(at(findings, PUSHED).because).toContain('tips over at 338 N');
    expect(at(findings, PUSHED).because).toContain('slides before that, at 285 N');
    expect(findings.map((f) => f.verdict)).toEqual(['look again', 'ok', 'ok', 'look again']);
  });

  it('tips at 182 kg with the frames 2 in further out', () => {
    const out = tipping.run(untuned(tried('reading-table', { ...GOLDEN, 'frame.inset': '12 in' })));
    expect(Math.abs(at(out, END).value! / (181.7577 / 110) - 1)).toBeLessThan(LIGHTER);
    expect(at(out, END).verdict).toBe('ok');
  });
});

describe('tipping', () => {
  it('says so, in inches and metric', () => {
    expect(tipping.run(tried('reading-table')).map(words)).toMatchInlineSnapshot(`
      [
        "look again | someone of 243 lb on the very end: it tips over at 326 lb; 243 lb leaves little in hand | frame.inset 13 in brings 364 lb",
        "look again | someone of 243 lb on a long edge: it tips over at 271 lb; 243 lb leaves little in hand | foot.length 32 5/8 in brings 365 lb",
        "ok | a weight of 135 lb 1 31/32 in inside an edge: it tips over at 368 lb; 135 lb leaves enough in hand",
        "look again | a level push of 67.4 lbf at the top: it tips over at 69.1 lbf; 67.4 lbf leaves little in hand; on a usual floor it slides before that, at 65.2 lbf",
      ]
    `);
    expect(tipping.run(tried('meeting-table')).map(words)).toMatchInlineSnapshot(`
      [
        "ok | someone of 110 kg on the very end: it tips over at 210 kg; 110 kg leaves enough in hand",
        "ok | someone of 110 kg on a long edge: it tips over at 177 kg; 110 kg leaves enough in hand",
        "ok | a weight of 61 kg 50 mm inside an edge: it tips over at 241 kg; 61 kg leaves enough in hand",
        "look again | a level push of 300 N at the top: it tips over at 400 N; 300 N leaves little in hand; on a usual floor it slides before that, at 382 N | post.spacing 691 mm brings 450 N",
      ]
    `);
  });

  it('refuses long overhangs, and finds where the frames may stand', () => {
    const changes = { 'frame.inset': '20 in' };
    const found = at(tipping.run(tried('reading-table', changes)), END);
    expect(words(found)).toMatchInlineSnapshot(
      `"change it | someone of 243 lb on the very end: it tips over at 177 lb; 243 lb tips it over | frame.inset 13 in brings 364 lb"`,
    );
    expect(at(afterFix(tipping, found.fixes[0], 'reading-table', changes), END).verdict).toBe('ok');
  });

  it('refuses narrow feet, and finds how long they must be', () => {
    const changes = { 'foot.length': '25 in' };
    const findings = tipping.run(tried('reading-table', changes));
    expect(words(at(findings, SIDE))).toMatchInlineSnapshot(
      `"change it | someone of 243 lb on a long edge: it tips over at 161 lb; 243 lb tips it over | foot.length 32 5/8 in brings 365 lb"`,
    );
    expect(words(at(findings, PUSHED))).toMatchInlineSnapshot(
      `"change it | a level push of 67.4 lbf at the top: it tips over at 54.9 lbf; 67.4 lbf tips it over; on a usual floor it does not slide before that | foot.length 28 5/8 in brings a base that slides before it tips"`,
    );
    const mended = (name: string) => at(afterFix(tipping, at(findings, name).fixes[0], 'reading-table', changes), name);
    expect(mended(SIDE).verdict).toBe('ok');
    expect(mended(PUSHED).verdict).toBe('look again');
  });

  it('only looks again at a push that slides a light table before it tips it', () => {
    const found = at(tipping.run(tried('study-table')), PUSHED);
    expect(found.value).toBeLessThan(1);
    expect(words(found)).toMatchInlineSnapshot(
      `"look again | a level push of 67.4 lbf at the top: it tips over at 54.8 lbf; that is too little where its feet cannot slide; on a usual floor it slides before that, at 54.1 lbf"`,
    );
    const changes = { 'panelLeg.width': '22 in', 'pad.fromEnds': '1 in' };
    const narrow = at(tipping.run(tried('study-table', changes)), PUSHED);
    expect(words(narrow)).toMatchInlineSnapshot(
      `"change it | a level push of 67.4 lbf at the top: it tips over at 35.8 lbf; 67.4 lbf tips it over; on a usual floor it does not slide before that | panelLeg.width 28 1/4 in brings a base that slides before it tips"`,
    );
    expect(at(afterFix(tipping, narrow.fixes[0], 'study-table', changes), PUSHED).verdict).toBe('look again');
  });

  it('takes no side: a mirrored load is the same load', () => {
    const context = untuned(tried('reading-table', GOLDEN));
    const turned = context.assembly.places.map(({ part, frame }) => ({ part, frame: half(frame) }));
    const both = [context, { ...context, assembly: { ...context.assembly, places: turned } }].map((c) =>
      tipping.run(c),
    );
    for (const [k, one] of both[0]!.entries()) expect(both[1]![k]!.value).toBeCloseTo(one.value!, 9);
  });

  it('answers to heavier people', () => {
    const found = at(tipping.run(untuned(tried('reading-table', {}, { loads: { person: 150 }, units: 'mm' }))), END);
    expect(found.verdict).toBe('change it');
    expect(found.because).toContain('150 kg tips it over');
  });

  it('asks of a stool that someone can sit near its end', () => {
    expect(tipping.run(tried('reading-stool')).map(words)).toMatchInlineSnapshot(`
      [
        "ok | someone of 243 lb sitting near an end: no weight there tips it over, its feet stand out that far",
      ]
    `);
    const bench = {
      'seat.length': '60 in',
      'side.inset': '12 in',
      'seat.thickness': '1 3/4 in',
      'side.thickness': '1 3/4 in',
    };
    const found = at(tipping.run(tried('reading-stool', bench)), SAT_ON);
    expect(words(found)).toMatchInlineSnapshot(
      `"change it | someone of 243 lb sitting near an end: it tips over at 101 lb; 243 lb tips it over | side.inset 7 5/16 in brings 372 lb"`,
    );
    expect(at(afterFix(tipping, found.fixes[0], 'reading-stool', bench), SAT_ON).verdict).toBe('ok');
  });

  it('is not checked of a piece that stands on one corner', () => {
    const [s, c] = [Math.sin(0.3), Math.cos(0.3)];
    const x: Vec3 = [c, 0, s];
    const y: Vec3 = [-s * s, c, s * c];
    const corner = { ...flat(0, 0, 0), x, y };
    expect(tipping.run(handContext(boards({ id: 'board', at: corner }))).map(words)).toEqual([
      'not checked | not checked: needs two places where it stands on the floor',
    ]);
  });
});

/** Turned half round about the middle of the floor. */
const half = <F extends { readonly origin: Vec3; readonly x: Vec3; readonly y: Vec3 }>({ origin, x, y }: F) => {
  const turn = ([a, b, c]: Vec3): Vec3 => [-a, -b, c];
  return { origin: turn(origin), x: turn(x), y: turn(y) };
};
