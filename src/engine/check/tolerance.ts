import { inches } from '../units/index.ts';

/** Two stitching lines that are drawn to meet agree within this, mm: the width of a pencil line (our own limit). */
export const SEAM_AGREES = 0.5;

/**
 * What a sewn seam forgives: patterns are kept true to 1/16 in, and many makers are happy with 1/8 in
 * ("10 Patternwork Skills", Threads 200, Dec 2018 - Jan 2019).
 */
export const TRADE_TRUE = inches(1 / 16);
export const TRADE_FORGIVES = inches(1 / 8);

/** Lets a value that sits on a limit pass in spite of rounding in the last digits. */
export const SLACK = 1e-6;
