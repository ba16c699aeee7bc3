import { strToU8, Zip, ZipDeflate, ZipPassThrough } from 'fflate';

/** A zip that is written file by file; what is written need not stay in memory. */
export interface ZipFile {
  /** `path` with `/` between folders. Text is packed tight; bytes, which are PDFs, are packed already. */
  add(path: string, content: Uint8Array | string): void;
  end(): Blob;
}

/** Chunks are laid together from this many bytes on: a blob may leave the memory of the page, bytes may not. */
const LAY_ASIDE = 4_000_000;

/** The only date in the zip is `day`, `2027-04-24`, so that the same pack gives the same bytes. */
export function openZip(day: string): ZipFile {
  let chunks: Uint8Array<ArrayBuffer>[] = [];
  let held = 0;
  const aside: Blob[] = [];
  const layAside = (): void => {
    aside.push(new Blob(chunks));
    chunks = [];
    held = 0;
  };
  const zip = new Zip((error, chunk) => {
    if (error !== null) throw error;
    chunks.push(new Uint8Array(chunk));
    held += chunk.length;
    if (held > LAY_ASIDE) layAside();
  });
  const [year = 2000, month = 1, date = 1] = day.split('-').map(Number);
  // A zip holds local times without a zone; noon is the same day wherever it is read.
  const mtime = new Date(year, month - 1, date, 12);
  return {
    add(path, content) {
      const file = typeof content === 'string' ? new ZipDeflate(path) : new ZipPassThrough(path);
      file.mtime = mtime;
      zip.add(file);
      file.push(typeof content === 'string' ? strToU8(content) : content, true);
    },
    end() {
      zip.end();
      layAside();
      return new Blob(aside, { type: 'application/zip' });
    },
  };
}
