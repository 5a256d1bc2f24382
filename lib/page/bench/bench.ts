import type { BenchData } from '../../build/bench-data.ts';
import type { Design } from '../../build/design.ts';
import { readRecords } from '../../build/read-records.ts';
import type { Records } from '../../model/records.ts';
import type { Source } from '../../params/collect.ts';
import { readValues } from '../../params/read-values.ts';
import { defineShop, type Shop } from '../../shop/shop.ts';

/** What stays the same while values are tried: the design, the shop it is made in, and what the page was opened with. */
export interface Bench {
  readonly design: Design;
  readonly shop: Shop;
  readonly records: Records;
  /** Values of the design and of a file beside it, later ones winning. */
  readonly sources: readonly Source[];
  /** Path and text of the parameters that were set beside them when the page was made. */
  readonly set: BenchData['set'];
}

/** The bench of a design. The shop of the data wins over the one that came with the script. */
export function benchOf(design: Design, shop: Shop | undefined, data: BenchData): Bench {
  const file: Source = { values: design.values, from: 'the design file' };
  return {
    design,
    shop: data.shop ?? shop ?? defineShop(),
    records: data.records ?? readTexts(design, data),
    sources: data.params ? [file, data.params] : [file],
    set: data.set,
  };
}

/** What was measured, as far as it can be read; what cannot is told where the papers are made. */
function readTexts(design: Design, { texts }: BenchData): Records {
  const { values } = texts ? readValues(design.params, design.values) : {};
  return (texts && values && readRecords(design, values, texts).records) ?? {};
}
