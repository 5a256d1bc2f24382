import type { Design, Fields, Milled, Records, Shop, UnitSystem, ValuesOf } from 'tablewright';
import type { Complaint } from '../report/complaint.ts';
import type { Problem } from '../report/problem.ts';
import { shownPath } from '../report/shown-path.ts';
import type { DesignRef } from './design-ref.ts';
import { ComposeFailure, guardCompose } from './guard-compose.ts';
import type { Inputs } from './inputs.ts';
import { loadDesign } from './load-design.ts';
import { loadShop } from './load-shop.ts';
import { loadRecordTexts, recordFiles } from './record-texts.ts';

/** A loaded design with the values it is to be made with. */
export interface Request {
  readonly ref: DesignRef;
  readonly design: Design;
  readonly values: ValuesOf<Fields>;
  readonly shop: Shop;
  /** What was measured: the tables beside the design. */
  readonly records: Records;
  /** Boards that came out otherwise than they were measured. */
  readonly milled: readonly Milled[];
}

export type RequestOutcome =
  | { readonly request: Request; readonly problems?: never; readonly units?: never }
  | { readonly problems: readonly Problem[]; readonly units: UnitSystem | undefined; readonly request?: never };

/** Loads a design and reads its values; what was already wrong with the inputs is told with the rest. */
export async function readRequest(ref: DesignRef, inputs: Inputs): Promise<RequestOutcome> {
  const { design, problems: broken } = await loadDesign(ref);
  if (!design) return { problems: [...inputs.problems, ...broken], units: undefined };
  const { shop, problems: noShop = [] } = await loadShop();
  const { readMilled, readSources } = await import('tablewright');
  const given = { values: design.values, from: 'the design file' };
  const sources = inputs.file ? [given, inputs.file] : [given];
  const { values, issues = [] } = inputs.incomplete ? {} : readSources(design.params, sources, inputs.overrides);
  const problems = [...inputs.problems, ...noShop, ...issues];
  const { units } = design;
  const { issues: notMilled = [] } = readMilled(inputs.milled, units);
  if (!values || !shop || problems.length > 0) return { problems: [...problems, ...notMilled], units };
  const guarded = guardCompose(design, ref);
  const { records, problems: wrong } = await loadRecords(ref, guarded, values);
  if (!records) return { problems: [...wrong, ...notMilled], units };
  const { milled, issues: unknown = [] } = readMilled(inputs.milled, units, records.boards);
  const idle = inputs.milled.length > 0 && !records.boards ? [noBoards(ref)] : [];
  if (!milled || idle.length > 0) return { problems: [...idle, ...unknown], units };
  return { request: { ref, design: guarded, values, shop, records, milled } };
}

const noBoards = (ref: DesignRef): Complaint => ({
  code: 'needs-option',
  given: '--milled',
  subject: 'a boards.csv beside the design',
  because: `there is no ${shownPath(recordFiles(ref.file).boards)}`,
});

type LoadedRecords =
  | { readonly records: Records; readonly problems?: never }
  | { readonly problems: readonly Problem[]; readonly records?: never };

/** Readings are judged by the piece, so they are read last: of other values they would be wrong otherwise. */
async function loadRecords(ref: DesignRef, design: Design, values: ValuesOf<Fields>): Promise<LoadedRecords> {
  const { texts, problems } = loadRecordTexts(ref);
  if (problems) return { problems };
  const { readRecords } = await import('tablewright');
  try {
    const { records, issues } = readRecords(design, values, texts, shownPath(ref.file));
    return records ? { records } : { problems: issues };
  } catch (error) {
    if (error instanceof ComposeFailure) return { problems: [error.complaint] };
    throw error;
  }
}
