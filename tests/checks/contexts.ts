import { checkContext } from '../../lib/build/job.ts';
import type { Check, CheckContext } from '../../lib/derive/checks/check.ts';
import type { Assembly } from '../../lib/model/assembly.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { defineLoads } from '../../lib/shop/loads.ts';
import { defineShop } from '../../lib/shop/shop.ts';
import { defineSite } from '../../lib/shop/site.ts';
import type { UnitSystem } from '../../lib/units/format-length.ts';
import { type Changes, DESIGNS, type DesignName, jobOf } from '../written.ts';

/** A design with some parameters changed, as the checks see it; sentences in the units of the design or in others. */
export function contextOf(name: DesignName, changes: Changes = {}, units?: UnitSystem): CheckContext {
  const { values, assembly } = jobOf(name, changes);
  const context = checkContext(DESIGNS[name], values, assembly, defineShop());
  return units ? { ...context, units } : context;
}

/** A piece put together by hand. */
export const handContext = (assembly: Assembly, units: UnitSystem = 'in'): CheckContext => ({
  assembly,
  units,
  shop: defineShop(),
  site: defineSite(),
  loads: defineLoads(),
});

/** What one check says under one name: a file of checks may answer for two. */
export const under = (check: Check, name: string, context: CheckContext): Finding[] =>
  check.run(context).filter((finding) => finding.check === name);

/** The one finding of a part. */
export function ofPart(findings: readonly Finding[], part: string): Finding {
  const [found, ...more] = findings.filter((finding) => finding.part === part);
  if (!found || more.length > 0) throw new Error(`${part} has ${more.length + (found ? 1 : 0)} findings, not one`);
  return found;
}

export const verdicts = (findings: readonly Finding[]): string[] => [...new Set(findings.map((f) => f.verdict))].sort();

/** What a maker reads of a finding: verdict, sentence, fixes. */
export const words = ({ verdict, because, fixes }: Finding): string => [verdict, because, ...fixes].join(' | ');
