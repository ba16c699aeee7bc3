import { describe, expect, it } from 'vitest';
import { pressKey, TAKE_BACK } from './keypad-text.ts';

const typed = (...keys: readonly string[]): string => keys.reduce(pressKey, '');

describe('the keypad', () => {
  it.each([
    [['2', '0', '1/2'], '20 1/2'],
    [['2', '0', '1/2', '3/8'], '20 3/8'],
    [['3/4'], '3/4'],
    [['5', '2', '.', '5'], '52.5'],
    [['.', '5'], '0.5'],
    [['5', '.', '5', '.'], '5.5'],
    [['5', '.', '1/2'], '5 1/2'],
    [['2', '0', '1/2', TAKE_BACK], '20'],
    [['2', '0', TAKE_BACK], '2'],
    [['2', '1/2', '3'], '3'],
    [[TAKE_BACK], ''],
  ])('%j writes %s', (keys, text) => {
    expect(typed(...keys)).toBe(text);
  });
});
