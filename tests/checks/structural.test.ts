import { describe, expect, it } from 'vitest';
import type { CheckContext } from '../../lib/derive/checks/check.ts';
import { CHECKS } from '../../lib/derive/checks/checks.ts';
import { crossGrain } from '../../lib/derive/checks/cross-grain.ts';
import { give } from '../../lib/derive/checks/give.ts';
import { jointStrength } from '../../lib/derive/checks/joint-strength.ts';
import { sag } from '../../lib/derive/checks/sag.ts';
import { sway } from '../../lib/derive/checks/sway.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { SPECIES_IDS } from '../../lib/wood/species-id.ts';
import { inchesInText } from '../lists/marks-in-text.ts';
import { type Changes, DESIGN_NAMES, type DesignName } from '../written.ts';
import { handContext, words } from './contexts.ts';
import { fourLegs, postFrames } from './hand-bases.ts';
import { sampledTables } from './samples.ts';
import { boards, flat } from './trial-pieces.ts';
import { tried, untuned } from './tried.ts';

/** How a table bears loads. */
const STRUCTURAL = [sag, give, crossGrain, sway, jointStrength];

const all = (context: CheckContext): Finding[] => STRUCTURAL.flatMap((check) => check.run(untuned(context)));

/** The value and the limit as a maker reads them. */
const NUMBER = String.raw`((?:\d+ )?\d+/\d+|[\d.]+) (mm|in|%)`;
const READ = new RegExp(`(?:the middle|its ends|it sags|moves it|moves the top|works at|its grain to) ${NUMBER}`);
const LIMIT = new RegExp(`(?:up to|above) ${NUMBER}`);

/** "1 27/64" or "0.008". */
const numberIn = (text: string): number => (/\./.test(text) ? Number(text) : inchesInText(text));

/** Every number is one, no sentence says what its verdict denies, and nothing is promised. */
function expectSound(finding: Finding, name: string): void {
  const { verdict, value, limit, range = [], because, source, load } = finding;
  const numbers = [value, limit, ...range].filter((n) => n !== undefined);
  expect(
    numbers.every((n) => Number.isFinite(n) && n >= 0),
    `${because} | ${name}`,
  ).toBe(true);
  expect(because, name).not.toMatch(/NaN|undefined|Infinity|safe|certif|complian|rated/i);
  expect(source.length, name).toBeGreaterThan(5);
  if (verdict === 'not checked') {
    expect(because, name).toMatch(/^not checked: needs /);
    return;
  }
  expect(load, because).toBeDefined();
  const [said, allowed] = [READ.exec(because), LIMIT.exec(because)];
  if (said === null || allowed === null) {
    expect(finding.check, because).toBe('sway');
    return;
  }
  expect(said[2]).toBe(allowed[2]);
  expect(numberIn(said[1]!) <= numberIn(allowed[1]!), `${verdict}: ${because} | ${name}`).toBe(verdict === 'ok');
}

describe('the checks of how a table bears loads', () => {
  it('are among those that a build runs', () => {
    expect(STRUCTURAL.filter((check) => !CHECKS.includes(check))).toEqual([]);
  });

  it('ask for no change of the designs of the repository', () => {
    for (const name of DESIGN_NAMES) {
      expect(
        all(tried(name))
          .filter((f) => f.verdict === 'change it')
          .map(words),
      ).toEqual([]);
    }
  });

  it('are sound for any values that the rules allow', () => {
    const seen = new Set<string>();
    for (const { name, context } of sampledTables(7000, 50)) {
      for (const finding of all(context)) {
        expectSound(finding, name);
        seen.add(`${finding.check} ${finding.verdict}`);
      }
    }
    expect(seen.size).toBeGreaterThan(15);
  });

  it.each(SPECIES_IDS)('hold or say what they need in %s', (wood) => {
    for (const name of ['reading-table', 'meeting-table'] as const) {
      for (const finding of all(tried(name, { 'top.wood': wood, 'frame.wood': wood }))) expectSound(finding, wood);
    }
  });

  const bases: readonly (readonly [string, CheckContext])[] = [
    ['a board', handContext(boards({ id: 'board', at: flat(0, 0, 0) }))],
    ['a stool without a panel', tried('reading-stool')],
    ['two frames', handContext(postFrames())],
    ['two frames on feet', handContext(postFrames({ foot: true }))],
    ['two frames without pads', handContext(postFrames({ pads: false }))],
    ['two frames that fold', handContext(postFrames({ stretchers: false }))],
    ['one frame on one line', handContext(postFrames({ at: [800] }))],
    ['three frames', handContext(postFrames({ at: [200, 800, 1400], stretchers: false }))],
    ['four legs', handContext(fourLegs())],
    ['four legs on pads', handContext(fourLegs('red-oak', true))],
    ...(
      [
        ['reading-table', { 'frame.kind': 'posts' }],
        ['reading-table', { 'frame.kind': 'panel' }],
        ['reading-table', { 'stretcher.count': '2' }],
        ['study-table', { 'stretcher.count': '2' }],
        ['study-table', { 'stretcher.count': '0' }],
        ['meeting-table', { 'stretcher.to': 'rail' }],
        ['meeting-table', { 'lowerRail.use': 'no' }],
      ] as const satisfies readonly (readonly [DesignName, Changes])[]
    ).map(([name, changes]) => [`the ${name} with ${JSON.stringify(changes)}`, tried(name, changes)] as const),
  ];

  it.each(bases)('are sound for %s', (name, context) => {
    const findings = all(context);
    expect(findings.length).toBeGreaterThanOrEqual(STRUCTURAL.length);
    for (const finding of findings) expectSound(finding, name);
  });

  it('take any loads, and none', () => {
    const loads = [
      { spread: 0, lean: 0, push: 0, shove: 0, person: 0 },
      { spread: 1000, lean: 5000, push: 2000, shove: 3000, person: 300 },
      { push: 0 },
      { shove: 0 },
    ];
    for (const given of loads) {
      for (const finding of all(tried('reading-table', {}, { loads: given })))
        expectSound(finding, JSON.stringify(given));
    }
  });
});
