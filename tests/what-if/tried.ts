import type { Design } from '../../lib/build/design.ts';
import { whatIf } from '../../lib/build/what-if.ts';
import type { WhatIf } from '../../lib/derive/what-if/what-if.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { readVariations } from '../../lib/params/read-variations.ts';
import type { Fields } from '../../lib/params/spec.ts';

/** A design tried over what `--vary` would say. */
export async function tried<F extends Fields>(design: Design<F>, ...vary: readonly string[]): Promise<WhatIf> {
  const values = readValues(design.params, design.values).values!;
  const { variations, issues } = readVariations(design.params, values, vary, design.units);
  if (issues) throw new RangeError(JSON.stringify(issues));
  return whatIf(design, values, variations);
}
