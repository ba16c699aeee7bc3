import { edgeAt, pieceAt, type Seam } from '../piece/index.ts';
import { lengthAlong, refsOf, type SewLook } from './look.ts';
import { makeStep } from './make-step.ts';
import type { EdgeRef, SewStep } from './step.ts';
import { edgesOf, tell } from './words-of.ts';

/** The steps, each after those that draw up the gathers and lay the pleats of its seams. */
export function withFullness(look: SewLook, steps: readonly SewStep[]): readonly SewStep[] {
  return steps.flatMap((step) => {
    const seams = look.garment.seams.filter(({ id }) => step.sews.includes(id));
    return [...gathers(look, seams, step.id), ...pleats(look, seams, step.id), step];
  });
}

function gathers(look: SewLook, seams: readonly Seam[], step: string): readonly SewStep[] {
  const full = seams.filter(({ join }) => join.kind === 'gathered');
  if (full.length === 0) return [];
  const inner = refsOf(full.flatMap((seam) => seam.b));
  const skirt = inner.some((at) => edgeAt(look, at).kind === 'waist' || pieceAt(look, at).cloth === 'net');
  return [
    makeStep(look, {
      id: `gather-${step}`,
      kind: 'gather',
      sideA: inner,
      say: tell('sew.do.gather', fullValues(look, full, inner)),
      reasons: [skirt ? tell('sew.why.gather') : null],
    }),
  ];
}

function pleats(look: SewLook, seams: readonly Seam[], step: string): readonly SewStep[] {
  const full = seams.filter(({ join }) => join.kind === 'pleated');
  if (full.length === 0) return [];
  const inner = refsOf(full.flatMap((seam) => seam.b));
  const count = full.reduce((sum, { join }) => sum + (join.kind === 'pleated' ? join.pleats : 0), 0);
  return [
    makeStep(look, {
      id: `pleats-${step}`,
      kind: 'pleats',
      station: 'iron',
      sideA: inner,
      say: tell('sew.do.pleats', { ...fullValues(look, full, inner), pleats: count }),
      reasons: [tell('sew.why.pleats')],
    }),
  ];
}

const fullValues = (look: SewLook, seams: readonly Seam[], inner: readonly EdgeRef[]) => ({
  edges: edgesOf(look, inner),
  length: { mm: sum(look, seams, 'b') },
  to: { mm: sum(look, seams, 'a') },
});

const sum = (look: SewLook, seams: readonly Seam[], side: 'a' | 'b'): number =>
  lengthAlong(
    look,
    seams.flatMap((seam) => seam[side]),
  );
