import { describe, expect, it } from 'vitest';
import { coverPage } from '../../lib/derive/templates/cover-page.ts';
import { PRINT_PAPERS } from '../../lib/derive/templates/print-papers.ts';
import { templates } from '../../lib/derive/templates/templates.ts';
import { tilingOf } from '../../lib/derive/templates/tiling.ts';
import { clipMarks } from '../../lib/drawing/clip-marks.ts';
import type { Text } from '../../lib/drawing/entity.ts';
import { letterWidth } from '../../lib/drawing/letter-width.ts';
import { jobOf } from '../written.ts';

const CASES = [
  ['reading-table', {}],
  ['meeting-table', {}],
  ['study-table', {}],
  ['reading-table', { 'frame.kind': 'posts' }],
] as const;

describe('the map on the cover of a template', () => {
  it.each(CASES)('%s %j: names every sheet, where no line of the outline runs through the words', (name, changes) => {
    const { assembly, design } = jobOf(name, changes);
    for (const template of templates(assembly, design)) {
      for (const paper of PRINT_PAPERS) {
        const of = `${template.part.mark} ${paper.name}`;
        const tiling = tilingOf(template, paper);
        const { marks } = coverPage(template, tiling, paper, design);
        const lines = marks.filter(({ layer }) => layer.name === 'OUTLINE' || layer.name === 'SAW-LINE');
        expect(lines.length, of).toBe(2);
        const words = marks.filter((m): m is Text => m.kind === 'text' && /^(?:[A-Z]\d+|sheet \d+)$/.test(m.text));
        expect(words.length, of).toBe(2 * tiling.tiles.length);
        for (const { text, at, height, bold } of words) {
          const box = { min: at, max: [at[0] + letterWidth(text, height, bold), at[1] + height] } as const;
          expect(clipMarks(lines, box), `${of}: ${text}`).toEqual([]);
        }
      }
    }
  });
});
