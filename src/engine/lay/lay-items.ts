import type { Point } from '../geometry/index.ts';
import type { WordKey } from '../words/index.ts';
import type { LayCloth, LayPiece } from './cloth-rules.ts';
import { type Draft, depthOf, draftsOf, type LayLayer, type LayVariant } from './lay-drafts.ts';
import { type LayRefusal, refusal } from './lay-refusal.ts';
import type { PieceShape } from './piece-shape.ts';
import { poseOf, type ShapeStore, turnsAllowed } from './poses.ts';
import { sizeRefusal } from './size-refusal.ts';
import {
  centrePoint,
  type MatchedPiece,
  matchedPoint,
  type StripeAnchor,
  stripePhases,
} from './stripe-phases.ts';
import type { TurnDegrees } from './turns.ts';

/** One thing to place. */
export interface LayItem {
  readonly piece: number;
  /** Which copies of the piece it gives. */
  readonly copies: readonly number[];
  readonly layer: LayLayer;
  readonly shape: PieceShape;
  readonly variants: readonly LayVariant[];
  readonly anchor: StripeAnchor | null;
}

/** A stretch of cloth that lies in one way. `depth`: across, as it is folded. */
export interface LayStretch {
  readonly folding: LayCloth['folding'];
  readonly depth: number;
  readonly items: readonly LayItem[];
}

export interface LayItems {
  readonly stretches: readonly LayStretch[];
  readonly notes: readonly { readonly key: WordKey; readonly values: LayRefusal['values'] }[];
  readonly refusals: readonly LayRefusal[];
}

/** Turns pieces into what has to be placed, as the cloth is folded: items with all ways in which each may lie. */
export function layItems(pieces: readonly LayPiece[], cloth: LayCloth, store: ShapeStore): LayItems {
  const notes: LayItems['notes'][number][] = [];
  const refusals: LayRefusal[] = [];
  const first: Draft[] = [];
  const after: Draft[] = [];
  const garments = [...new Set(pieces.map(({ garment, child }) => garment ?? child))];
  for (const [index, piece] of pieces.entries()) {
    const copies = piece.copies ?? piece.cut.piece.cutting.copies;
    const title = piece.cut.label.title;
    if (!Number.isInteger(copies) || copies < 0) {
      refusals.push(refusal('lay.bad-copies', { piece: title, found: String(copies) }, [index]));
      continue;
    }
    if (copies === 0) continue;
    const whole = store.whole(piece.cut, cloth.gap);
    if (whole === null) {
      refusals.push(refusal('lay.no-outline', { piece: title }, [index]));
      continue;
    }
    if (whole.grown.cleaned) notes.push({ key: 'lay.note.cleaned', values: { piece: title } });
    const otherWay = cloth.garmentOneWay === true && garments.indexOf(piece.garment ?? piece.child) % 2 === 1;
    const turns = turnsOf(piece, cloth, otherWay);
    const drafts = draftsOf({ piece, index, copies, cloth, whole, turns, store });
    const size = sizeRefusal(piece, index, cloth, whole, turns, store);
    for (const draft of drafts) {
      if (draft.variants.length > 0) (draft.stretch === 'first' ? first : after).push(draft);
      else refusals.push(size);
      if (draft.stretch === 'after' && draft.variants.length > 0) {
        notes.push({ key: 'lay.note.opened', values: { piece: title } });
      }
    }
  }
  const anchored = withAnchors([...first, ...after], pieces, cloth);
  refusals.push(...anchored.refusals);
  notes.push(...anchored.notes);
  const stretch = (drafts: readonly Draft[], folding: LayCloth['folding']): readonly LayStretch[] =>
    drafts.length === 0
      ? []
      : [{ folding, depth: depthOf(cloth, folding), items: drafts.map(anchored.item) }];
  return {
    stretches: [...stretch(first, cloth.folding), ...stretch(after, 'single')],
    notes: notes.filter((note, i) => i === notes.findIndex((n) => sameNote(n, note))),
    refusals: refusals.filter((r, i) => i === refusals.findIndex((q) => sameNote(q, r))),
  };
}

type Note = { readonly key: string; readonly values: LayRefusal['values'] };
const sameNote = (a: Note, b: Note): boolean =>
  a.key === b.key && JSON.stringify(a.values) === JSON.stringify(b.values);

function turnsOf(piece: LayPiece, cloth: LayCloth, otherWay: boolean): readonly TurnDegrees[] {
  const matched = (piece.matches?.length ?? 0) > 0;
  if (cloth.garmentOneWay !== true || cloth.way === 'one-way')
    return turnsAllowed(piece.grain, cloth, matched);
  const turns = turnsAllowed(piece.grain, { ...cloth, way: 'one-way' }, matched);
  return otherWay && piece.grain !== 'any' ? turns.map((t) => ((t + 180) % 360) as TurnDegrees) : turns;
}

/** Stripes: every matched piece gets the point and phase that hold it. */
function withAnchors(
  drafts: readonly Draft[],
  pieces: readonly LayPiece[],
  cloth: LayCloth,
): {
  readonly item: (draft: Draft) => LayItem;
  readonly notes: LayItems['notes'];
  readonly refusals: readonly LayRefusal[];
} {
  const refusals: LayRefusal[] = [];
  const matched: MatchedPiece[] = [];
  const { repeat } = cloth;
  for (const [index, piece] of pieces.entries()) {
    const one = drafts.find((d) => d.piece === index);
    if (repeat === undefined || one === undefined || (piece.matches?.length ?? 0) === 0) continue;
    const { turn } = poseOf(one.first, false);
    const points: { group: string; at: Point }[] = [];
    for (const match of piece.matches ?? []) {
      const at = matchedPoint(piece, match, one.shape.frame, turn);
      if (at !== null) points.push({ group: match.group, at });
      else {
        const values = { piece: piece.cut.label.title, edge: match.edge };
        refusals.push(refusal('lay.no-such-edge', values, [index]));
      }
    }
    const opened = one.layer === 'on-fold' ? null : centrePoint(piece, one.shape.frame, turn);
    matched.push({ piece: index, points, opened });
  }
  const { anchors, clashes } = stripePhases(matched, repeat ?? {});
  return {
    refusals,
    notes: clashes.map(({ piece, group, off }) => ({
      key: 'lay.note.stripes-off',
      values: { piece: pieces[piece]?.cut.label.title ?? '', group, off: { mm: off } },
    })),
    item: ({ piece, copies, layer, shape, variants }) => ({
      piece,
      copies,
      layer,
      shape,
      variants,
      anchor: anchors.get(piece) ?? null,
    }),
  };
}
