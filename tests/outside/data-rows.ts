import { readFileSync } from 'node:fs';

/** The rows of a file in `data/`, by column; cells that hold commas are quoted. */
export function rowsOf(file: string): readonly Readonly<Record<string, string>>[] {
  const [head = '', ...lines] = readFileSync(`data/${file}`, 'utf8').trim().split('\n');
  const columns = head.split(',');
  return lines.map((line) => {
    const cells = line.split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/);
    return Object.fromEntries(columns.map((column, i) => [column, cells[i] ?? '']));
  });
}
