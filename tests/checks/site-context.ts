import type { Design } from '../../lib/build/design.ts';
import { checkContext } from '../../lib/build/job.ts';
import type { CheckContext } from '../../lib/derive/checks/check.ts';
import { defineShop, type Shop } from '../../lib/shop/shop.ts';
import type { SiteGiven } from '../../lib/shop/site.ts';
import type { UnitSystem } from '../../lib/units/format-length.ts';
import { type Changes, DESIGNS, type DesignName, valuesOf } from '../written.ts';

/** What surrounds a design; what is left out is as the design has it. */
export interface Around {
  readonly site?: SiteGiven;
  readonly shop?: Shop;
  readonly units?: UnitSystem;
}

/** All that the checks ask of a design with some parameters changed, in a shop and on a site. */
export function contextOf(name: DesignName, changes: Changes = {}, around: Around = {}): CheckContext {
  const { shop = defineShop(), ...own } = around;
  // biome-ignore lint/suspicious/noExplicitAny: designs of any parameters
  const design: Design<any> = { ...DESIGNS[name], ...own };
  const values = valuesOf(design, changes);
  return checkContext(design, values, design.compose(values, design.title), shop);
}

/** "top.length 7 ft 8 in brings 8 places" as the change it tells. @throws Error when it tells none. */
export function changeOf(fix: string | undefined): Changes {
  const found = /^(\S+) (.+) brings /.exec(fix ?? '');
  if (!found) throw new Error(`${fix} is no change of a parameter`);
  return { [found[1]!]: found[2]! };
}
