/** An element of a parsed page. */
export interface HtmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly HtmlElement[];
  /** All text in it, entities read. */
  text(): string;
  /** All elements of a name below it, in order. */
  all(name: string): readonly HtmlElement[];
  /** All elements below it. */
  every(): readonly HtmlElement[];
}

const VOID = new Set(['meta', 'br', 'hr', 'img', 'link']);
const TOKEN = /<!DOCTYPE html>|<\/([a-z][a-z0-9]*)>|<([a-z][a-z0-9]*)((?: [a-z-]+="[^"<]*")*)>|[^<]+|</g;
const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

/** A strict reader of HTML: every element but the void ones is closed in its turn. @throws RangeError for anything else. */
export function parseHtml(html: string): HtmlElement {
  const root = element('', {});
  const open = [root];
  for (const [token, closed, opened, attributes = ''] of html.matchAll(TOKEN)) {
    const top = open.at(-1)!;
    if (opened) {
      const child = element(opened, readAttributes(attributes));
      top.content.push(child);
      if (!VOID.has(opened)) open.push(child);
    } else if (closed) close(open, closed);
    else if (!token.startsWith('<!')) top.content.push(plain(token));
  }
  if (open.length > 1) throw new RangeError(`<${open.at(-1)!.name}> is not closed`);
  return root;
}

function close(open: Node[], name: string): void {
  const top = open.pop()!;
  if (top.name !== name) throw new RangeError(`</${name}> closes <${top.name}>`);
}

function plain(token: string): string {
  if (token === '<') throw new RangeError('a bare < stands in the text');
  return token;
}

interface Node extends HtmlElement {
  readonly content: (Node | string)[];
}

function element(name: string, attributes: Readonly<Record<string, string>>): Node {
  const content: Node['content'] = [];
  const children = (): Node[] => content.filter((one): one is Node => typeof one !== 'string');
  const every = (): Node[] => children().flatMap((one) => [one, ...(one.every() as Node[])]);
  return {
    name,
    attributes,
    content,
    get children() {
      return children();
    },
    text: () => content.map((one) => (typeof one === 'string' ? readEntities(one) : one.text())).join(''),
    all: (wanted) => every().filter((one) => one.name === wanted),
    every,
  };
}

function readAttributes(text: string): Record<string, string> {
  return Object.fromEntries(
    [...text.matchAll(/ ([a-z-]+)="([^"]*)"/g)].map(([, name = '', value = '']) => [name, readEntities(value)]),
  );
}

function readEntities(text: string): string {
  return text.replace(/&([^;\s]*);?/g, (all, name) => {
    const char = all.endsWith(';') ? ENTITIES[name] : undefined;
    if (char === undefined) throw new RangeError(`${all} is no entity`);
    return char;
  });
}
