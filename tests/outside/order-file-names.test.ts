import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { distinctFileNames, safeFileName } from '../../src/engine/order/file-names.ts';

/**
 * Rules of Windows, the strictest of the three systems: "Naming Files, Paths, and Namespaces", Microsoft Learn
 * (learn.microsoft.com/windows/win32/fileio/naming-a-file), from memory: no < > : " / \ | ? *, no characters 0 to 31,
 * no dot or space at the end, and no device name, with or without an ending.
 */
const FORBIDDEN = new Set('<>:"/\\|?*');
const DEVICES = [
  ...['CON', 'PRN', 'AUX', 'NUL'],
  ...[...'123456789¹²³'].flatMap((n) => [`COM${n}`, `LPT${n}`]),
];

function isLegal(name: string): boolean {
  const letters = [...name];
  const base = (name.split('.')[0] ?? '').trimEnd().toUpperCase();
  return (
    letters.length > 0 &&
    letters.every((letter) => !FORBIDDEN.has(letter) && letter.charCodeAt(0) > 31) &&
    !/[. ]$/.test(name) &&
    !DEVICES.includes(base) &&
    Buffer.byteLength(name) <= 255
  );
}

const folder = mkdtempSync(join(tmpdir(), 'frockwright-names-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('names of folders and files', () => {
  it('are legal on Windows and on this system, whatever the child is called', () => {
    const name = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 80 }),
      fc.string({ unit: 'binary', maxLength: 40 }),
      fc
        .constantFrom(...DEVICES)
        .chain((device) => fc.constantFrom(device, `${device}.x`, device.toLowerCase(), `${device} `)),
      fc.constantFrom(
        '',
        '.',
        '..',
        '...',
        ' ',
        '-',
        '/',
        '\\',
        '../../etc/passwd',
        'a/b',
        'C:\\x',
        'a.',
        'a ',
        '~',
      ),
      fc.constantFrom('小', '\u{1F457}', 'ọ́').map((letter) => letter.repeat(80)),
    );
    fc.assert(
      fc.property(name, (written) => {
        const safe = safeFileName(written, 'child');
        expect(isLegal(safe), JSON.stringify([written, safe])).toBe(true);
        writeFileSync(join(folder, safe), '');
      }),
      { seed: 20270612, numRuns: 1500 },
    );
    expect(readdirSync(folder, { recursive: true }).every((entry) => !String(entry).includes('/'))).toBe(
      true,
    );
  });

  it.each([
    ['Tọ́lá', 'Tọ́lá'.normalize('NFC')],
    ['Ирина', 'Ирина'],
    ['小花', '小花'],
    ["Ama N'Diaye-Koné", "Ama N'Diaye-Koné"],
    ['Ada/Obi', 'Ada-Obi'],
    ['con', 'con_'],
    ['aux.txt', 'aux-txt_'],
    ['...', 'child'],
  ])('%s becomes %s', (written, safe) => {
    expect(safeFileName(written, 'child')).toBe(safe);
  });

  it('are told apart where the system takes no notice of capitals', () => {
    const names = distinctFileNames(['Ada', 'ADA', 'checks.pdf', 'Ada 2', 'ada'], ['Checks.pdf']);
    expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(5);
    expect(names.slice(0, 3)).toEqual(['Ada', 'ADA 2', 'checks.pdf 2']);
  });
});
