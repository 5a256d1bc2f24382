import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import design from '../../designs/reading-table/design.ts';
import { checkContext } from '../../lib/build/job.ts';
import { runChecks } from '../../lib/derive/checks/checks.ts';
import { leanedTop } from '../../lib/derive/checks/leaned-top.ts';
import { assemblePlate } from '../../lib/derive/checks/solvers/plate/assemble.ts';
import { type BlockBand, placeOf } from '../../lib/derive/checks/solvers/plate/band.ts';
import { deflectionAt } from '../../lib/derive/checks/solvers/plate/field.ts';
import { DEFLECTION_GRID, STRESS_GRID } from '../../lib/derive/checks/solvers/plate/grid.ts';
import { nodeLoads } from '../../lib/derive/checks/solvers/plate/loads.ts';
import { type FactoredPlate, factorPlate, solvePlate } from '../../lib/derive/checks/solvers/plate/solve.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { defineShop } from '../../lib/shop/shop.ts';
import { trestleTable } from '../../lib/tables/trestle/trestle-table.ts';
import { tableText } from '../../lib/writers/table-text.ts';
import { ms, type Timing, time } from './clock.ts';

/** All checks of the demo, the plate alone, and the plate's equations given to a general dense solver. */
export async function checksBench(): Promise<string> {
  const values = readValues(design.params, design.values).values!;
  const assembly = trestleTable(values);
  const context = checkContext(design, values, assembly, defineShop());
  const { tune, ...plain } = context;
  const all = time(() => void runChecks(plain), 40);
  const withFixes = time(() => void runChecks({ ...plain, ...(tune ? { tune } : {}) }), 10);

  const corner = [0, -assembly.parts.find((p) => p.id === 'top')!.finished.width / 2] as const;
  const load = [{ kind: 'point' as const, at: corner, force: 1000 }];
  const coarse = leanedTop(assembly, DEFLECTION_GRID.value).top!.plate.plate;
  const fine = leanedTop(assembly, STRESS_GRID.value).top!.plate.plate;
  let band = 0;
  const deflection = time(() => {
    band = deflectionAt(solvePlate(factorPlate(coarse), load), corner);
  }, 40);
  const stress = time(() => void solvePlate(factorPlate(fine), load), 20);
  let dense = 0;
  const general = time(() => {
    dense = denseDeflection(coarse, load, corner);
  }, 1);

  const row = (name: string, t: Timing, ratio: string): string[] => [name, ms(t.first), ms(t.median), ratio];
  const rows = [
    row('all checks of the reading-room table', all, ''),
    row('the same, with fixes found by trying', withFixes, `${(withFixes.median / all.median).toFixed(1)} x`),
    row('plate 42 x 16, one corner load', deflection, '1.0 x'),
    row('plate 84 x 32', stress, `${(stress.median / deflection.median).toFixed(1)} x`),
    row('plate 42 x 16, dense Cholesky of ml-matrix', general, `${(general.median / deflection.median).toFixed(0)} x`),
  ];
  const right = (head: string) => ({ head, align: 'right' as const });
  const table = tableText([{ head: '' }, right('first'), right('median'), right('ratio')], rows);
  return `checks\n${table}\nthe corner goes down ${band.toFixed(6)} mm, by the dense solver ${dense.toFixed(6)} mm`;
}

function denseDeflection(
  plate: Parameters<typeof factorPlate>[0],
  load: Parameters<typeof solvePlate>[1],
  at: readonly [number, number],
): number {
  const assembled = assemblePlate(plate);
  const matrix = full(assembled.stiffness);
  const right = Matrix.columnVector([...nodeLoads(assembled, load)]);
  const moves = Float64Array.from(new CholeskyDecomposition(matrix).solve(right).getColumn(0));
  return deflectionAt({ plate: { ...assembled, factored: true } as FactoredPlate, moves }, at);
}

/** The stored half of the band, mirrored. */
function full(band: BlockBand): Matrix {
  const size = 3 * band.nodes;
  const matrix = Matrix.zeros(size, size);
  for (let row = 0; row < size; row++) {
    const p = Math.floor(row / 3);
    for (let column = 3 * Math.max(0, p - band.reach); column <= row; column++) {
      const q = Math.floor(column / 3);
      const value = band.values[placeOf(band, p, q, row - 3 * p) + column - 3 * q]!;
      matrix.set(row, column, value);
      matrix.set(column, row, value);
    }
  }
  return matrix;
}
