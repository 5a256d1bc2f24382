import { createHash } from 'node:crypto';
import type { Source } from 'tablewright';
import type { BenchData } from '../../lib/build/bench-data.ts';
import { parseAssignment } from '../../lib/params/assignment.ts';
import { benchHtml } from '../../lib/writers/bench-html.ts';
import type { DesignRef } from '../input/design-ref.ts';
import { readParamsFile } from '../input/params-file.ts';
import { reasonOf } from '../input/reason-of.ts';
import { loadRecordTexts } from '../input/record-texts.ts';
import type { Options } from '../line/options.ts';
import { bundleBench } from '../page/bench-bundle.ts';
import { renderComplaint } from '../report/render-complaint.ts';
import { EVENTS, type LivePage } from './page-server.ts';

export type MadePage =
  | { readonly page: LivePage; readonly why?: never }
  | { readonly why: string; readonly page?: never };

/**
 * The live page of a design as its files are now. The design is bundled, not run: its values are read in the page, which
 * tells by itself what is wrong with them.
 */
export async function makeLivePage(ref: DesignRef, options: Options): Promise<MadePage> {
  const { texts, problems = [] } = loadRecordTexts(ref);
  const file = options.params === undefined ? undefined : readParamsFile(options.params);
  const wrong = file && 'code' in file ? file : problems[0];
  if (wrong) return { why: renderComplaint(wrong) };
  const set = options.set.flatMap((one): BenchData['set'] => {
    const { override } = parseAssignment(one);
    return override ? [[override.path, override.text]] : [];
  });
  const data: BenchData = {
    set,
    ...(file ? { params: file as Source } : {}),
    ...(texts ? { texts } : {}),
  };
  try {
    const script = await bundleBench(ref.file);
    const version = createHash('sha256').update(script).update(JSON.stringify(data)).digest('hex');
    return {
      page: { version, html: benchHtml({ title: ref.name, script, data, events: { address: EVENTS, version } }) },
    };
  } catch (error) {
    return { why: reasonOf(error, ref.file) };
  }
}
