import { checkContext } from '../../lib/build/job.ts';
import { runChecks } from '../../lib/derive/checks/checks.ts';
import { bill } from '../../lib/derive/cut-list/bill.ts';
import { cutList } from '../../lib/derive/cut-list/cut-list.ts';
import { shapesOf } from '../../lib/derive/solids/shapes.ts';
import { templates } from '../../lib/derive/templates/templates.ts';
import type { Assembly } from '../../lib/model/assembly.ts';
import { defineShop } from '../../lib/shop/shop.ts';
import { json } from '../../lib/writers/json.ts';
import type { AnyDesign, AnyValues } from './any-design.ts';

/** Everything that is made of a design, as text to compare: numbers to a millionth, as files hold them. */
export interface Products {
  readonly assembly: string;
  readonly 'cut list': string;
  readonly bill: string;
  readonly findings: string;
  readonly solids: string;
  readonly templates: string;
}

export type Product = keyof Products;

/** The order of the columns of the table. */
export const PRODUCTS: readonly Product[] = ['assembly', 'cut list', 'bill', 'findings', 'solids', 'templates'];

/**
 * Products are functions of the assembly, so whoever has the same assembly has the same products. Of the findings all but
 * the fixes, which are found by trying; pictures and drawings are solids seen from somewhere.
 */
export function productsOf(design: AnyDesign, values: AnyValues, assembly: Assembly): Products {
  const { title, revision, date, units } = design;
  const { tune: _, ...context } = checkContext(design, values, assembly, defineShop());
  const list = cutList(assembly);
  const findings = runChecks(context).map(({ fixes: _fixes, ...finding }) => finding);
  const shapes = [...shapesOf(assembly)].map(([id, { solid }]) => [id, solid.vertices]);
  return {
    assembly: json(assembly),
    'cut list': json(list),
    bill: json(bill(assembly, list)),
    findings: json(findings),
    solids: json(shapes),
    templates: json(templates(assembly, { title, revision, date, units })),
  };
}
