import { describe, expect, it } from 'vitest';
import { cutDiagram } from '../../lib/derive/drawings/cut-diagram.ts';
import { type CutBoardOnPage, cutDiagramPages } from '../../lib/derive/drawings/cut-diagram-pages.ts';
import { roomOf } from '../../lib/derive/drawings/free-place.ts';
import { cutPlanOf } from '../../lib/derive/lumber/cut-plan/plan-cuts.ts';
import { loadSolver } from '../../lib/derive/lumber/master.ts';
import type { Entity } from '../../lib/drawing/drawing.ts';
import type { Text } from '../../lib/drawing/entity.ts';
import type { Board } from '../../lib/model/records.ts';
import { drawnProblem } from '../lumber/cut-plan/drawn-problem.ts';

const solver = await loadSolver();

/** Boards of a job drawn by lot, cut up. */
function views(seed: number): CutBoardOnPage[] {
  const problem = drawnProblem(24, 9, seed, 1.8);
  const { plan } = cutPlanOf(problem, solver, 60);
  return plan!.boards.map((own, row) => {
    const { length, width, avoid } = problem.boards.find((b) => b.id === own.board)!;
    const defects = avoid.map((zone) => ({ what: 'knot', ...zone, face: 'through' as const, depth: 27 }));
    const board: Board = { row, mark: own.board, thickness: 27, length, width, defects };
    return { board, plan: own, kerf: plan!.kerf, lumber: '5/4' };
  });
}

const isText = (entity: Entity): entity is Text => entity.kind === 'text';

/** Letters that stand on each other; rooms are shrunk by a tenth of a millimetre on paper, since touching is not crossing. */
function crossings(texts: readonly Text[], scale: number): string[] {
  const little = 0.1 * scale;
  const rooms = texts.map((text) => roomOf(text, scale));
  return texts.flatMap((a, i) =>
    texts.slice(i + 1).flatMap((b, k) => {
      const [p, q] = [rooms[i]!, rooms[i + 1 + k]!];
      const cross = ([0, 1] as const).every(
        (axis) => p.low[axis] + little < q.high[axis] && q.low[axis] + little < p.high[axis],
      );
      return cross ? [`${a.text} over ${b.text}`] : [];
    }),
  );
}

describe('cut diagrams', () => {
  const look = { scale: 10, say: (mm: number) => `${Math.round(mm)}` };
  const boards = [1, 2, 3].flatMap(views);

  it('name every part, number every cut once, and say where each cut runs', () => {
    for (const view of boards) {
      const texts = cutDiagram(view, look).filter(isText);
      const { cuts, placed, offcuts } = view.plan;
      const words = texts.map(({ text }) => text);
      for (const { part } of placed) expect(words).toContain(part);
      for (const { name } of offcuts) expect(words).toContain(`keep ${name}`);
      const numbers = texts.filter(({ layer }) => layer.name === 'CUT').map(({ text }) => Number(text));
      expect(numbers).toEqual(cuts.map((_, n) => n + 1));
      cuts.forEach(({ at }, n) => {
        const told = words.filter((word) => word.startsWith(`${Math.round(at)} (`)).join();
        const named = [...told.matchAll(/(\d+)-(\d+)|\b(\d+)\b/g)];
        expect(
          named.some(([, from, to, one]) => Number(one) === n + 1 || (n + 1 >= Number(from) && n + 1 <= Number(to))),
        ).toBe(true);
      });
    }
  });

  it('no letters stand on each other, and the test sees it when they do', () => {
    const found = boards.flatMap((view) => crossings(cutDiagram(view, look).filter(isText), look.scale));
    expect(found).toEqual([]);
    const [first] = cutDiagram(boards[0]!, look).filter(isText);
    expect(crossings([first!, first!], look.scale)).toHaveLength(1);
  });

  it('are dealt out to pages, each board once, in inches and in millimetres', () => {
    for (const units of ['in', 'mm'] as const) {
      const pages = cutDiagramPages(boards, { title: 'Table', units, warning: 'look here' });
      expect(pages.length).toBeGreaterThan(1);
      const words = pages.map(({ entities }) => entities.filter(isText).map(({ text }) => text));
      for (const page of words) expect(page).toContain('look here');
      expect(words.flat().filter((text) => text.startsWith('board '))).toHaveLength(boards.length);
    }
  });
});
