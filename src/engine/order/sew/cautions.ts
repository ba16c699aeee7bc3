import type { Body } from '../../body/index.ts';
import type { Level } from '../../check/index.ts';
import type { Saying, WordKey } from '../../words/index.ts';
import type { Finding } from '../finding.ts';

/** Something that can hurt the child, with its limit, its standard and what to do. */
interface Caution {
  readonly level: Level;
  readonly say: Saying;
  readonly todo: Saying | null;
}

/** Checks that speak of what can hurt; they say it once for the page, the checks on paper and the sewing plan. */
const CODES: readonly string[] = ['ties-and-bows', 'small-parts', 'net-caution'];

/** Beads and sequins on clothes of children so old need more than thread (CEN/TR 16792:2014, after its summary). */
const UNDER_MONTHS = 36;
const UNDER_HEIGHT = 980;

/**
 * The cautions of one child's dress: those of the checks, also where a limit is kept, and what holds for any dress.
 * Not one is left out, and none is legal advice.
 */
export function cautionsOf(findings: readonly Finding[], body: Body): readonly Caution[] {
  const note = (key: WordKey): Caution => ({ level: 'note', say: { key, values: {} }, todo: null });
  const small =
    body.ageMonths === null ? body.values.height.mm <= UNDER_HEIGHT : body.ageMonths <= UNDER_MONTHS;
  return [
    ...findings
      .filter(({ code }) => CODES.includes(code))
      .map(({ level, say, todo }) => ({ level, say, todo })),
    ...(small ? [note('sew.caution.beads')] : []),
    note('sew.caution.pins'),
    note('sew.caution.law'),
  ];
}
