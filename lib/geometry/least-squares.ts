/** Coefficients of the columns whose sum comes nearest to the values, and how firmly they hold. */
export interface LeastSquares {
  readonly coefficients: readonly number[];
  /** Values less what the fit answers, in the order of the values. */
  readonly residuals: readonly number[];
  /** Variance of each coefficient for values of variance 1: the diagonal of (AᵀA)⁻¹. */
  readonly variances: readonly number[];
}

/** What of a column is new beside the columns before it must be more than this share of it. */
const NEW = 1e-9;

/**
 * Least squares by orthogonal columns (Gram and Schmidt, each column cleaned twice). Columns want to be of like size:
 * center and scale them first. Undefined when a column says nothing new.
 *
 * Source: Golub and Van Loan, Matrix Computations, section on modified Gram-Schmidt.
 */
export function leastSquares(
  columns: readonly (readonly number[])[],
  values: readonly number[],
): LeastSquares | undefined {
  const parts = orthogonal(columns);
  if (!parts) return undefined;
  const { units, upper } = parts;
  const coefficients = backwards(
    upper,
    units.map((unit) => dot(unit, values)),
  );
  const residuals = values.map((value, k) =>
    columns.reduce((rest, column, j) => rest - coefficients[j]! * column[k]!, value),
  );
  const inverse = units.map((_, j) =>
    backwards(
      upper,
      units.map((_, i) => (i === j ? 1 : 0)),
    ),
  );
  const variances = columns.map((_, i) => inverse.reduce((sum, column) => sum + column[i]! ** 2, 0));
  return { coefficients, residuals, variances };
}

interface Orthogonal {
  readonly units: readonly (readonly number[])[];
  /** Rows of the upper triangle. */
  readonly upper: readonly (readonly number[])[];
}

function orthogonal(columns: readonly (readonly number[])[]): Orthogonal | undefined {
  const units: number[][] = [];
  const upper = columns.map(() => columns.map(() => 0));
  for (const [j, column] of columns.entries()) {
    let rest = [...column];
    for (let again = 0; again < 2; again++) {
      for (const [i, unit] of units.entries()) {
        const share = dot(unit, rest);
        upper[i]![j]! += share;
        rest = rest.map((value, k) => value - share * unit[k]!);
      }
    }
    const size = Math.sqrt(dot(rest, rest));
    if (!(size > NEW * Math.sqrt(dot(column, column)))) return undefined;
    upper[j]![j] = size;
    units.push(rest.map((value) => value / size));
  }
  return { units, upper };
}

function backwards(upper: readonly (readonly number[])[], right: readonly number[]): number[] {
  const found = right.map(() => 0);
  for (let i = right.length - 1; i >= 0; i--) {
    const known = found.reduce((sum, value, j) => (j > i ? sum + upper[i]![j]! * value : sum), 0);
    found[i] = (right[i]! - known) / upper[i]![i]!;
  }
  return found;
}

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, k) => sum + value * b[k]!, 0);
