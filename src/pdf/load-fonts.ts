import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { PaperFonts } from './fonts.ts';

/**
 * Reads the fonts that come with the package. For Node alone, so it is not in `index.ts`: a browser fetches its own bytes. The folder is looked for
 * upwards from this module, so the same code finds it from the sources and from a bundle in `dist/`.
 * Throws when the package is incomplete.
 */
export async function loadFonts(): Promise<PaperFonts> {
  const start = dirname(fileURLToPath(import.meta.url));
  for (let folder = start; ; folder = dirname(folder)) {
    const fonts = await readFonts(join(folder, 'assets', 'fonts'));
    if (fonts !== null) return fonts;
    if (dirname(folder) === folder) throw new Error(`No fonts found in assets/fonts above ${start}`);
  }
}

async function readFonts(folder: string): Promise<PaperFonts | null> {
  try {
    const [regular, bold] = await Promise.all([
      readFile(join(folder, 'NotoSans-Regular.ttf')),
      readFile(join(folder, 'NotoSans-Bold.ttf')),
    ]);
    return { regular, bold };
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw error;
  }
}
