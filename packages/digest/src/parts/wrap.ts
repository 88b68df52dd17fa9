/**
 * Breaks a text into lines at its blanks. A word longer than a line keeps a line of its own.
 *
 * @param width characters of a line, the indent included
 * @param indent before every line but the first
 * @example wrap('a look was due', 8, '  ') // ['a look', '  was', '  due']
 */
export function wrap(text: string, width: number, indent = ''): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line.trim() === '' || longer.length <= width)
      line = line === indent ? indent + word : longer;
    else {
      lines.push(line);
      line = indent + word;
    }
  }
  return [...lines, line];
}
