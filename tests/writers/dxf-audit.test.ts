import { describe, expect, test } from 'vitest';
import type { Dim } from '../../lib/drawing/dim.ts';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import type { Pt } from '../../lib/drawing/entity.ts';
import { explode } from '../../lib/drawing/explode.ts';
import { LAYERS } from '../../lib/drawing/layers.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';
import { writeDxf } from '../../lib/writers/dxf.ts';
import { aligned, angular, diameter, LEG, LEG_TEXTS, linear, poly, radius, ray, running } from '../drawing/samples.ts';
import { type AuditReport, auditDxf } from '../readers/dxf-audit.ts';

const LEFT_OUT =
  'left out: ezdxf (python3-ezdxf of Debian) is not installed, so no second reader has checked the DXF file';

const at: Pt = [120, 80];

/** 1.6 degrees from `start` on, the lines in either order: clockwise rays would measure 358.4. */
const narrow = (start: number, swapped: boolean): Dim => {
  const [a, b] = [ray(at, start, 90), ray(at, start + 1.6, 90)] as const;
  return swapped
    ? angular([b, at], [a, at], ray(at, start + 0.8, 100))
    : angular([at, a], [at, b], ray(at, start + 0.8, 100));
};

const KINDS: readonly (readonly [string, Dim, number])[] = [
  ['horizontal', linear([0, 0], [90, 2.5], 0, [0, 20]), 90],
  ['vertical', linear([0, 0], [30, 2.5], 90, [50, 0]), 2.5],
  ['rotated by 30', linear([0, 0], [40, 30], 30, [0, 60]), 40 * Math.cos(Math.PI / 6) + 15],
  ['rotated, the points in reverse', linear([40, 30], [0, 0], 210, [0, 60]), 40 * Math.cos(Math.PI / 6) + 15],
  ['aligned, 90.035', aligned([0, 0], [90, 2.5], [0, 20]), Math.hypot(90, 2.5)],
  ['aligned backwards', aligned([90, 2.5], [0, 0], [0, 20]), Math.hypot(90, 2.5)],
  ['radius', radius([10, 10], [13, 14]), 5],
  ['radius inside', radius([10, 10], [130, 10]), 120],
  ['diameter', diameter([10, 10], [13, 14]), 10],
  ['running along x', running(0, 412.5, 0), 412.5],
  ['running up, to the lower hand of its datum', running(480, 285, 1), 195],
  ['arrowheads outside', linear([0, 0], [3, 0], 0, [0, 20]), 3],
  [
    'a right angle',
    angular(
      [
        [0, 0],
        [50, 0],
      ],
      [
        [0, 0],
        [0, 50],
      ],
      [20, 20],
    ),
    90,
  ],
  [
    'an angle across the vertex',
    angular(
      [
        [0, 0],
        [50, 0],
      ],
      [
        [0, 0],
        [50, 50],
      ],
      ray([0, 0], 202, 40),
    ),
    45,
  ],
  ...[0, 45, 100, 180, 190, 270, 300, 359].flatMap((start) => [
    [`1.6 degrees at ${start}`, narrow(start, false), 1.6] as const,
    [`1.6 degrees at ${start}, swapped`, narrow(start, true), 1.6] as const,
  ]),
];

const every: Drawing = { title: 'every kind', style: DEFAULT_STYLE, entities: KINDS.map(([, dim]) => dim) };

function audit(drawing: Drawing, skip: (note: string) => never): AuditReport {
  const report = auditDxf(writeDxf(drawing));
  return report ?? skip(LEFT_OUT);
}

/** The reader here is ezdxf: its audit, and its own measuring of the definition points. */
describe('read strictly by ezdxf', () => {
  test('nothing to complain of, nothing to mend', ({ skip }) => {
    for (const drawing of [LEG, every, { ...LEG, style: { ...DEFAULT_STYLE, scale: 10 } }]) {
      const report = audit(drawing, skip);
      expect(report.errors).toEqual([]);
      expect(report.fixes).toEqual([]);
      expect(report.version).toBe('AC1015');
      expect(report.dims).toHaveLength(drawing.entities.filter((entity) => entity.kind === 'dim').length);
    }
  });

  test('an empty drawing is a file as well', ({ skip }) => {
    const report = audit({ ...LEG, entities: [] }, skip);
    expect([report.errors, report.fixes, report.kinds]).toEqual([[], [], []]);
  });

  test('what it measures is what the file says, what the model says, and what was drawn', ({ skip }) => {
    const { dims } = audit(every, skip);
    KINDS.forEach(([name, dim, value], i) => {
      const read = dims[i]!;
      const stored = dim.type === 'angular' ? (read.actual * 180) / Math.PI : read.actual;
      expect(read.measurement, name).toBeCloseTo(value, 5);
      expect(stored, name).toBeCloseTo(value, 5);
      expect(explode(dim, DEFAULT_STYLE).value, name).toBeCloseTo(value, 9);
    });
  });

  test('units, layers, line widths and lettering arrive', ({ skip }) => {
    const report = audit(LEG, skip);
    expect(report.header).toMatchObject({ $INSUNITS: 4, $MEASUREMENT: 1, $DIMTXT: 2.5, $DIMTAD: 1, $DIMDSEP: 46 });
    expect(report.layers).toContainEqual({ name: 'MORTISE', color: 5, linetype: 'Continuous', lineweight: 50 });
    expect(report.layers).toContainEqual({ name: 'HIDDEN', color: 7, linetype: 'DASHED', lineweight: 25 });
    expect(report.texts).toEqual(['A1 & <left>']);
    expect(report.dims.map((dim) => dim.blockTexts)).toEqual(LEG_TEXTS.map((text) => [text]));
    expect(new Set(report.dims.map((dim) => `${dim.layer} ${dim.style}`))).toEqual(new Set(['DIMENSION SHOP']));
  });

  test('the audit does find a fault: a dimension whose block is missing', ({ skip }) => {
    const text = writeDxf({ ...LEG, entities: [linear([0, 0], [9, 0], 0, [0, 9])] });
    const broken = text.replace('AcDbDimension\r\n  2\r\n*D1\r\n', 'AcDbDimension\r\n  2\r\n*D7\r\n');
    expect(broken).not.toBe(text);
    const report = auditDxf(broken) ?? skip(LEFT_OUT);
    expect(report.fixes.length).toBeGreaterThan(0);
  });

  test('every layer of the shop', ({ skip }) => {
    const entities = Object.values(LAYERS).map((layer, i) => ({
      ...poly([
        [0, i],
        [9, i],
      ]),
      layer,
    }));
    const report = audit({ ...LEG, entities }, skip);
    expect([...report.errors, ...report.fixes]).toEqual([]);
    expect(report.layers.map((layer) => layer.name)).toEqual(expect.arrayContaining(Object.keys(LAYERS)));
  });
});
