/** Lines no longer than this are read without turning the head. */
const WIDTH = 110;

/** A text in lines broken between words: the first behind `indent`, the others behind `hanging`. */
export function wrapped(text: string, indent: string, hanging = `${indent}  `): string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(' ')) {
    const bare = line === indent || line === hanging;
    if (!bare && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = hanging + word;
    } else {
      line += bare ? word : ` ${word}`;
    }
  }
  return [...lines, line];
}
