import parser, { type IDimensionEntity, type IDxf, type IEntity } from 'dxf-parser';

/** The package is CommonJS, so its class is the default import at run time, which its types do not say. */
const Parser = parser as unknown as new () => { parseSync(text: string): IDxf | null };

/** A DXF file as the npm package dxf-parser reads it. */
export function parseDxf(text: string): IDxf {
  const file = new Parser().parseSync(text);
  if (!file) throw new Error('dxf-parser read nothing');
  return file;
}

export const dimensionsOf = (file: IDxf): readonly IDimensionEntity[] =>
  file.entities.filter((entity): entity is IDimensionEntity & IEntity => entity.type === 'DIMENSION');
