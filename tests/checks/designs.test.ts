import { describe, expect, it } from 'vitest';
import { cutsInStock } from '../../lib/derive/checks/cuts-in-stock.ts';
import { edgeThickness } from '../../lib/derive/checks/edge-thickness.ts';
import { fitTogether } from '../../lib/derive/checks/fit-together.ts';
import { lumberThickness } from '../../lib/derive/checks/lumber-thickness.ts';
import { screwCover } from '../../lib/derive/checks/screw-cover.ts';
import { slotCover } from '../../lib/derive/checks/slot-cover.ts';
import { tenonFit } from '../../lib/derive/checks/tenon-fit.ts';
import { DESIGN_NAMES, jobOf } from '../written.ts';
import { contextOf, handContext, words } from './contexts.ts';
import { boards, flat } from './trial-pieces.ts';

/** The checks of how a piece is made; how it bears loads and fits its site is tested elsewhere. */
const MADE = [fitTogether, cutsInStock, tenonFit, slotCover, screwCover, edgeThickness, lumberThickness];

describe('the checks of how a piece is made', () => {
  it.each(DESIGN_NAMES)('have nothing against the %s', (name) => {
    const findings = MADE.flatMap((check) => check.run(contextOf(name)));
    expect(findings.length).toBeGreaterThan(10);
    expect(findings.filter((f) => f.verdict !== 'ok').map(words)).toEqual([]);
  });

  it('answer something to every piece, and say where every limit comes from', () => {
    const plain = handContext(boards({ id: 'board', at: flat(0, 0, 0) }));
    for (const context of [plain, ...DESIGN_NAMES.map((name) => contextOf(name))]) {
      for (const check of MADE) {
        const findings = check.run(context);
        expect(findings.length, check.name).toBeGreaterThan(0);
        for (const { source, because, verdict, fixes } of findings) {
          expect([source, because].every((text) => text.length > 5)).toBe(true);
          expect(fixes.length > 0, because).toBe(verdict !== 'ok');
        }
      }
    }
  });

  it('are among those that a build runs', () => {
    const names = new Set(jobOf('reading-table').findings.map((f) => f.check));
    expect([...names]).toEqual(
      expect.arrayContaining([
        'pieces fit together',
        'cuts in stock',
        'tenon thickness',
        'slot cover',
        'screw cover',
        'screw thread',
        'edge thickness',
        'edge land',
        'lumber thickness',
      ]),
    );
  });
});
