/** The room that one line of text takes, px. */
export interface TextBox {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Advance of a character in font sizes. In DejaVu Sans, a wide face, whole words have 0.55 to 0.60; bold ones 0.66. */
const ADVANCE = { normal: 0.6, bold: 0.68 } as const;

const TEXT =
  /<text (?:x="(?<x>[-\d.]+)" y="(?<y>[-\d.]+)"|transform="translate\((?<tx>[-\d.]+) (?<ty>[-\d.]+)\) rotate\(-90\)") font-size="(?<size>\d+)" text-anchor="(?<anchor>\w+)" fill="[^"]+"(?<bold> font-weight="bold")?>(?<text>[^<]*)<\/text>/g;

/** Every text of a chart with its room, estimated by a measure of its own. @throws RangeError for a text that cannot be read. */
export function textBoxes(svg: string): TextBox[] {
  const boxes = [...svg.matchAll(TEXT)].map(({ groups }) =>
    boxOf(groups as Readonly<Record<string, string | undefined>>),
  );
  const count = svg.split('<text ').length - 1;
  if (boxes.length !== count) throw new RangeError(`only ${boxes.length} of ${count} texts can be read`);
  return boxes;
}

function boxOf({ x, y, tx, ty, size, anchor, bold, text = '' }: Readonly<Record<string, string | undefined>>): TextBox {
  const height = Number(size);
  const plain = text.replace(/&\w+;|&#\d+;/g, '_');
  const width = [...plain].length * height * ADVANCE[bold ? 'bold' : 'normal'];
  const back = { start: 0, middle: width / 2, end: width }[anchor ?? 'start'] ?? 0;
  if (x !== undefined && y !== undefined) {
    const left = Number(x) - back;
    return { text, left, right: left + width, top: Number(y) - 0.75 * height, bottom: Number(y) + 0.22 * height };
  }
  const low = Number(ty) + back;
  return { text, left: Number(tx) - 0.75 * height, right: Number(tx) + 0.22 * height, top: low - width, bottom: low };
}

/** Pairs of texts that share room. */
export function collisions(boxes: readonly TextBox[]): string[] {
  return boxes.flatMap((a, k) =>
    boxes
      .slice(k + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.text} / ${b.text}`),
  );
}
