import { describe, expect, it } from 'vitest';
import { auditDxfs } from '../readers/dxf-audit.ts';
import { CASES, type WrittenCase, type WrittenTemplate, writtenCase } from './cases.ts';
import { lay } from './laid.ts';
import { type Corner, outlineOf, upperEdge } from './outline-in-file.ts';

/** mm from one station to the next, and the most that a template may be off. */
const STEP = 10;
const OFF = 0.01;

/** Which parts have a relief at the ridge: bearers, cleats, upper rails. */
const RELIEVED = /^[BCU]/;

/**
 * Height of the underside over the floor, from the parameters alone: H - (Tc - s·|y|); at the ridge of a relieved part
 * the floor of the relief. Nothing at the very walls of the relief.
 */
function expectedHeight({ values }: WrittenCase, { mark }: WrittenTemplate, y: number): number | undefined {
  const value = (path: string): number => values[path]!;
  const slope = (value('top.thickness') - value('top.edgeThickness')) / (value('top.width') / 2);
  const ridge = value('table.height') - value('top.thickness');
  const half = value('bearer.reliefWidth') / 2;
  const relieved = RELIEVED.test(mark) && slope > 0 && value('bearer.reliefDepth') > 0;
  if (relieved && Math.abs(Math.abs(y) - half) < 1e-3) return undefined;
  if (relieved && Math.abs(y) < half) return ridge - value('bearer.reliefDepth');
  return ridge + slope * Math.abs(y);
}

/** The largest distance of a template from the underside over all stations, mm, and how many stations there were. */
function deviation(made: WrittenCase, template: WrittenTemplate, outline: readonly Corner[]) {
  const sheet = lay(template.frame, template.outline);
  const xs = outline.map((p) => p[0]);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  let [most, stations] = [0, 0];
  for (let x = left; x < right + STEP; x += STEP) {
    const at = Math.min(x, right);
    const [, y, z] = sheet.onTable(at, upperEdge(outline, at));
    const expected = expectedHeight(made, template, y);
    if (expected === undefined) continue;
    most = Math.max(most, Math.abs(z - expected));
    stations += 1;
  }
  return { most, stations };
}

describe('the scribed edge of every template, laid on its piece as it stands', () => {
  it.each(CASES)('$name: follows the underside at every 10 mm, read by dxf-parser', async (one) => {
    const made = await writtenCase(one);
    expect(made.templates.length).toBeGreaterThanOrEqual(2);
    for (const template of made.templates) {
      const { most, stations } = deviation(made, template, outlineOf(template.dxf));
      expect(stations).toBeGreaterThan(8);
      expect(most, template.path).toBeLessThan(OFF);
    }
  });

  it('and read by ezdxf', async ({ skip }) => {
    const built = await Promise.all(CASES.map(writtenCase));
    const all = built.flatMap((made) => made.templates.map((template) => ({ made, template })));
    const reports = auditDxfs(all.map(({ template }) => template.dxf)) ?? skip('left out: ezdxf is not installed');
    all.forEach(({ made, template }, i) => {
      const outline = reports[i]!.polylines.find((line) => line.layer === 'OUTLINE')!;
      expect(deviation(made, template, outline.points).most, template.path).toBeLessThan(OFF);
    });
  });

  it('covers every kind of scribed piece on both frames', async () => {
    const marks = new Set<string>();
    for (const one of CASES) for (const { mark } of (await writtenCase(one)).templates) marks.add(mark);
    expect([...marks].sort()).toEqual(['B1', 'B2', 'C1', 'C2', 'L1', 'L2', 'P1', 'P2', 'P3', 'P4', 'U1', 'U2']);
  });

  it('sees a template that is off by a hair, and one that is turned over', async () => {
    const made = await writtenCase(CASES[1]!);
    const post = made.templates.find((t) => t.mark === 'P1')!;
    const outline = outlineOf(post.dxf);
    const width = Math.max(...outline.map((p) => p[0]));
    const lifted = outline.map(([x, y, bulge]): Corner => [x, y > 100 ? y + 0.011 : y, bulge]);
    const turned = outline.map(([x, y, bulge]): Corner => [width - x, y, -bulge]);
    expect(deviation(made, post, outline).most).toBeLessThan(OFF);
    expect(deviation(made, post, lifted).most).toBeGreaterThan(OFF);
    expect(deviation(made, post, turned).most).toBeGreaterThan(1);
  });
});
