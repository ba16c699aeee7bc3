import type { PaperFonts } from '../../pdf/index.ts';

/** Fetches the fonts from the page's own place when they are first wanted; one that did not come is asked for again. */
export function fontsOnce(regular: string, bold: string): () => Promise<PaperFonts> {
  let fetched: Promise<PaperFonts> | null = null;
  return () => {
    fetched ??= Promise.all([bytesAt(regular), bytesAt(bold)]).then(([r, b]) => ({ regular: r, bold: b }));
    fetched.catch(() => {
      fetched = null;
    });
    return fetched;
  };
}

async function bytesAt(address: string): Promise<Uint8Array> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}
