import { applyRules } from './apply-rules.ts';
import { defaultText } from './format-value.ts';
import type { Param } from './param.ts';
import { readParam } from './read-param.ts';
import type { Rule } from './rule.ts';
import type { Fields, Spec } from './spec.ts';
import { tableOf } from './values.ts';

const NAME = /^[a-z][a-zA-Z0-9]*$/;

/**
 * A spec from its fields and the rules between them.
 *
 * @throws RangeError when the spec itself is wrong: a name that cannot stand in a path, a default outside its own
 * range or against a rule, a rule over a path that does not exist.
 */
export function defineParams<const F extends Fields>(fields: F, rules: readonly Rule<F>[] = []): Spec<F> {
  const erased = Object.freeze([...rules]) as unknown as readonly Rule[];
  const spec: Spec<F> = Object.freeze({ fields, rules: erased, table: tableOf(fields) });
  for (const [path, param] of spec.table) checkParam(path, param);
  checkNames(fields, '');
  checkRules(spec);
  return spec;
}

function checkNames(fields: Fields, prefix: string): void {
  for (const [name, node] of Object.entries(fields)) {
    if (!NAME.test(name)) throw new RangeError(`${prefix}${name} cannot be the path of a parameter`);
    if (node.kind === 'group') checkNames(node.fields, `${prefix}${name}.`);
  }
}

function checkParam(path: string, param: Param): void {
  if (param.kind === 'choice' && new Set(param.options).size !== param.options.length) {
    throw new RangeError(`${path} has an option twice: ${param.options.join(', ')}`);
  }
  const text = defaultText(param);
  const { faults, value } = readParam(param, text);
  if (faults || JSON.stringify(value) !== JSON.stringify(param.default)) {
    throw new RangeError(`the default of ${path} cannot be ${JSON.stringify(text)}: ${faults?.[0]?.code ?? 'unread'}`);
  }
}

function checkRules(spec: Spec): void {
  for (const { fields } of spec.rules) {
    const stray = fields.find((path) => !spec.table.has(path));
    if (stray !== undefined) throw new RangeError(`a rule concerns ${stray}, which is no parameter`);
  }
  const known = new Map([...spec.table].map(([path, param]) => [path, { value: param.default, unit: 'mm' }]));
  const [complaint] = applyRules(spec, known);
  if (complaint) throw new RangeError(`the default of ${complaint.path} breaks a rule: ${complaint.because}`);
}
