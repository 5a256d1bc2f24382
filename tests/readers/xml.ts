export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  /** All text directly inside, entities resolved. */
  readonly text: string;
}

interface Open {
  name: string;
  attributes: Record<string, string>;
  children: XmlElement[];
  text: string;
}

const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };
const resolve = (text: string): string =>
  text.replace(/&([^;]*);/g, (whole, name: string) => {
    const char = NAMED[name];
    if (char === undefined) throw new Error(`unknown entity ${whole}`);
    return char;
  });

function attributesOf(source: string): Record<string, string> {
  const found: Record<string, string> = {};
  const rest = source.replace(/\s+([\w:-]+)="([^"<]*)"/g, (_, name: string, value: string) => {
    if (name in found) throw new Error(`attribute ${name} twice`);
    found[name] = resolve(value);
    return '';
  });
  if (rest.trim() !== '') throw new Error(`not attributes: ${rest}`);
  return found;
}

/** Reads XML as strictly as a browser reads an SVG file: tags must nest, attributes be quoted, `&` and `<` be escaped. */
export function parseXml(source: string): XmlElement {
  const root: Open = { name: '', attributes: {}, children: [], text: '' };
  const stack: Open[] = [root];
  let at = 0;
  for (const match of source.matchAll(/<(\/?)([\w:-]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/g)) {
    addText(stack.at(-1)!, source.slice(at, match.index));
    at = match.index + match[0].length;
    const [, closing, name, attributes, empty] = match;
    if (closing) {
      const open = stack.pop()!;
      if (open.name !== name) throw new Error(`</${name}> closes <${open.name}>`);
      stack.at(-1)!.children.push(open);
    } else {
      const open: Open = { name: name!, attributes: attributesOf(attributes!), children: [], text: '' };
      if (empty) stack.at(-1)!.children.push(open);
      else stack.push(open);
    }
  }
  addText(stack.at(-1)!, source.slice(at));
  if (stack.length !== 1) throw new Error(`<${stack.at(-1)!.name}> is not closed`);
  if (root.children.length !== 1 || root.text.trim() !== '')
    throw new Error('an XML file has one root and no text beside it');
  return root.children[0]!;
}

function addText(open: Open, text: string): void {
  if (/[<>]/.test(text)) throw new Error(`unescaped text ${JSON.stringify(text)}`);
  if (/&(?![a-z#0-9]+;)/.test(text)) throw new Error(`bare & in ${JSON.stringify(text)}`);
  open.text += resolve(text);
}

/** An element and all below it. */
export const elements = (root: XmlElement): readonly XmlElement[] => [root, ...root.children.flatMap(elements)];
