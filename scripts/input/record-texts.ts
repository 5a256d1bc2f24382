import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { RecordTexts } from 'tablewright';
import type { Complaint } from '../report/complaint.ts';
import { fileReason } from '../report/file-reason.ts';
import { shownPath } from '../report/shown-path.ts';
import type { DesignRef } from './design-ref.ts';

const KINDS = ['stations', 'boards'] as const;
type Kind = (typeof KINDS)[number];

/**
 * Where the tables of a design lie: `stations.csv` beside its `design.ts`; for a file of another name, beside which there
 * may be other designs, `my-bench.stations.csv` beside `my-bench.ts`.
 */
export function recordFiles(design: string): { readonly [K in Kind]: string } {
  const { dir, name } = path.parse(design);
  const prefix = name === 'design' ? '' : `${name}.`;
  const at = (kind: Kind): string => path.join(dir, `${prefix}${kind}.csv`);
  return { stations: at('stations'), boards: at('boards') };
}

export type LoadedTexts =
  | { readonly texts: RecordTexts; readonly problems?: never }
  | { readonly problems: readonly Complaint[]; readonly texts?: never };

/** The tables that are there, unread. */
export function loadRecordTexts({ file }: DesignRef): LoadedTexts {
  const files = recordFiles(file);
  const problems: Complaint[] = [];
  const texts = KINDS.filter((kind) => existsSync(files[kind])).map((kind) => {
    const from = shownPath(files[kind]);
    try {
      return [kind, { text: readUtf8(files[kind]), from }];
    } catch (error) {
      problems.push({ code: 'file-unreadable', given: from, subject: 'the table', because: reason(error) });
      return [kind, { text: '', from }];
    }
  });
  return problems.length > 0 ? { problems } : { texts: Object.fromEntries(texts) };
}

const readUtf8 = (file: string): string => new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(file));

const reason = (error: unknown): string =>
  error instanceof TypeError ? 'it is not UTF-8; save it as CSV UTF-8' : (fileReason(error) ?? String(error));
