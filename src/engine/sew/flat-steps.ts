import { pathEnd, pathStart } from '../geometry/index.ts';
import { type Piece, type Seam, seamsNamed } from '../piece/index.ts';
import { type SewLook, usesOf } from './look.ts';
import { makeStep } from './make-step.ts';
import type { EdgeRef, SewStep } from './step.ts';
import { edgesOf, piecesOf, tell } from './words-of.ts';

/** What is sewn while the pieces still lie flat: curved edges held, darts, tucks, elastic. */
export function flatSteps(look: SewLook): readonly SewStep[] {
  return [...staystitching(look), ...darts(look), ...tucks(look), ...elastics(look)];
}

/**
 * A row of stitches 6 mm from the cut edge keeps a curve from stretching; an edge on the straight grain needs none
 * (state extension circulars on staystitching; waist of a circle: a state bulletin on hanging and levelling).
 */
function staystitching(look: SewLook): readonly SewStep[] {
  const edges = look.garment.pieces
    .filter((piece) => piece.layer === 'shell')
    .flatMap((piece) =>
      piece.edges
        .filter(
          (edge) =>
            (edge.kind === 'neck' || (edge.kind === 'waist' && piece.cloth === 'skirt')) &&
            edge.path.segments.some((segment) => segment.kind !== 'line'),
        )
        .map((edge): EdgeRef => ({ piece: piece.id, edge: edge.name })),
    );
  if (edges.length === 0) return [];
  return [
    makeStep(look, {
      id: 'staystitch',
      kind: 'staystitch',
      sideA: edges,
      say: tell('sew.do.staystitch', { edges: edgesOf(look, edges) }),
      reasons: [tell('sew.why.staystitch')],
    }),
  ];
}

/** Every dart of a piece in one go. */
function darts(look: SewLook): readonly SewStep[] {
  const byPiece = new Map<string, Seam[]>();
  for (const seam of seamsNamed(look, 'dart')) {
    const piece = seam.a[0]?.piece ?? '';
    byPiece.set(piece, [...(byPiece.get(piece) ?? []), seam]);
  }
  return [...byPiece].map(([piece, seams]) =>
    makeStep(look, {
      id: `darts-${piece}`,
      kind: 'dart',
      seams,
      say: tell('sew.do.dart', { pieces: piecesOf(look, seams.flatMap(usesOf)) }),
    }),
  );
}

/** A tuck lies level round the skirt: two stitching lines brought together. */
const hasTuck = (piece: Piece): boolean =>
  piece.markings.some(
    ({ kind, path }) => kind === 'pleat-meet' && Math.abs(pathStart(path).y - pathEnd(path).y) < 0.01,
  );

function tucks(look: SewLook): readonly SewStep[] {
  const rings = new Map<string, Piece[]>();
  for (const piece of look.garment.pieces.filter(hasTuck)) {
    const ring = look.ringOf(piece.id);
    rings.set(ring, [...(rings.get(ring) ?? []), piece]);
  }
  return [...rings].map(([ring, pieces]) => {
    const edges = pieces.flatMap((piece) => hemOf(piece));
    return makeStep(look, {
      id: `tucks-${ring}`,
      kind: 'tuck',
      sideA: edges,
      say: tell('sew.do.tuck', { pieces: piecesOf(look, edges) }),
      reasons: [tell('sew.why.tuck')],
    });
  });
}

const hemOf = (piece: Piece): readonly EdgeRef[] =>
  piece.edges
    .filter(({ kind }) => kind === 'hem' || kind === 'curved-hem')
    .map(({ name }) => ({ piece: piece.id, edge: name }));

/** Elastic is drawn in while the sleeve is flat, so that its ends are caught in the sleeve seam. */
function elastics(look: SewLook): readonly SewStep[] {
  return look.garment.pieces.flatMap((piece) => {
    const line = piece.markings.find(({ kind, drawnTo }) => kind === 'gather' && drawnTo !== undefined);
    if (line?.drawnTo === undefined) return [];
    const edges = piece.edges
      .filter(({ kind }) => kind === 'sleeve-hem' || kind === 'curved-sleeve-hem')
      .map(({ name }): EdgeRef => ({ piece: piece.id, edge: name }));
    return [
      makeStep(look, {
        id: `elastic-${piece.id}`,
        kind: 'elastic',
        sideA: edges,
        say: tell('sew.do.elastic', { piece: piece.title, length: { mm: line.drawnTo } }),
        reasons: [tell('sew.why.elastic')],
      }),
    ];
  });
}
