import type { Body } from '../body/index.ts';
import type { ButtonTrim, Trim } from '../piece/index.ts';
import { type Check, tell } from './check.ts';
import type { Look, Rule } from './look.ts';

/**
 * Buttons and studs on clothes for children up to 36 months and 98 cm: from 6 mm across they must hold a pull of
 * 70 N, from 3 to under 6 mm 50 N, and no part may come off (CEN/TS 17394-1:2021, as a testing house sums it up).
 * In the United States the law on small parts exempts children's clothing and its buttons (16 CFR 1501.3(d)): there
 * it is a caution. No legal advice.
 */
const UNDER_MONTHS = 36;
const UNDER_HEIGHT = 980;
const PULLS = [
  { from: 6, newtons: 70 },
  { from: 3, newtons: 50 },
] as const;

export const smallParts: Rule = (look) =>
  isSmallChild(look.body) ? look.garment.trims.filter(isSmall).map((trim) => finding(look, trim)) : [];

const isSmall = (trim: Trim): trim is ButtonTrim => trim.kind === 'buttons' || trim.kind === 'studs';

const isSmallChild = ({ ageMonths, values }: Body): boolean =>
  ageMonths === null ? values.height.mm <= UNDER_HEIGHT : ageMonths <= UNDER_MONTHS;

function finding(look: Look, trim: ButtonTrim): Check {
  const pull = PULLS.find(({ from }) => trim.diameter >= from);
  const there = new Set(look.garment.pieces.map((piece) => piece.id));
  const values = {
    part: { word: trim.kind === 'studs' ? 'check.trim.studs' : 'check.trim.buttons' } as const,
    // Small sizes are told in mm: the rule is, and an inch ruler does not show them.
    diameter: Math.round(trim.diameter * 10) / 10,
    newtons: pull?.newtons ?? 0,
  };
  return {
    code: 'small-parts',
    level: pull === undefined ? 'warn' : 'note',
    measured: { mm: trim.diameter },
    allowed: { from: { mm: PULLS[1].from } },
    where: { pieces: trim.pieces.filter((id) => there.has(id)), edges: [] },
    say: tell(pull === undefined ? 'check.small-parts.tiny' : 'check.small-parts.pull', values),
    todo: tell('check.small-parts.todo', values),
  };
}
