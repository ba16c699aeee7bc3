import { opensBack, pieceAt, type Seam, seamsNamed } from '../piece/index.ts';
import type { WordKey } from '../words/index.ts';
import { clothKindOf, isBodice, refsOf, type SewLook, usesOf } from './look.ts';
import { makeStep } from './make-step.ts';
import type { SewStep } from './step.ts';
import { edgesOf, piecesOf, tell } from './words-of.ts';

/** Skirts, layer by layer: widths joined, tiers, and the seams that hang them from the waist. */
export function skirtSteps(look: SewLook): readonly SewStep[] {
  return [...widths(look), ...closeBelow(look), ...tiers(look), ...waists(look)];
}

const isNet = (look: SewLook, seam: Seam): boolean =>
  usesOf(seam).some((at) => clothKindOf(look, pieceAt(look, at)) === 'net');

/** The seam of the opening in a layer that lies under or over the skirt itself: net, lining. */
const isHidden = (look: SewLook, seam: Seam): boolean =>
  isNet(look, seam) || usesOf(seam).every((at) => pieceAt(look, at).layer === 'lining');

const ofSkirt = (look: SewLook, seam: Seam): boolean =>
  usesOf(seam).every((at) => !isBodice(pieceAt(look, at)));

function widths(look: SewLook): readonly SewStep[] {
  const rings = new Map<string, Seam[]>();
  const joins = seamsNamed(look, 'skirt-join');
  const hidden = seamsNamed(look, 'closing').filter((seam) => ofSkirt(look, seam) && isHidden(look, seam));
  for (const seam of [...joins, ...hidden]) {
    const ring = look.ringOf(seam.a[0]?.piece ?? '');
    rings.set(ring, [...(rings.get(ring) ?? []), seam]);
  }
  return [...rings].map(([ring, seams]) => {
    const open = seams.some(({ name }) => name === 'closing');
    return makeStep(look, {
      id: `widths-${ring}`,
      kind: 'widths',
      seams,
      say: tell(wordsOf(look, seams), {
        pieces: piecesOf(look, seams.flatMap(usesOf)),
        count: seams.reduce((sum, { a }) => sum + Math.max(...a.map(({ times }) => times)), 0),
      }),
      reasons: [open && seams.some((seam) => isNet(look, seam)) ? tell('sew.why.net-opening') : null],
    });
  });
}

function wordsOf(look: SewLook, seams: readonly Seam[]): WordKey {
  if (seams.every(({ name }) => name !== 'closing')) return 'sew.do.widths';
  if (seams.some((seam) => isNet(look, seam))) return 'sew.do.widths-net';
  return look.garment.closing?.toHem === true ? 'sew.do.widths-open' : 'sew.do.widths-slit';
}

/** The seam of the skirt itself under the opening. */
function closeBelow(look: SewLook): readonly SewStep[] {
  const seams = seamsNamed(look, 'closing').filter((seam) => ofSkirt(look, seam) && !isHidden(look, seam));
  if (seams.length === 0) return [];
  const toHem = look.garment.closing?.toHem === true;
  const concealed = look.garment.closing?.kind === 'concealed-zip';
  return [
    makeStep(look, {
      id: 'close-below',
      kind: 'close-below',
      seams,
      allowances: 'neatened',
      say: tell(toHem ? 'sew.do.open-to-hem' : 'sew.do.close-below', {
        pieces: piecesOf(look, seams.flatMap(usesOf)),
      }),
      reasons: [concealed && !toHem ? tell('sew.why.concealed-first') : null],
    }),
  ];
}

function tiers(look: SewLook): readonly SewStep[] {
  return seamsNamed(look, 'tier').flatMap((seam) => [
    makeStep(look, {
      id: seam.id,
      kind: 'tier',
      seams: [seam],
      say: tell('sew.do.tier', { lower: piecesOf(look, seam.b), upper: piecesOf(look, seam.a) }),
    }),
  ]);
}

/** The skirt, what lies over it, and what lies under it are hung one after the other, and the lining last. */
function waists(look: SewLook): readonly SewStep[] {
  const hung = seamsNamed(look, 'skirt-waist', 'overskirt-waist').flatMap((seam) => {
    const net = isNet(look, seam);
    const lining = seam.a.every((at) => pieceAt(look, at).layer === 'lining');
    return [
      makeStep(look, {
        id: seam.id,
        kind: net ? 'net-waist' : 'waist',
        seams: [seam],
        say: tell(lining ? 'sew.do.waist-lining' : net ? 'sew.do.net-waist' : 'sew.do.waist', {
          skirt: piecesOf(look, seam.b),
        }),
        reasons: [net ? tell('sew.why.net-waist') : lining ? null : tell('sew.why.waist')],
      }),
    ];
  });
  const closed = seamsNamed(look, 'waist-lining').map((seam) =>
    makeStep(look, {
      id: seam.id,
      kind: 'fell',
      station: 'hand',
      seams: [seam],
      allowances: 'enclosed',
      say: tell('sew.do.fell-waist', { edges: edgesOf(look, refsOf(seam.b)) }),
      reasons: [opensBack(look.garment.closing) ? tell('sew.why.fell-waist') : null],
    }),
  );
  return [...hung, ...closed];
}
