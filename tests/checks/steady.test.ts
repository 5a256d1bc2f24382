import { describe, expect, it } from 'vitest';
import { CHECKS } from '../../lib/derive/checks/checks.ts';
import { fixedAcross } from '../../lib/derive/checks/fixed-across.ts';
import { glueUp } from '../../lib/derive/checks/glue-up.ts';
import { lifting } from '../../lib/derive/checks/lifting.ts';
import { screwHold } from '../../lib/derive/checks/screw-hold.ts';
import { seasons } from '../../lib/derive/checks/seasons.ts';
import { slotTravel } from '../../lib/derive/checks/slot-travel.ts';
import { tipping } from '../../lib/derive/checks/tipping.ts';
import { SPECIES_IDS } from '../../lib/wood/species-id.ts';
import { DESIGN_NAMES } from '../written.ts';
import { handContext, words } from './contexts.ts';
import { boards, flat } from './trial-pieces.ts';
import { tried, untuned } from './tried.ts';

/** How a piece moves with the seasons, how it stands, how its top is held, and how it is glued and carried. */
const STEADY = [slotTravel, fixedAcross, screwHold, tipping, seasons, glueUp, lifting];

describe('the checks of seasons, screws, tipping, clamps and lifting', () => {
  it('are among those that a build runs', () => {
    expect(STEADY.filter((check) => !CHECKS.includes(check))).toEqual([]);
  });

  it.each(DESIGN_NAMES)('have nothing in the %s to change', (name) => {
    const findings = STEADY.flatMap((check) => check.run(untuned(tried(name))));
    expect(findings.length).toBeGreaterThan(8);
    expect(findings.filter((f) => f.verdict === 'change it' || f.verdict === 'not checked').map(words)).toEqual([]);
  });

  it('answer something to every piece, and say where every limit comes from', () => {
    const plain = handContext(boards({ id: 'board', at: flat(0, 0, 0) }));
    for (const context of [plain, ...DESIGN_NAMES.map((name) => untuned(tried(name)))]) {
      for (const check of STEADY) {
        const findings = check.run(context);
        expect(findings.length, check.name).toBeGreaterThan(0);
        for (const { source, because } of findings) expect(Math.min(source.length, because.length)).toBeGreaterThan(5);
      }
    }
  });

  it.each(SPECIES_IDS)('hold or say what they need in %s, without a number that is none', (wood) => {
    const context = untuned(tried('reading-table', { 'top.wood': wood, 'frame.wood': wood }));
    for (const finding of STEADY.flatMap((check) => check.run(context))) {
      const numbers = [finding.value, finding.limit, ...(finding.range ?? [])].filter((n) => n !== undefined);
      expect(numbers.every(Number.isFinite), finding.because).toBe(true);
      expect(words(finding)).not.toMatch(/NaN|undefined|Infinity/);
      if (finding.verdict === 'not checked') expect(finding.because).toMatch(/^not checked: needs /);
    }
  });
});
