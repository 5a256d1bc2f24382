import type { Solver, WholeAnswer, WholeWork } from '../../../lib/derive/lumber/master.ts';
import type { StripProblem, StripTerms } from '../../../lib/derive/lumber/strip-plan/strip-problem.ts';
import type { Board } from '../../../lib/model/records.ts';

/** One row of the program and what stands in it. */
type Row = { readonly low: number; readonly high: number };

/**
 * The strip problem as a program in whole numbers, for a general solver to judge by. It knows nothing of slides or of bounds: the
 * seams are free, and every strip may say on which side of the center line it lies. The underside, the wish for symmetry, pins
 * and a seam on the center line are left out.
 */
export function judgeByProgram(solver: Solver, problem: StripProblem, work: WholeWork): WholeAnswer {
  const writer = new Writer(problem);
  writer.write();
  const program = solver.program();
  for (const { low, high } of writer.rows) program.addRow(low, high);
  for (const { cost, low, high, whole, entries } of writer.columns) {
    const column = program.addColumn(cost, low, high, {
      rows: entries.map(([row]) => row),
      values: entries.map(([, value]) => value),
    });
    if (whole) program.makeWhole(column);
  }
  const answer = program.solveWhole(work);
  program.dispose();
  const { reserve } = writer.weights;
  const fixed = reserve * problem.settings.reserveCap;
  return { ...answer, value: answer.value + fixed, bound: answer.bound + fixed };
}

interface Column {
  readonly cost: number;
  readonly low: number;
  readonly high: number;
  readonly whole: boolean;
  readonly entries: [number, number][];
}

class Writer {
  readonly rows: Row[] = [];
  readonly columns: Column[] = [];
  readonly weights: StripTerms;
  private readonly problem: StripProblem;
  private readonly strips: number;
  private readonly half: number;

  constructor(problem: StripProblem) {
    const { settings, width } = problem;
    this.problem = problem;
    this.weights = (settings.preference as { readonly weights: StripTerms }).weights;
    this.strips = settings.strips;
    this.half = width / 2 + settings.kerf / 2 + settings.jointing + settings.edgeTrim;
  }

  write(): void {
    const { problem, strips, half, weights } = this;
    const { settings, boards } = problem;
    const slope = (problem.centerThickness - problem.edgeThickness) / (problem.width / 2);
    const each = <T>(make: (j: number) => T): T[] => Array.from({ length: strips }, (_, j) => make(j));
    const once = boards.map(() => this.row(-Infinity, 1));
    const oneShow = each(() => this.row(1, 1));
    const least = settings.layers === 'two' ? 1 : 0;
    const oneBottom = each(() => this.row(least, settings.layers === 'one' ? 0 : 1));
    const narrow = each((j) => this.row(settings.leastWidth - this.ends(j), Infinity));
    const withinShow = each((j) => this.row(-Infinity, -this.ends(j)));
    const large = 2 * half;
    const withinBottom = each((j) => this.row(-Infinity, large - this.ends(j)));
    const thick = each(() => this.row(problem.centerThickness + settings.cleanUp, Infinity));
    const side = each(() => this.row(-Infinity, 0));
    const onLeft = each((j) => this.row(-Infinity, large - (j === strips - 1 ? half : 0)));
    const onRight = each((j) => this.row(-Infinity, large - (j === 0 ? half : 0)));
    const between = Array.from({ length: strips - 1 }, (_, k) => k + 1);
    const lighter = between.map(() => this.row(0, Infinity));
    const darker = between.map(() => this.row(0, Infinity));
    const bothUp = between.map(() => this.row(-Infinity, 1));
    const bothDown = between.map(() => this.row(1, Infinity));
    boards.forEach((board, i) => {
      const wide = board.width - 2 * settings.jointing;
      const fits = board.length >= problem.length && wide >= settings.leastWidth;
      // biome-ignore lint/complexity/noExcessiveCognitiveComplexity: one condition after the other
      each((j) => {
        for (const up of [true, false]) {
          const entries: [number, number][] = [
            [once[i]!, 1],
            [oneShow[j]!, 1],
            [withinShow[j]!, -wide],
            [thick[j]!, board.thickness],
          ];
          if (j > 0) entries.push([lighter[j - 1]!, -board.tone!], [darker[j - 1]!, board.tone!]);
          if (j < strips - 1) entries.push([lighter[j]!, board.tone!], [darker[j]!, -board.tone!]);
          if (up && j > 0) entries.push([bothUp[j - 1]!, 1], [bothDown[j - 1]!, 1]);
          if (up && j < strips - 1) entries.push([bothUp[j]!, 1], [bothDown[j]!, 1]);
          this.whole(fits ? 1 : 0, this.showCost(board, up), entries);
        }
        this.whole(fits ? 1 : 0, weights.volume * this.litres(board), [
          [once[i]!, 1],
          [oneBottom[j]!, 1],
          [withinBottom[j]!, large - wide],
          [thick[j]!, board.thickness],
        ]);
      });
    });
    const reserve: [number, number][] = thick.map((row) => [row, -1]);
    this.column(-weights.reserve, 0, settings.reserveCap, false, reserve);
    for (const k of between) {
      this.column(0, -half, half, false, [
        [narrow[k - 1]!, 1],
        [withinShow[k - 1]!, 1],
        [withinBottom[k - 1]!, 1],
        [narrow[k]!, -1],
        [withinShow[k]!, -1],
        [withinBottom[k]!, -1],
        [onLeft[k - 1]!, 1],
        [onRight[k]!, -1],
      ]);
      this.column(weights.tone, 0, 1, false, [
        [lighter[k - 1]!, 1],
        [darker[k - 1]!, 1],
      ]);
      const alike = settings.rings === 'alternate' ? weights.rings : 0;
      this.column(alike, 0, 1, false, [
        [bothUp[k - 1]!, -1],
        [bothDown[k - 1]!, 1],
      ]);
    }
    each((j) => {
      this.column(0, 0, half, false, [
        [thick[j]!, slope],
        [side[j]!, 1],
        [onLeft[j]!, 1],
        [onRight[j]!, 1],
      ]);
      this.whole(1, 0, [
        [side[j]!, -half],
        [onLeft[j]!, large],
      ]);
      this.whole(1, 0, [
        [side[j]!, -half],
        [onRight[j]!, large],
      ]);
    });
  }

  /** What the two fixed edges of the blank put into the width of a strip. */
  private ends(j: number): number {
    return (j === 0 ? this.half : 0) + (j === this.strips - 1 ? this.half : 0);
  }

  private row(low: number, high: number): number {
    return this.rows.push({ low, high }) - 1;
  }

  private column(cost: number, low: number, high: number, whole: boolean, entries: [number, number][]): void {
    this.columns.push({ cost, low, high, whole, entries });
  }

  private whole(high: number, cost: number, entries: [number, number][]): void {
    this.column(cost, 0, high, true, entries);
  }

  private litres(board: Board): number {
    const { scarceFrom, scarcePremium } = this.problem.settings;
    const litres = (board.thickness * board.width * board.length) / 1e6;
    return litres * (board.thickness >= scarceFrom ? 1 + scarcePremium : 1);
  }

  private showCost(board: Board, barkUp: boolean): number {
    const { length, settings } = this.problem;
    const bark = board.bark ?? 'A';
    const face = barkUp === (bark === 'A') ? 'A' : 'B';
    const spare = board.length - length;
    const starts = [0, spare, ...board.defects.flatMap((d) => [d.from, d.to, d.from - length, d.to - length])];
    const shown = starts
      .filter((start) => start >= 0 && start <= spare)
      .map((start) =>
        board.defects.reduce((sum, d) => {
          if (d.face !== face && d.face !== 'through') return sum;
          if (d.depth <= settings.cleanUp / 2) return sum;
          const long = Math.min(d.to, start + length) - Math.max(d.from, start);
          return sum + (Math.max(0, long) * (d.far - d.near)) / 1e4;
        }, 0),
      );
    return this.weights.shownDefects * Math.min(...shown) + this.weights.volume * this.litres(board);
  }
}
