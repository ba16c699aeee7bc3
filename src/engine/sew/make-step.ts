import { findEdge, type Piece, pieceAt, type Seam } from '../piece/index.ts';
import type { Saying } from '../words/index.ts';
import { clothKindOf, isFacing, refsOf, type SewLook, usesOf } from './look.ts';
import type { Allowances, EdgeRef, SewStep, Station, StepKind } from './step.ts';
import { piecesOf, tell } from './words-of.ts';

/** What a step is made from; what is left out is empty. */
interface StepDraft {
  readonly id: string;
  readonly kind: StepKind;
  readonly station?: Station;
  readonly seams?: readonly Seam[];
  readonly inParts?: boolean;
  readonly allowances?: Allowances | null;
  readonly finishes?: readonly EdgeRef[];
  readonly sideA?: readonly EdgeRef[];
  readonly sideB?: readonly EdgeRef[];
  readonly say: Saying;
  readonly reasons?: readonly (Saying | null)[];
}

/** A step with everything that follows from the seams it sews filled in. */
export function makeStep(look: SewLook, draft: StepDraft): SewStep {
  const seams = draft.seams ?? [];
  const sideA = draft.sideA ?? refsOf(seams.flatMap((seam) => seam.a));
  const sideB = draft.sideB ?? refsOf(seams.flatMap((seam) => seam.b));
  return {
    id: draft.id,
    kind: draft.kind,
    station: draft.station ?? 'machine',
    sews: seams.map(({ id }) => id),
    ...(draft.inParts === true ? { inParts: true as const } : {}),
    allowances: draft.allowances ?? (seams.length === 0 ? null : allowancesOf(look, seams)),
    finishes: draft.finishes ?? [],
    sideA: sideA.length > 0 ? sideA : (draft.finishes ?? []),
    sideB,
    title: titleOf(look, draft.kind, [...sideA, ...sideB, ...(draft.finishes ?? [])]),
    say: draft.say,
    reasons: (draft.reasons ?? []).filter((reason) => reason !== null),
  };
}

/** More pieces than this are not named in a title; the sentence below it names them all. */
const MOST_NAMED = 3;

function titleOf(look: SewLook, kind: StepKind, at: readonly EdgeRef[]): Saying {
  const step = { word: `sew.step.${kind}` };
  const named = [...new Map(at.map((ref) => [ref.piece, ref])).values()];
  if (named.length === 0) return tell(`sew.step.${kind}`);
  if (named.length <= MOST_NAMED) return tell('sew.title', { step, pieces: piecesOf(look, named) });
  const [first, second] = named.map((ref) => pieceAt(look, ref).title);
  return tell('sew.title-more', { step, first: first ?? '', second: second ?? '' });
}

/** Narrow in net; enclosed where the lining of the bodice comes to lie over all of them; neatened elsewhere. */
function allowancesOf(look: SewLook, seams: readonly Seam[]): Allowances {
  const at = seams.flatMap(usesOf);
  if (at.every((use) => clothKindOf(look, pieceAt(look, use)) === 'net')) return 'narrow';
  return at.every((use) => isCovered(look, use)) ? 'enclosed' : 'neatened';
}

/** Whether an edge lies between the shell and the lining of the bodice when the dress is done. */
function isCovered(look: SewLook, at: EdgeRef): boolean {
  const piece = pieceAt(look, at);
  if (isFacing(look, piece) || look.seamsAt(at).some(({ name }) => name === 'own')) return false;
  const id = piece.id.replace(/-lining$/, '');
  const half = id.replace(/-(yoke|side)$/, '');
  if (half !== 'front' && half !== 'back') return false;
  const named = (wanted: string): Piece | undefined => look.garment.pieces.find((p) => p.id === wanted);
  if (id.endsWith('-yoke') && named(`${id}-lining`) !== undefined) return true;
  const inside = named(`${half}-lining`);
  return inside !== undefined && (!id.endsWith('-yoke') || findEdge(inside, 'yoke-line') === undefined);
}
