import { describe, expect, it } from 'vitest';
import { PRINT_PAPERS } from '../../lib/derive/templates/print-papers.ts';
import { tablePages } from '../../lib/derive/templates/table-pages.ts';
import { type Template, templates } from '../../lib/derive/templates/templates.ts';
import type { Page } from '../../lib/drawing/page.ts';
import { windowOn } from '../../lib/drawing/tile-grid.ts';
import type { Surface } from '../../lib/geometry/surface.ts';
import { trestleTable } from '../../lib/tables/trestle/trestle-table.ts';
import type { TrestleValues } from '../../lib/tables/trestle/values.ts';
import { type Changes, DESIGNS, jobOf, valuesOf } from '../written.ts';

const table = DESIGNS['reading-table'];
const heading = { ...table, bitLength: 50.8 };

/** The wedge of the demo in the frame of the top, y to the right, its left half 1.5 mm deeper than designed. */
const MEASURED: Surface = {
  take: 'lowest',
  planes: [
    { name: 'left', a: 0, b: 0.05625, c: 57.15 + 1.5 },
    { name: 'right', a: 0, b: -0.05625, c: 57.15 },
  ],
};

function made(changes: Changes, underside?: Surface): Template[] {
  const { assembly } = jobOf('reading-table', changes);
  if (!underside) return templates(assembly, heading);
  const values = valuesOf(table, changes) as unknown as TrestleValues;
  return templates(trestleTable(values, table.title, { underside }), heading, assembly);
}

const textsOf = ({ marks }: Page): string[] => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

/** How many rows of the table of places are on each page: a row ends in what is measured to. */
const rowsOn = (page: Page): number => textsOf(page).filter((text) => /^its (ends|middle)$/.test(text)).length;

describe('notes and tables of a template', () => {
  const cases = [
    ['as designed', made({})],
    ['cleats', made({ 'frame.kind': 'panel' })],
    ['measured', made({}, MEASURED)],
    ['cleats, measured', made({ 'frame.kind': 'panel' }, MEASURED)],
  ] as const;
  const all = cases.flatMap(([name, made]) =>
    made.flatMap(({ face }) =>
      PRINT_PAPERS.map((paper) => ({
        of: `${name}, ${face.parts[0].mark}, ${paper.name}`,
        face,
        paper,
        pages: tablePages(face, paper, heading),
      })),
    ),
  );

  it('have some that need a second page', () => {
    expect(all.filter(({ pages }) => pages.length === 1).length).toBeGreaterThan(1);
    expect(all.filter(({ pages }) => pages.length === 2).length).toBeGreaterThan(3);
  });

  it('keep the table of places whole, its title over it', () => {
    for (const { of, face, pages } of all) {
      const rows = pages.map(rowsOn).filter((count) => count > 0);
      expect(rows, of).toEqual(face.pockets.length > 0 ? [face.pockets.length] : []);
      const titled = pages.filter((page) => textsOf(page).some((text) => text.startsWith('places on the face')));
      expect(titled.map(rowsOn), of).toEqual(rows);
    }
  });

  it('keep what stands below a table on its page, and inside its borders', () => {
    for (const { of, paper, pages } of all) {
      const { min, max } = windowOn(paper);
      const page = pages.find((one) => textsOf(one).some((text) => text.startsWith('offsets from')))!;
      expect(textsOf(page), of).toContain('heights are rounded up, so that wood is left');
      for (const { marks } of pages) {
        const lines = marks.flatMap((mark) => (mark.kind === 'poly' ? mark.points.map(([, y]) => y) : []));
        expect(Math.min(...lines), of).toBeGreaterThanOrEqual(min[1] - 1e-9);
        expect(Math.max(...lines), of).toBeLessThanOrEqual(max[1]);
      }
    }
  });
});

describe('the slopes of a template', () => {
  const slopesOf = ({ drawing }: Template): string[] =>
    drawing.entities.flatMap((one) => (one.kind === 'text' && /slope/.test(one.text) ? [one.text] : []));

  // atan(1.125 / 20) is 3.22 deg for both; 9/16 in rise in 10.
  it('are one line where both are the same', () => {
    expect(made({}).map(slopesOf)).toEqual([['slope 3.22 deg, 9/16" in 10"']]);
  });

  // The left half of the top falls 0.06 a mm: atan(0.06) is 3.43 deg, and 0.6 in is 38.4 sixty-fourths.
  it('say which is left and which is right, as the sheet shows them', () => {
    const steeper: Surface = { ...MEASURED, planes: [{ name: 'left', a: 0, b: 0.06, c: 57.15 }, MEASURED.planes[1]!] };
    const both = made({}, steeper);
    const [wide, plain] = ['slope 3.43 deg, 19/32" in 10"', 'slope 3.22 deg, 9/16" in 10"'];
    expect(both.map(({ face }) => face.parts[0].mark)).toEqual(['B1', 'B2']);
    // The outer face of frame A is seen from the reference end, where the left half of the top is on the left.
    expect(both.map(slopesOf)).toEqual([
      [`left: ${wide}`, `right: ${plain}`],
      [`left: ${plain}`, `right: ${wide}`],
    ]);
  });
});
