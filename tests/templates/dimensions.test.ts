import { describe, expect, it } from 'vitest';
import { auditDxfs } from '../readers/dxf-audit.ts';
import { dimensionsOf, parseDxf } from '../readers/dxf-parse.ts';
import { allTemplates, CASES, type WrittenCase, type WrittenTemplate, writtenCase } from './cases.ts';
import { distinct, expectedDims } from './expected-dims.ts';
import { outlineOf, upperEdge } from './outline-in-file.ts';

const LINEAR = 0;
const ANGULAR = 2;
const RADIUS = 4;

/** Values of the dimensions of one kind, group 42 as dxf-parser reads it: mm, or degrees. */
function valuesOf(dxf: string, kind: number, angle?: number): number[] {
  return dimensionsOf(parseDxf(dxf))
    .filter((dim) => (dim.dimensionType & 7) === kind && (angle === undefined || (dim.angle ?? 0) === angle))
    .map((dim) => (kind === ANGULAR ? (dim.actualMeasurement * 180) / Math.PI : dim.actualMeasurement));
}

const slopeOf = ({ values }: WrittenCase): number =>
  (values['top.thickness']! - values['top.edgeThickness']!) / (values['top.width']! / 2);

/** Pieces whose face lies across the ridge; posts see one slope only. */
const acrossRidge = (template: WrittenTemplate): boolean => !template.mark.startsWith('P');

/** Height of the sharp corner of the V over the lowest line of the piece, from the parameters and where it stands. */
function sharpCorner(made: WrittenCase, template: WrittenTemplate): number[] {
  if (!acrossRidge(template) || slopeOf(made) === 0) return [];
  return [made.values['table.height']! - made.values['top.thickness']! - template.frame.origin[2]];
}

function expectClose(actual: readonly number[], expected: readonly number[], what: string): void {
  const digits = (list: readonly number[]): string[] => list.map((v) => v.toFixed(3));
  expect(digits(actual), what).toEqual(digits(expected));
}

describe('the dimensions of every template', () => {
  it.each(CASES)('$name: say the sizes of the model, group 42 read by dxf-parser', async (one) => {
    const made = await writtenCase(one);
    for (const template of made.templates) {
      const { across, up } = expectedDims(template, sharpCorner(made, template));
      expectClose(distinct(valuesOf(template.dxf, LINEAR, 0)), across, `${template.path} across`);
      expectClose(distinct(valuesOf(template.dxf, LINEAR, 90)), up, `${template.path} up`);
    }
  });

  it.each(CASES)('$name: say slope and V', async (one) => {
    const made = await writtenCase(one);
    const slope = (Math.atan(slopeOf(made)) * 180) / Math.PI;
    for (const template of made.templates) {
      const expected = slope === 0 ? [] : acrossRidge(template) ? [slope, slope, 180 - 2 * slope] : [slope];
      const found = valuesOf(template.dxf, ANGULAR).sort((a, b) => a - b);
      expect(found, template.path).toHaveLength(expected.length);
      expected.forEach((value, i) => {
        expect(found[i]).toBeCloseTo(value, 6);
      });
    }
  });

  it('letters slopes in the wood, below the scribed edge, and the V above it', async () => {
    for (const { dxf, of } of await allTemplates()) {
      const outline = outlineOf(dxf);
      for (const dim of dimensionsOf(parseDxf(dxf)).filter((d) => (d.dimensionType & 7) === ANGULAR)) {
        const { x, y } = dim.middleOfText;
        expect(y < upperEdge(outline, x), `${of} ${dim.actualMeasurement}`).toBe(dim.actualMeasurement < 1);
      }
    }
  });

  it('letters 173.56 and 3.22 degrees and the round of the bearer', async () => {
    const { templates } = await writtenCase(CASES[0]!);
    for (const { dxf } of templates) {
      const angles = parseDxf(dxf).blocks;
      const texts = Object.values(angles).flatMap((block) =>
        (block.entities ?? []).flatMap((e) => (e.type === 'TEXT' ? [(e as unknown as { text: string }).text] : [])),
      );
      expect(texts.filter((text) => text.endsWith('%%d')).sort()).toEqual(['173.56%%d', '3.22%%d', '3.22%%d']);
      expect(texts).toContain('R1" (25.4)');
      expectClose(valuesOf(dxf, RADIUS), [25.4], 'radius');
    }
  });

  it('are what ezdxf measures from their points, and the file is sound to it', async ({ skip }) => {
    const all = await allTemplates();
    const reports = auditDxfs(all.map((t) => t.dxf)) ?? skip('left out: ezdxf is not installed');
    reports.forEach((report, i) => {
      const { of } = all[i]!;
      expect([...report.errors, ...report.fixes], of).toEqual([]);
      expect(report.header['$INSUNITS'], of).toBe(4);
      expect(report.dims.length, of).toBeGreaterThan(3);
      for (const dim of report.dims) {
        const stored = dim.type === ANGULAR ? (dim.actual * 180) / Math.PI : dim.actual;
        expect(dim.measurement, `${of} ${dim.text}`).toBeCloseTo(stored, 5);
      }
    });
  });
});
