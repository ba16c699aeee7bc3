import { pieceAt, type Seam, seamsNamed } from '../piece/index.ts';
import { isBodice, layerOf, type SewLook, usesOf } from './look.ts';
import { makeStep } from './make-step.ts';
import type { EdgeRef, SewStep } from './step.ts';
import { edgesOf, tell } from './words-of.ts';

/** How the dress opens: the edges of the opening, the zip, the lining closed along it, the fasteners. */
export function closingSteps(look: SewLook): readonly SewStep[] {
  const seams = seamsNamed(look, 'closing').filter((seam) =>
    usesOf(seam).some((at) => isBodice(pieceAt(look, at))),
  );
  const shell = seams.filter((seam) => layerOf(look, seam) === 'shell');
  const lining = seams.filter((seam) => layerOf(look, seam) === 'lining');
  return [...opening(look, shell), ...felled(look, lining), ...fasteners(look)];
}

function opening(look: SewLook, seams: readonly Seam[]): readonly SewStep[] {
  const { closing } = look.garment;
  if (seams.length === 0) return [];
  const edges = {
    edges: edgesOf(
      look,
      seams.flatMap((seam) => seam.a),
    ),
  };
  switch (closing?.kind) {
    case 'concealed-zip':
    case 'centred-zip':
    case 'lapped-zip':
      return [
        makeStep(look, {
          id: 'zip',
          kind: 'zip',
          seams,
          allowances: 'neatened',
          say: tell(`sew.do.${closing.kind}`, {
            zip: { mm: closing.zipLength },
            opening: { mm: closing.openingLength },
          }),
          reasons: [tell('sew.why.zip')],
        }),
      ];
    case 'shoulder-studs':
      return [
        makeStep(look, {
          id: 'lap-shoulders',
          kind: 'studs',
          seams,
          allowances: 'neatened',
          say: tell('sew.do.lap-shoulders', edges),
          reasons: [tell('sew.why.lap-shoulders')],
        }),
      ];
    case 'buttons':
    case 'lacing':
    case 'ties':
    case 'keyhole':
    case undefined:
      return [
        makeStep(look, {
          id: 'opening',
          kind: 'opening',
          seams,
          allowances: 'neatened',
          say: tell('sew.do.opening', edges),
        }),
      ];
  }
}

/** Edges of lining and facing along the opening, with seams of their own and without. */
function felled(look: SewLook, seams: readonly Seam[]): readonly SewStep[] {
  if (seams.length === 0) return [];
  return [fellOpening(look, seams, [])];
}

export const fellOpening = (look: SewLook, seams: readonly Seam[], loose: readonly EdgeRef[]): SewStep =>
  makeStep(look, {
    id: 'fell-opening',
    kind: 'fell',
    station: 'hand',
    seams,
    allowances: 'enclosed',
    finishes: loose,
    say: tell('sew.do.fell-opening', {
      edges: edgesOf(look, [...seams.flatMap((seam) => seam.a), ...loose]),
    }),
    reasons: [],
  });

/** The last thing at the opening. */
function fasteners(look: SewLook): readonly SewStep[] {
  const { closing } = look.garment;
  const edges = closingEdges(look);
  const step = (say: SewStep['say'], reason: SewStep['say'] | null = null): readonly SewStep[] => [
    makeStep(look, {
      id: 'fasten',
      kind: 'fasten',
      station: 'hand',
      sideA: edges,
      say,
      reasons: [reason],
    }),
  ];
  switch (closing?.kind) {
    case undefined:
      return [];
    case 'concealed-zip':
    case 'centred-zip':
    case 'lapped-zip':
      return step(tell('sew.do.fasten-hook'));
    case 'buttons':
      return step(
        tell('sew.do.fasten-buttons', { count: closing.count, hole: { mm: closing.holeLength } }),
        tell('sew.why.buttons'),
      );
    case 'lacing':
      return step(tell('sew.do.fasten-lacing', { cord: { mm: closing.cordLength } }));
    case 'ties':
      return step(tell('sew.do.fasten-ties'));
    case 'shoulder-studs':
      return step(tell('sew.do.fasten-studs', { count: 2 * closing.count }));
    case 'keyhole':
      return step(tell('sew.do.fasten-keyhole'));
  }
}

/** Where the fasteners sit: the edges that open, or the slit of a keyhole. */
function closingEdges(look: SewLook): readonly EdgeRef[] {
  const at = look.garment.pieces
    .filter((piece) => piece.layer === 'shell' && isBodice(piece))
    .flatMap((piece) =>
      piece.edges
        .filter(({ kind, name }) => kind === 'closing' || name === 'keyhole')
        .map(({ name }): EdgeRef => ({ piece: piece.id, edge: name })),
    );
  if (at.length > 0) return at;
  return seamsNamed(look, 'closing')
    .filter((seam) => layerOf(look, seam) === 'shell')
    .flatMap(usesOf)
    .map(({ piece, edge }) => ({ piece, edge }));
}
