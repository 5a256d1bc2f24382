import { fileURLToPath } from 'node:url';
import type { Assets } from '../../lib/build/assets.ts';
import type { Design } from '../../lib/build/design.ts';
import { makeJob } from '../../lib/build/job.ts';
import { benchFile } from '../../lib/build/output-bench.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { defineShop } from '../../lib/shop/shop.ts';
import { bundleBench } from '../../scripts/page/bench-bundle.ts';

export const designFile = (name: string): string =>
  fileURLToPath(new URL(`../../designs/${name}/design.ts`, import.meta.url));

/** The live page of a design in the invented small shop, as a build makes it. */
export async function benchPageOf(name: string, design: Design): Promise<string> {
  const values = readValues(design.params, design.values).values!;
  const pages = { client: '', bench: await bundleBench(designFile(name)) };
  const files = benchFile(makeJob(design, values, defineShop()), { pages } as unknown as Assets);
  return new TextDecoder().decode(files.get('bench.html')!);
}
