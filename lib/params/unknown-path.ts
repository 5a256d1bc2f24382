import type { Issue } from './issue.ts';
import { nearMissPath } from './near-miss.ts';
import type { Fields, Group, Spec } from './spec.ts';

/** The issue of a path that names nothing: what was probably meant, and what there is beside it. */
export function unknownPath(
  spec: Spec,
  path: string,
  given: string,
  from: string,
  meant: 'parameter' | 'group',
): Issue {
  const options = besides(spec, path);
  if (meant === 'group') {
    const didYouMean = nearMissPath(path, groupPaths(spec.fields));
    return { code: 'unknown-group', path, given, from, unit: '', didYouMean, options };
  }
  // A dotted name is a path only on the command line; in a record it is a name that nothing has.
  const because = spec.table.has(path) ? `in ${from} it is nested: ${nested(path)}` : undefined;
  const didYouMean = because ? undefined : nearMissPath(path, [...spec.table.keys()]);
  return { code: 'unknown', path, given, from, unit: '', didYouMean, because, options };
}

/** The group under a path. */
export function groupAt(fields: Fields, path: string): Group | undefined {
  const [name = '', ...rest] = path.split('.');
  const node = Object.hasOwn(fields, name) ? fields[name] : undefined;
  if (node?.kind !== 'group') return undefined;
  return rest.length === 0 ? node : groupAt(node.fields, rest.join('.'));
}

/** The paths in the innermost group around a path. */
function besides(spec: Spec, path: string): readonly string[] {
  const above = path.slice(0, Math.max(path.lastIndexOf('.'), 0));
  const group = groupAt(spec.fields, above);
  if (group) return Object.keys(group.fields).map((name) => `${above}.${name}`);
  return above ? besides(spec, above) : Object.keys(spec.fields);
}

function groupPaths(fields: Fields, prefix = ''): string[] {
  return Object.entries(fields).flatMap(([name, node]) =>
    node.kind === 'group' ? [prefix + name, ...groupPaths(node.fields, `${prefix}${name}.`)] : [],
  );
}

const nested = (path: string): string => path.split('.').reduceRight((inner, name) => `{ ${name}: ${inner} }`, '…');
