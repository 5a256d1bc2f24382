import type { Verdict } from '../../model/finding.ts';

/** A chart of a what-if, ready to be drawn: small panels side by side. Places run from 0 to 1, left to right and upwards. */
export interface Chart {
  readonly title: string;
  readonly subtitle: string;
  readonly panels: readonly Panel[];
  /** What there was no panel for. */
  readonly rest: string;
}

export type Panel = LinePanel | GridPanel;

interface Titled {
  readonly title: string;
  /** The unit of the numbers, and the limit. */
  readonly note: string;
  readonly across: ChartAxis;
}

/** Numbers over one parameter. */
export interface LinePanel extends Titled {
  readonly kind: 'lines';
  readonly marks: readonly LineMark[];
  /** Whether marks beside each other may be joined: not over choices. */
  readonly joined: boolean;
  /** Where bands of verdicts meet: one more than marks. */
  readonly borders: readonly number[];
  readonly ticks: readonly Tick[];
}

export interface LineMark {
  readonly at: number;
  /** Absent where there is no number. */
  readonly up?: number | undefined;
  readonly limit?: number | undefined;
  /** Absent where no check speaks: mass, board feet. */
  readonly verdict?: Verdict | undefined;
  readonly refused: boolean;
}

/** Verdicts over two parameters. */
export interface GridPanel extends Titled {
  readonly kind: 'grid';
  readonly up: ChartAxis;
  readonly cells: readonly GridCell[];
}

export interface GridCell {
  /** Which step of each axis. */
  readonly column: number;
  readonly row: number;
  readonly verdict?: Verdict | undefined;
  readonly refused: boolean;
  /** Shown when there is room. */
  readonly text: string;
}

export interface ChartAxis {
  /** `top.edgeThickness, in` */
  readonly label: string;
  readonly ticks: readonly Tick[];
  /** Where the design stands; absent when that lies outside. */
  readonly now?: number | undefined;
}

export interface Tick {
  readonly at: number;
  readonly text: string;
}
