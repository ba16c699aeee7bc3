import { LONGEST_TEXT } from './plain-text.ts';

/**
 * What each child is called on the paper: her name as written, told apart by a number where another child of the
 * order has the same one. `unnamed` is for an entry whose name can't be used; that is a problem of its own.
 */
export function childNames(
  children: readonly unknown[],
  unnamed: (number: number) => string,
): readonly string[] {
  const written = children.map((child, i) => nameIn(child) ?? unnamed(i + 1));
  const taken = new Set(written.map(key));
  const used = new Set<string>();
  return written.map((name) => {
    if (!used.has(key(name))) {
      used.add(key(name));
      return name;
    }
    let number = 2;
    while (taken.has(key(`${name} (${number})`)) || used.has(key(`${name} (${number})`))) number++;
    const told = `${name} (${number})`;
    used.add(key(told));
    return told;
  });
}

const key = (name: string): string => name.normalize('NFC').toLowerCase();

function nameIn(child: unknown): string | null {
  if (typeof child !== 'object' || child === null || !('name' in child)) return null;
  const { name } = child;
  if (typeof name !== 'string') return null;
  const plain = name
    .normalize('NFC')
    .replace(/\p{Cc}/gu, '')
    .trim();
  return plain === '' || [...plain].length > LONGEST_TEXT ? null : plain;
}
