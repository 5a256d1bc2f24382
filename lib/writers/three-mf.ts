import type { SceneData, ScenePart, SceneShape } from '../derive/scene/scene-data.ts';
import { zAxis } from '../geometry/frame.ts';
import { formatNumber } from '../units/format-length.ts';
import { escapeXml } from './svg/xml.ts';
import { zip } from './zip.ts';

const TYPES = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>
`;

const RELATIONS = `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>
`;

/**
 * A scene as 3MF (3D Manufacturing Format, core specification 1.x): millimetres, Z up, one object for each shape and
 * name, one build item for each part. Numbers keep 4 decimals.
 */
export function threeMf(data: SceneData): Uint8Array {
  const text = (content: string): Uint8Array => new TextEncoder().encode(content);
  return zip(
    new Map([
      ['[Content_Types].xml', text(TYPES)],
      ['_rels/.rels', text(RELATIONS)],
      ['3D/3dmodel.model', text(model(data))],
    ]),
  );
}

const number = (value: number): string => formatNumber(value, 4);

function model({ words, parts, shapes }: SceneData): string {
  const { title, revision, date, warning } = words;
  const description = [`revision ${revision}, ${date}`, ...(warning === undefined ? [] : [warning])].join('; ');
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<model unit="millimeter" xml:lang="en-US" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">',
    `<metadata name="Title">${escapeXml(title)}</metadata>`,
    `<metadata name="Description">${escapeXml(description)}</metadata>`,
    '<metadata name="Application">tablewright</metadata>',
    '<resources>',
    ...parts.map((part, k) => objectOf(part, k + 1, shapes.get(part.shape)!)),
    '</resources>',
    '<build>',
    ...parts.map(
      (part, k) => `<item objectid="${k + 1}" transform="${placeOf(part)}" partnumber="${escapeXml(part.mark)}"/>`,
    ),
    '</build>',
    '</model>',
    '',
  ].join('\n');
}

function objectOf({ mark, name }: ScenePart, id: number, { vertices, triangles }: SceneShape): string {
  const out = [`<object id="${id}" type="model" name="${escapeXml(`${mark} ${name}`)}"><mesh><vertices>`];
  for (let k = 0; k < vertices.length; k += 3) {
    const [x, y, z] = [vertices[k]!, vertices[k + 1]!, vertices[k + 2]!].map(number);
    out.push(`<vertex x="${x}" y="${y}" z="${z}"/>`);
  }
  out.push('</vertices><triangles>');
  for (let k = 0; k < triangles.length; k += 3) {
    out.push(`<triangle v1="${triangles[k]}" v2="${triangles[k + 1]}" v3="${triangles[k + 2]}"/>`);
  }
  out.push('</triangles></mesh></object>');
  return out.join('');
}

/** Rows of the matrix that a row vector is multiplied with. */
const placeOf = ({ frame }: ScenePart): string =>
  [frame.x, frame.y, zAxis(frame), frame.origin].flatMap((row) => row.map(number)).join(' ');
