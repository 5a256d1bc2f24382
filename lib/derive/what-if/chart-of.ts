import { worst, worstFirst } from '../../model/finding.ts';
import { look, massLook, type NumberLook } from '../../model/finding-number.ts';
import { formatNumber, type UnitSystem } from '../../units/format-length.ts';
import type { Chart, GridPanel, LineMark, LinePanel } from './chart.ts';
import { bordersOf, cellAxis, chartAxis } from './chart-axis.ts';
import { changingColumns, isWell, limitText, lookOf, rangeText } from './column-look.ts';
import { type Column, columnsOf } from './columns.ts';
import { scaleFor } from './scale.ts';
import type { Trial, WhatIf } from './what-if.ts';

export interface ChartWords {
  readonly title: string;
  readonly units: UnitSystem;
}

/** Checks that are drawn; more only where not everything is ok. */
const MOST_LINES = 16;
const MOST_GRIDS = 9;

/** What is to be drawn of a what-if: a panel for each check that changes, and for mass and board feet. */
export function chartOf(result: WhatIf, { title, units }: ChartWords): Chart {
  const known = columnsOf(result.trials);
  const all = changingColumns(known, units);
  const most = result.axes.length > 1 ? MOST_GRIDS : MOST_LINES;
  const columns = all.filter((column, k) => k < most || isWell(false)(column));
  const rest = all.filter((column) => !columns.includes(column)).map((column) => rangeText(column, known, units));
  const what = result.axes.map(({ label, path }) => `${label} (${path})`).join(' and ');
  return {
    title,
    subtitle: `What changes with ${what}`,
    panels: result.axes.length > 1 ? gridPanels(result, columns, units) : linePanels(result, columns, units),
    rest: rest.length > 0 ? `Also changing, ok throughout: ${rest.join('; ')}` : '',
  };
}

function linePanels(result: WhatIf, columns: readonly Column[], units: UnitSystem): LinePanel[] {
  const { trials } = result;
  const number = (trial: Trial, value: (tried: Exclude<Trial, { refused: string }>) => number): number | undefined =>
    trial.refused === undefined ? value(trial) : undefined;
  const mass = trials.map((trial) => number(trial, (tried) => tried.mass));
  const weight = massLook(units);
  const feet = trials.map((trial) => number(trial, (tried) => tried.boardFeet));
  return [
    ...columns.map((column) => {
      const look = lookOf(column, units);
      const note = [look.unit, limitText(column, units)].filter(Boolean).join(', ');
      const cells = column.cells.map((cell) => ({ value: cell?.value, limit: cell?.limit, verdict: cell?.verdict }));
      return linePanel(result, { title: column.check, note, look, cells });
    }),
    linePanel(result, { title: 'mass', note: `${weight.unit} at 12 % moisture`, look: weight, cells: mass.map(only) }),
    linePanel(result, { title: 'board feet', note: 'by rough sizes', look: FEET, cells: feet.map(only) }),
  ];
}

const only = (value: number | undefined): Cell => ({ value });

const FEET = look('', (value) => formatNumber(value, 1));

type Cell = Pick<LineMark, 'verdict' | 'limit'> & { readonly value?: number | undefined };

interface Series {
  readonly title: string;
  readonly note: string;
  readonly look: NumberLook;
  /** One for each trial; lengths in mm. */
  readonly cells: readonly Cell[];
}

function linePanel({ axes, trials }: WhatIf, { title, note, look, cells }: Series): LinePanel {
  const across = chartAxis(axes[0]!);
  const numbers = cells.flatMap(({ value, limit }) => [value ?? [], limit ?? []].flat());
  const scale = scaleFor(numbers.length > 0 ? numbers : [0, 1], look);
  const up = (value: number | undefined): number | undefined =>
    value === undefined ? undefined : (value - scale.low) / (scale.high - scale.low);
  return {
    kind: 'lines',
    title,
    note,
    across,
    joined: axes[0]!.steps.every((step) => step.number !== undefined),
    borders: bordersOf(across),
    ticks: numbers.length > 0 ? scale.ticks.map(({ value, text }) => ({ at: up(value)!, text })) : [],
    marks: cells.map(({ value, limit, verdict }, k) => ({
      at: across.ticks[k]!.at,
      up: up(value),
      limit: up(limit),
      verdict,
      refused: trials[k]!.refused !== undefined,
    })),
  };
}

function gridPanels(result: WhatIf, columns: readonly Column[], units: UnitSystem): GridPanel[] {
  const { axes, trials } = result;
  const [first, second] = [axes[0]!, axes[1]!];
  const panel = (
    title: string,
    note: string,
    cell: (trial: Trial, k: number) => Pick<GridPanel['cells'][number], 'verdict' | 'text'>,
  ) => ({
    kind: 'grid' as const,
    title,
    note,
    across: cellAxis(first),
    up: cellAxis(second),
    cells: trials.map((trial, k) => ({
      column: trial.at[0]!,
      row: trial.at[1]!,
      refused: trial.refused !== undefined,
      ...cell(trial, k),
    })),
  });
  return [
    panel('all checks', 'the worst verdict, and the check that gives it', (trial) =>
      trial.refused === undefined ? { verdict: worst(trial.findings), text: worstCheck(trial.findings) } : { text: '' },
    ),
    ...columns.map((column) => {
      const { unit, bare } = lookOf(column, units);
      const note = [unit, limitText(column, units)].filter(Boolean).join(', ');
      return panel(column.check, note, (_, k) => {
        const cell = column.cells[k];
        return { verdict: cell?.verdict, text: cell?.value === undefined ? '' : bare(cell.value) };
      });
    }),
  ];
}

/** The check that decides; empty when all is ok. */
function worstCheck(findings: Parameters<typeof worst>[0]): string {
  const [first] = worstFirst(findings);
  return first === undefined || first.verdict === 'ok' ? '' : first.check;
}
