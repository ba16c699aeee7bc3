import type { Join, Seam } from '../piece/index.ts';
import type { Saying } from '../words/index.ts';
import { type Check, type Level, tell } from './check.ts';
import { type Look, placeOfSeam, type Rule, seamWords, sewnTimes, sideLength, sideWords } from './look.ts';
import { SEAM_AGREES, SLACK, TRADE_FORGIVES, TRADE_TRUE } from './tolerance.ts';

/** A difference below this shows as nothing on an inch ruler, so it is told in tenths of a mm. */
const NOT_ON_A_RULER = 1;

/** Both sides of every seam have the lengths that its join asks for; one finding a seam. */
export const seamLengths: Rule = (look) => look.garment.seams.map((seam) => checkSeam(look, seam));

function checkSeam(look: Look, seam: Seam): Check {
  const times = sewnTimes(look, seam);
  const a = sideLength(look, seam.a) / times - (seam.bareEnd ?? 0);
  const b = sideLength(look, seam.b) / times;
  const fit = fitOf(oneOf(seam.join, times), a, b);
  const off = Math.abs(fit.off);
  const level = levelOf(off);
  const values = {
    seam: seamWords(seam),
    a: sideWords(look, seam.a),
    b: sideWords(look, seam.b),
    lengthA: { mm: a },
    lengthB: { mm: b },
    off: { mm: off },
    tenths: Math.round(off * 10) / 10,
  };
  const wrong =
    off < NOT_ON_A_RULER
      ? 'check.seam-lengths.hair'
      : fit.off > 0
        ? 'check.seam-lengths.long'
        : 'check.seam-lengths.short';
  return {
    code: 'seam-lengths',
    level,
    measured: { mm: b },
    allowed: { from: { mm: fit.expected - fit.tolerance }, to: { mm: fit.expected + fit.tolerance } },
    where: placeOfSeam(seam),
    say: level === 'ok' ? agreement(seam.join, values) : tell(wrong, values),
    todo: level === 'ok' ? null : advice(level, off),
  };
}

/** A join tells of all its seams together; this is one of them. */
function oneOf(join: Join, times: number): Join {
  switch (join.kind) {
    case 'eased':
      return { ...join, ease: join.ease / times };
    case 'pleated':
      return { ...join, pleats: join.pleats / times };
    case 'flat':
    case 'gathered':
      return join;
  }
}

interface Fit {
  /** What side b should measure, mm of flat cloth. */
  readonly expected: number;
  readonly tolerance: number;
  /** How much b is too long (or, negative, too short), as it shows on the finished seam, mm. */
  readonly off: number;
}

function fitOf(join: Join, a: number, b: number): Fit {
  const plain = (expected: number): Fit => ({ expected, tolerance: SEAM_AGREES, off: b - expected });
  switch (join.kind) {
    case 'flat':
      return plain(a);
    case 'eased':
      return plain(a + join.ease);
    case 'gathered': {
      // A share of the gathers: what is too much in the flat cloth shrinks with them.
      const plain = join.plainEnd ?? 0;
      const expected = join.ratio * (a - plain) + plain;
      return {
        expected,
        tolerance: SEAM_AGREES * join.ratio,
        off: join.ratio > 0 ? (b - expected) / join.ratio : b,
      };
    }
    case 'pleated': {
      const expected = a + join.pleats * join.takeUp;
      const cloth = b - expected;
      const faces = join.pleats * join.spacing - a;
      return {
        expected,
        tolerance: SEAM_AGREES,
        off: Math.abs(cloth) >= Math.abs(faces) ? cloth : faces,
      };
    }
  }
}

function levelOf(off: number): Level {
  if (off <= SEAM_AGREES + SLACK) return 'ok';
  return off <= TRADE_FORGIVES + SLACK ? 'warn' : 'stop';
}

function agreement(join: Join, values: Saying['values']): Saying {
  switch (join.kind) {
    case 'flat':
      return tell('check.seam-lengths.flat', values);
    case 'eased':
      return tell('check.seam-lengths.eased', values);
    case 'gathered':
      return tell('check.seam-lengths.gathered', values);
    case 'pleated':
      return tell('check.seam-lengths.pleated', { ...values, pleats: join.pleats });
  }
}

function advice(level: Level, off: number): Saying {
  if (level === 'stop') return tell('check.seam-lengths.redraw');
  return tell(off <= TRADE_TRUE + SLACK ? 'check.seam-lengths.spread' : 'check.seam-lengths.true');
}
