import loadHighs, { type Highs, type HighsCallbackMap, type Model } from 'highs';

/** Where the solver's WebAssembly comes from, when it does not lie beside its loader (a browser, a bundle). */
export interface SolverSource {
  /** Address of a file of the package, by name. */
  readonly locate?: (file: string) => string;
  readonly bytes?: ArrayBuffer | Uint8Array;
}

/** Entries of one column: rows and their coefficients. */
export interface Entries {
  readonly rows: readonly number[];
  readonly values: readonly number[];
}

/** The optimum of a linear program. */
export interface LinearAnswer {
  readonly value: number;
  readonly columns: Float64Array;
  /** Price of each row: what one unit more on its right side would add to the value. */
  readonly prices: Float64Array;
}

/** What is known of a program in whole numbers when the work is spent. */
export interface WholeAnswer {
  /** Infinity while no solution is known. */
  readonly value: number;
  /** No solution is below; Infinity when there is none at all. */
  readonly bound: number;
  readonly columns?: Float64Array;
  readonly proved: boolean;
}

/** How much work may be spent on a program in whole numbers. */
export interface WholeWork {
  /** Nodes of the search tree. */
  readonly nodes: number;
  /** Stop as soon as (value - bound)/value is below. */
  readonly gap?: number;
  /** A solution to start from. */
  readonly start?: ArrayLike<number>;
  /** Asked now and then; true ends the work early (the caller's clock or button). */
  readonly stop?: () => boolean;
}

/** A minimization that grows by rows and columns. Costs want to lie between 1 and 1000: far from it the solver fails. */
export interface Program {
  /** Number of the new row. */
  addRow(low: number, high: number): number;
  /** Number of the new column. */
  addColumn(cost: number, low: number, high: number, entries: Entries): number;
  /** The column takes whole numbers only. */
  makeWhole(column: number): void;
  changeEntry(row: number, column: number, value: number): void;
  limitColumn(column: number, low: number, high: number): void;
  /** Undefined when no solution keeps all rows. */
  solve(): LinearAnswer | undefined;
  solveWhole(work: WholeWork): WholeAnswer;
  dispose(): void;
}

/** Makes linear programs; the only door to the package. */
export interface Solver {
  program(): Program;
}

/** Loads the solver, about 0.1 s; load once and keep the promise, each load is another instance of 30 MB. */
export async function loadSolver(source: SolverSource = {}): Promise<Solver> {
  const load = loadHighs as unknown as (options: object) => Promise<Highs>; // under nodenext its type is the module's
  const highs = await load({
    ...(source.locate ? { locateFile: source.locate } : {}),
    ...(source.bytes ? await fromBytes(source.bytes) : {}),
  });
  return { program: () => programOf(highs) };
}

/** As much of WebAssembly as is used; the library is written for Node and browsers alike, and has the types of neither. */
interface WebAssemblyHere {
  compile(bytes: ArrayBuffer | Uint8Array): Promise<object>;
  instantiate(module: object, imports: object): Promise<object>;
}

/** This build of the loader does not look at bytes in its options, and would fetch its file all the same: they are compiled here. */
async function fromBytes(bytes: ArrayBuffer | Uint8Array): Promise<object> {
  const { WebAssembly: here } = globalThis as unknown as { readonly WebAssembly: WebAssemblyHere };
  const module = await here.compile(bytes);
  return {
    instantiateWasm(imports: object, ready: (instance: object) => void): object {
      void here.instantiate(module, imports).then(ready);
      return {};
    },
  };
}

function programOf(highs: Highs): Program {
  const model = highs.createModel();
  model.options.set({ output_flag: false, solver: 'simplex', random_seed: 0 });
  const infinite = (value: number): number => (Number.isFinite(value) ? value : Math.sign(value) * highs.infinity);
  let rows = 0;
  let columns = 0;
  return {
    addRow(low, high) {
      model.addRow(infinite(low), infinite(high), { indices: [], values: [] });
      return rows++;
    },
    addColumn(cost, low, high, entries) {
      model.addCol(cost, infinite(low), infinite(high), {
        indices: [...entries.rows],
        values: [...entries.values],
      });
      return columns++;
    },
    makeWhole: (column) => void model.changeColIntegrality(column, highs.constants.variableType.integer),
    changeEntry: (row, column, value) => void model.changeCoefficient(row, column, value),
    limitColumn: (column, low, high) => void model.changeColBounds(column, infinite(low), infinite(high)),
    solve: () => solveLinear(highs, model),
    solveWhole: (work) => solveWhole(highs, model, work),
    dispose: () => model.dispose(),
  };
}

function solveLinear(highs: Highs, model: Model): LinearAnswer | undefined {
  model.run();
  const status = model.getModelStatus();
  if (status === highs.constants.modelStatus.infeasible) return undefined;
  if (status !== highs.constants.modelStatus.optimal) throw new RangeError(`the solver ended with status ${status}`);
  const { colValue, rowDual } = model.getSolution();
  return {
    value: model.getObjectiveValue(),
    columns: Float64Array.from(colValue),
    prices: Float64Array.from(rowDual),
  };
}

function solveWhole(highs: Highs, model: Model, work: WholeWork): WholeAnswer {
  model.options.set({
    solver: 'choose',
    mip_max_nodes: work.nodes,
    mip_rel_gap: work.gap ?? 1e-6,
  });
  if (work.start) model.setSolution({ colValue: Float64Array.from(work.start) });
  const { stop } = work;
  model.run(stop ? stopping(highs, stop) : undefined);
  const status = model.getModelStatus();
  const { infeasible, optimal } = highs.constants.modelStatus;
  if (status === infeasible) return { value: Infinity, bound: Infinity, proved: true };
  const value = Number(model.info.get('objective_function_value'));
  const bound = Number(model.info.get('mip_dual_bound'));
  const found = Number(model.info.get('primal_solution_status')) === 2;
  return {
    value: found ? value : Infinity,
    bound: bound >= highs.infinity ? Infinity : Math.max(bound, -Infinity),
    ...(found ? { columns: Float64Array.from(model.getSolution().colValue) } : {}),
    proved: status === optimal,
  };
}

const stopping = (highs: Highs, stop: () => boolean): HighsCallbackMap => ({
  [highs.constants.callbackType.mipInterrupt]: (event) => {
    if (stop()) event.interrupt();
  },
});
