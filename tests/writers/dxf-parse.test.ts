import type { ICircleEntity, ILwpolylineEntity, ITextEntity } from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { explode } from '../../lib/drawing/explode.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';
import { writeDxf } from '../../lib/writers/dxf.ts';
import { LEG, LEG_TEXTS, linear, radius } from '../drawing/samples.ts';
import { dimensionsOf, parseDxf } from '../readers/dxf-parse.ts';

/** The reader here is the npm package dxf-parser. */
describe('a leg, read again by dxf-parser', () => {
  const file = parseDxf(writeDxf(LEG));

  test('is in millimetres', () => {
    expect(file.header['$INSUNITS']).toBe(4);
    expect(file.header['$MEASUREMENT']).toBe(1);
    expect(file.header['$ACADVER']).toBe('AC1015');
  });

  test('has its layers with their colors, and the linetypes', () => {
    const { layers } = file.tables.layer;
    expect(Object.keys(layers)).toEqual(['0', 'OUTLINE', 'MORTISE', 'BORE', 'HIDDEN', 'TEXT', 'DIMENSION']);
    expect(layers['MORTISE']!.colorIndex).toBe(5);
    expect(Object.keys(file.tables.lineType.lineTypes)).toEqual(expect.arrayContaining(['DASHED', 'CENTER', 'DIVIDE']));
  });

  test('has the outline, the bulges of the mortise, the bore and the lettering', () => {
    const polys = file.entities.filter((entity) => entity.type === 'LWPOLYLINE') as ILwpolylineEntity[];
    expect(polys.map((one) => [one.layer, one.shape])).toEqual([
      ['OUTLINE', true],
      ['MORTISE', true],
    ]);
    expect(polys[0]!.vertices.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [89, 0],
      [89, 347.5],
      [44.5, 346.25],
      [0, 347.5],
    ]);
    expect(polys[1]!.vertices.map((vertex) => vertex.bulge || 0)).toEqual([0, 1, 0, 1]);
    const bore = file.entities.find((entity) => entity.type === 'CIRCLE') as ICircleEntity;
    expect([bore.center.x, bore.center.y, bore.radius]).toEqual([44.5, 100, 4]);
    const text = file.entities.find((entity) => entity.type === 'TEXT') as ITextEntity;
    expect([text.text, text.textHeight, text.halign, text.valign]).toEqual(['A1 & <left>', 3.5, 1, 2]);
  });

  test('every dimension has its own block, its exact value and its text', () => {
    const dims = dimensionsOf(file);
    const models = LEG.entities.flatMap((entity) => (entity.kind === 'dim' ? [explode(entity, LEG.style)] : []));
    expect(dims.map((dim) => dim.block)).toEqual(models.map((_, i) => `*D${i + 1}`));
    dims.forEach((dim, i) => {
      const { def, value, textAt } = models[i]!;
      expect(dim.actualMeasurement).toBeCloseTo(def.type === 'angular' ? (value * Math.PI) / 180 : value, 7);
      expect(dim.middleOfText.x).toBeCloseTo(textAt[0], 7);
      expect(dim.middleOfText.y).toBeCloseTo(textAt[1], 7);
    });
    expect(dims[1]!.actualMeasurement).toBe(347.5); // though its text says 13 3/8"
    expect(dims[1]!.text).toBe('13 3/8"');
    expect(dims.map((dim) => dim.dimensionType! - 160)).toEqual([0, 0, 0, 0, 1, 2, 4, 3]);
    expect(dims[3]!.angle).toBe(30);
    expect(dims[4]!.angle).toBeCloseTo((Math.atan2(-1.25, 44.5) * 180) / Math.PI + 360, 6);
  });

  test('the block of a dimension holds its picture: lines, filled arrowheads and the lettering', () => {
    const lettered = dimensionsOf(file).map(({ block }) => {
      const { entities } = file.blocks[block]!;
      expect(entities.filter((entity) => entity.type === 'SOLID').length).toBeGreaterThan(0);
      return entities.filter((entity) => entity.type === 'TEXT').map((entity) => (entity as ITextEntity).text);
    });
    const signs = LEG_TEXTS.map((text) => text.replace('\u00b0', '%%d').replace('\u00d8', '%%c'));
    expect(lettered).toEqual(signs.map((text) => [text]));
  });
});

describe('the text of a dimension that stays live', () => {
  const texts = (style: typeof DEFAULT_STYLE): readonly string[] =>
    dimensionsOf(
      parseDxf(
        writeDxf({
          title: '',
          style,
          entities: [
            ...LEG.entities.filter((entity) => entity.kind === 'dim').slice(4),
            radius([0, 0], [30, 0]),
            linear([0, 0], [30, 0], 0, [0, 9], { text: '2 x <>' }),
          ],
        }),
      ),
    ).map((dim) => dim.text);

  test('in millimetres, with the sign that an empty text would lose', () => {
    const mm = { ...DEFAULT_STYLE, lengths: { system: 'mm', decimals: 1 } } as const;
    expect(texts(mm)).toEqual(['<>', '<>', 'R<>', '%%c<>', 'R<>', '2 x 30']);
  });

  test('fractions are written out', () => {
    expect(texts(DEFAULT_STYLE)).toEqual(['1 3/4"', '<>', 'R5/16"', '%%c5/16"', 'R1 3/16"', '2 x 1 3/16"']);
  });
});

test('paper sizes go to header and style with the scale beside them', () => {
  const file = parseDxf(writeDxf({ ...LEG, style: { ...DEFAULT_STYLE, scale: 10 } }));
  expect(file.header).toMatchObject({ $DIMSCALE: 10, $DIMTXT: 2.5, $DIMASZ: 2.5, $LTSCALE: 10 });
  const text = file.entities.find((entity) => entity.type === 'TEXT') as ITextEntity;
  expect(text.textHeight).toBe(35);
});
