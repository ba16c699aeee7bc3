/** A key of the keypad: a digit, the decimal point, a fraction (`3/8`), or the one that takes back. */
export type KeypadKey = string;

export const TAKE_BACK = 'take-back';

/** What is written after a key is pressed. A fraction takes the place of the one that is there. */
export function pressKey(text: string, key: KeypadKey): string {
  const { whole, fraction } = parted(text);
  if (key === TAKE_BACK) return fraction === '' ? text.slice(0, -1) : whole;
  if (key.includes('/')) {
    const plain = whole.replace(/[.,]\d*$/, '');
    return plain === '' ? key : `${plain} ${key}`;
  }
  if (key === '.') return fraction !== '' || /[.,]/.test(whole) ? text : `${whole === '' ? '0' : whole}.`;
  // A digit after a fraction begins the number anew: nobody adds one to the other.
  return fraction === '' ? `${whole}${key}` : key;
}

function parted(text: string): { readonly whole: string; readonly fraction: string } {
  const found = /^(.*?)\s*(\d+\/\d+)$/.exec(text);
  return found === null ? { whole: text, fraction: '' } : { whole: found[1] ?? '', fraction: found[2] ?? '' };
}
