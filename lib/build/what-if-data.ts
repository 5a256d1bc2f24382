import { type Column, columnsOf } from '../derive/what-if/columns.ts';
import { isNow, type Trial, type WhatIf } from '../derive/what-if/what-if.ts';
import { type Finding, VERDICTS, type Verdict, worst } from '../model/finding.ts';

/** A what-if for other programs: the axes, every column with its limit, and a row for each trial. */
export interface WhatIfData {
  readonly vary: readonly {
    readonly path: string;
    readonly label: string;
    /** The value of the design as it stands. */
    readonly now: string;
    readonly values: readonly string[];
  }[];
  readonly columns: readonly Pick<Column, 'check' | 'unit' | 'limit' | 'direction'>[];
  readonly rows: readonly WhatIfDataRow[];
}

export type WhatIfDataRow = {
  /** By path. */
  readonly values: Readonly<Record<string, Given>>;
  readonly now: boolean;
} & (
  | { readonly allowed: false; readonly because: string }
  | {
      readonly allowed: true;
      readonly verdict: Verdict;
      readonly counts: { readonly [V in Verdict]: number };
      /** kg. */
      readonly mass: number;
      readonly boardFeet: number;
      /** In the order of the columns; null where a check has nothing to say. */
      readonly cells: readonly (Cell | null)[];
    }
);

/** Text as it would be typed; lengths also in mm, other numbers in their unit. */
interface Given {
  readonly text: string;
  readonly number?: number | undefined;
}

type Cell = Pick<Finding, 'verdict' | 'part' | 'where' | 'value' | 'limit' | 'because'>;

export function whatIfData(result: WhatIf): WhatIfData {
  const columns = columnsOf(result.trials);
  return {
    vary: result.axes.map(({ path, label, now, steps }) => ({
      path,
      label,
      now: now.text,
      values: steps.map(({ text }) => text),
    })),
    columns: columns.map(({ check, unit, limit, direction }) => ({ check, unit, limit, direction })),
    rows: result.trials.map((trial, k) => rowOf(result, trial, columns, k)),
  };
}

function rowOf(result: WhatIf, trial: Trial, columns: readonly Column[], k: number): WhatIfDataRow {
  const values = Object.fromEntries(result.axes.map(({ path, steps }, axis) => [path, steps[trial.at[axis]!]!]));
  const head = { values, now: isNow(result, trial) };
  if (trial.refused !== undefined) return { ...head, allowed: false, because: trial.refused };
  const { findings, mass, boardFeet } = trial;
  const counts = Object.fromEntries(
    VERDICTS.map((verdict) => [verdict, findings.filter((one) => one.verdict === verdict).length]),
  ) as { readonly [V in Verdict]: number };
  const cells = columns.map(({ cells }) => cellOf(cells[k]));
  return { ...head, allowed: true, verdict: worst(findings), counts, mass, boardFeet, cells };
}

function cellOf(finding: Finding | undefined): Cell | null {
  if (!finding) return null;
  const { verdict, part, where, value, limit, because } = finding;
  return {
    verdict,
    part,
    ...(where === undefined ? {} : { where }),
    ...(value === undefined ? {} : { value }),
    ...(limit === undefined ? {} : { limit }),
    because,
  };
}
