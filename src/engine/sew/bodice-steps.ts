import { pieceAt, type Seam, seamsNamed } from '../piece/index.ts';
import { layerOf, lengthAlong, type SewLook, shoulderWidth, usesOf } from './look.ts';
import { makeStep } from './make-step.ts';
import type { SewStep, StepKind } from './step.ts';
import { edgesOf, piecesOf, tell } from './words-of.ts';

/** The seams of shell and lining that make a bodice of flat pieces: panels, yokes, shoulders, sides, wrapped fronts. */
export function bodiceSteps(look: SewLook): readonly SewStep[] {
  return [
    ...together(look, 'princess', 'princess'),
    ...together(look, 'yoke', 'yoke'),
    ...shoulders(look),
    ...sides(look),
    ...together(look, 'waist', 'wrap'),
    ...seamsNamed(look, 'own').map((seam) => ownSeam(look, seam)),
  ];
}

/** All seams of one name, front and back in one go, the shell and the lining apart. */
function together(look: SewLook, name: 'princess' | 'yoke' | 'waist', kind: StepKind): readonly SewStep[] {
  return (['shell', 'lining'] as const).flatMap((layer) => {
    const seams = seamsNamed(look, name).filter((seam) => layerOf(look, seam) === layer);
    if (seams.length === 0) return [];
    const at = seams.flatMap(usesOf);
    const net = at.some((use) => pieceAt(look, use).cloth === 'yoke');
    return [
      makeStep(look, {
        id: layer === 'shell' ? kind : `${kind}-lining`,
        kind,
        seams,
        say: tell(`sew.do.${kind as 'princess' | 'yoke' | 'wrap'}`, { pieces: piecesOf(look, at) }),
        reasons: [name === 'yoke' && net ? tell('sew.why.yoke') : null],
      }),
    ];
  });
}

function shoulders(look: SewLook): readonly SewStep[] {
  return seamsNamed(look, 'shoulder').map((seam) => {
    const lining = layerOf(look, seam) === 'lining';
    const last = look.armholes === 'shoulders-last';
    const width = { width: { mm: shoulderWidth(look) } };
    return makeStep(look, {
      id: seam.id,
      kind: last ? 'shoulders-last' : 'shoulder',
      station: last && lining ? 'hand' : 'machine',
      seams: [seam],
      say: tell(last ? (lining ? 'sew.do.shoulders-felled' : 'sew.do.shoulders-last') : 'sew.do.shoulder', {
        pieces: piecesOf(look, usesOf(seam)),
      }),
      reasons: [last && !lining ? tell('sew.why.shoulders-last', width) : null],
    });
  });
}

/** Shell and lining in one run where both are open at the side when the armholes have been turned; else one by one. */
function sides(look: SewLook): readonly SewStep[] {
  const seams = seamsNamed(look, 'side');
  const bagged = look.armholes === 'through-shoulder' || look.armholes === 'shoulders-last';
  if (bagged && seams.some((seam) => layerOf(look, seam) === 'lining')) {
    return [
      makeStep(look, {
        id: 'sides',
        kind: 'sides-in-one',
        seams,
        say: tell('sew.do.sides-in-one', { pieces: piecesOf(look, seams.flatMap(usesOf)) }),
        reasons: [tell('sew.why.sides-in-one')],
      }),
    ];
  }
  return seams.map((seam) =>
    makeStep(look, {
      id: seam.id,
      kind: 'side',
      seams: [seam],
      say: tell('sew.do.side', { pieces: piecesOf(look, usesOf(seam)) }),
    }),
  );
}

/** A seam of the maker's own: two parts that she has cut apart, or a fold of one piece. */
function ownSeam(look: SewLook, seam: Seam): SewStep {
  const at = usesOf(seam);
  const one = new Set(at.map(({ piece }) => piece)).size === 1;
  return makeStep(look, {
    id: seam.id,
    kind: one ? 'dart' : 'seam',
    seams: [seam],
    say: one
      ? tell('sew.do.own-fold', { pieces: piecesOf(look, at) })
      : tell('sew.do.seam', { edges: edgesOf(look, at), length: { mm: lengthAlong(look, seam.a) } }),
  });
}
