/** Windows keeps these for devices, whatever follows a point after them. */
const RESERVED = /^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(\.|$)/i;

/** File systems take 255 bytes (ext4, NTFS counts 255 letters); room is left for an ending and a number. */
const MOST_BYTES = 160;

/**
 * A name as a file or folder may be called on Windows, macOS and Linux: letters of all scripts stay, signs that one
 * of them forbids become a hyphen, no dot or space at the ends, no device name. `otherwise` where nothing is left.
 */
export function safeFileName(name: string, otherwise: string): string {
  const plain = name
    .normalize('NFC')
    .replace(/[<>:"/\\|?*\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, '-')
    .replace(/\s+/gu, ' ')
    .replace(/^[-. ]+|[-. ]+$/gu, '');
  const short = shortened(plain).replace(/[-. ]+$/u, '');
  if (short === '') return otherwise;
  return RESERVED.test(short) ? `${short.replace(/\./g, '-')}_` : short;
}

/** Names told apart even where the file system takes no notice of capitals; `taken` are in use already. */
export function distinctFileNames(names: readonly string[], taken: readonly string[]): readonly string[] {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  return names.map((name) => {
    let own = name;
    for (let number = 2; used.has(own.toLowerCase()); number++) own = `${name} ${number}`;
    used.add(own.toLowerCase());
    return own;
  });
}

function shortened(text: string): string {
  let bytes = 0;
  let kept = '';
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? 0;
    bytes += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
    if (bytes > MOST_BYTES) break;
    kept += letter;
  }
  return kept;
}
