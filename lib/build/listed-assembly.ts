import type { Assembly } from '../model/assembly.ts';

/**
 * The piece as lists tell it: boards of the top as they were milled to the design, all other parts fitted to the top as it
 * was measured. A top that can be measured is glued already, so what was sawn for it changes no more.
 */
export function listedAssembly(assembly: Assembly, nominal: Assembly): Assembly {
  if (assembly === nominal) return assembly;
  const designed = new Map(nominal.parts.map((part) => [part.id, part]));
  return {
    ...assembly,
    parts: assembly.parts.map((part) => (part.body.kind === 'slice' ? (designed.get(part.id) ?? part) : part)),
  };
}
