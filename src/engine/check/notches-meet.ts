import { pathAt } from '../geometry/index.ts';
import { edgeOf, type Join, layPleats, type Piece, pleatFinishedAt, type Seam } from '../piece/index.ts';
import { type Check, type CheckPlace, NOWHERE, tell } from './check.ts';
import { kindWords, type Look, type Rule, seamWords, titleOf } from './look.ts';
import { type MetNotch, notchKey, walkSeam } from './passages.ts';
import { SLACK, TRADE_FORGIVES } from './tolerance.ts';

/** Two notches that are sewn to each other lie at the same place of the seam within this, mm (our own limit). */
const NOTCHES_MEET = 1;

/**
 * Notches that share a match lie at the same sewn place on both sides of a seam, and every notch has at least one
 * mate. Stitching lines are walked, not cut edges, allowing for ease and pleats ("How to walk a pattern, pt 2",
 * K. Fasanella).
 */
export const notchesMeet: Rule = (look) => {
  const mated = new Set<string>();
  const apart = look.garment.seams.flatMap((seam) => seamNotches(look, seam, mated));
  const alone = look.garment.pieces.flatMap((piece) =>
    piece.notches.filter((notch) => !mated.has(notchKey(piece.id, notch))).map((notch) => ({ piece, notch })),
  );
  const findings = [...apart, ...alone.map(({ piece, notch }) => lonely({ piece, notch, at: notch.at }))];
  if (findings.length > 0 || mated.size === 0) return findings;
  return [
    {
      ...meeting('ok', 0, NOWHERE),
      measured: { count: mated.size },
      allowed: null,
      say: tell('check.notches-meet.all', { count: mated.size }),
      todo: null,
    },
  ];
};

function seamNotches(look: Look, seam: Seam, mated: Set<string>): Check[] {
  const { share, a, b } = walkSeam(look, seam);
  const sewn = sewnRange(seam.join, share, b.length);
  const worst = new Map<string, Check>();
  for (const [ours, others, fromA] of [
    [a.notches, b.notches, true],
    [b.notches, a.notches, false],
  ] as const) {
    for (const met of ours) {
      const mates = others.filter((other) => other.notch.match === met.notch.match);
      if (mates.length === 0) continue;
      mated.add(notchKey(met.piece.id, met.notch));
      const [nearest, gap] = nearestOf(met, mates, (mate) =>
        fromA ? gapBetween(met.at, sewn(mate.at)) : gapBetween(mate.at, sewn(met.at)),
      );
      const before = worst.get(met.notch.match)?.measured;
      if (gap <= NOTCHES_MEET + SLACK || (before && 'mm' in before && before.mm >= gap)) continue;
      worst.set(met.notch.match, apartBy(seam, met, nearest, gap));
    }
  }
  return [...worst.values()];
}

/** From a place on flat side b to the places of side a where it can come to lie, mm from the seam's start. */
function sewnRange(join: Join, share: number, lengthB: number): (b: number) => readonly [number, number] {
  const exact = (at: number) => [at, at] as const;
  switch (join.kind) {
    case 'flat':
      return exact;
    case 'eased': {
      // The ease may lie before the notch or after it.
      const ease = join.ease / share;
      return (b) => [b - Math.max(ease, 0), b - Math.min(ease, 0)];
    }
    case 'gathered': {
      const gathers = lengthB - (join.plainEnd ?? 0);
      return (b) => exact(Math.min(b, gathers) / join.ratio + Math.max(b - gathers, 0));
    }
    case 'pleated': {
      const pleats = join.pleats / share;
      if (!Number.isInteger(pleats) || pleats < 1) {
        const finished = (join.pleats * join.spacing) / share;
        return (b) => exact((b / lengthB) * finished);
      }
      const layout = layPleats({ ...join, pleats });
      return (b) => exact(pleatFinishedAt(layout, b));
    }
  }
}

const gapBetween = (a: number, [from, to]: readonly [number, number]): number =>
  Math.max(from - a, a - to, 0);

function nearestOf(
  met: MetNotch,
  mates: readonly MetNotch[],
  gapTo: (mate: MetNotch) => number,
): readonly [MetNotch, number] {
  return mates.reduce<readonly [MetNotch, number]>(
    (best, mate) => {
      const gap = gapTo(mate);
      return gap < best[1] ? [mate, gap] : best;
    },
    [met, Number.POSITIVE_INFINITY],
  );
}

const meeting = (level: Check['level'], gap: number, where: CheckPlace) =>
  ({
    code: 'notches-meet',
    level,
    measured: { mm: gap },
    allowed: { to: { mm: NOTCHES_MEET } },
    where,
  }) as const;

const apartBy = (seam: Seam, met: MetNotch, mate: MetNotch, gap: number): Check => ({
  ...meeting(gap > TRADE_FORGIVES + SLACK ? 'stop' : 'warn', gap, {
    ...notchPlace(met.piece, met),
    pieces: [...new Set([met.piece.id, mate.piece.id])],
    edges: [met, mate].map(({ piece, notch }) => ({ piece: piece.id, edge: notch.edge })),
  }),
  say: tell('check.notches-meet.apart', {
    seam: seamWords(seam),
    a: titleOf(met.piece),
    b: titleOf(mate.piece),
    gap: { mm: gap },
  }),
  todo: tell('check.notches-meet.walk', { a: titleOf(met.piece), b: titleOf(mate.piece) }),
});

function lonely(met: MetNotch): Check {
  const values = {
    piece: titleOf(met.piece),
    edge: kindWords(edgeOf(met.piece, met.notch.edge).kind),
    at: { mm: met.at },
  };
  return {
    ...meeting('warn', 0, notchPlace(met.piece, met)),
    measured: { count: 0 },
    allowed: { from: { count: 1 } },
    say: tell('check.notches-meet.alone', values),
    todo: tell('check.notches-meet.add', values),
  };
}

const notchPlace = (piece: Piece, { notch }: MetNotch): CheckPlace => ({
  pieces: [piece.id],
  edges: [{ piece: piece.id, edge: notch.edge }],
  at: pathAt(edgeOf(piece, notch.edge).path, notch.at).point,
});
