import type { CutPiece } from '../../engine/cut/index.ts';
import { type Affine, type Point, pathBounds, pathEnd, pathStart } from '../../engine/geometry/index.ts';
import { edgeEnd, edgeStart, findEdge, type Garment, type Piece } from '../../engine/piece/index.ts';
import { type FinishedSkirt, type FinishedWidth, finishedSkirts, sideOf } from './finished-skirt.ts';
import type { LaidPiece } from './lay-pieces.ts';
import { type DressLayer, HALVES, type Half, halfPieces, layersOf } from './layers.ts';
import { after, applyTo, chordOnto, MIRROR, STAY, shift } from './motion.ts';

/** A layer of the sewn view: the pieces that keep their shape, and widths of skirt as they hang when they are sewn. */
export interface SewnLayer {
  readonly layer: DressLayer;
  readonly pieces: readonly LaidPiece[];
  readonly widths: readonly (FinishedWidth & { readonly key: string; readonly frame: Affine })[];
}

type Seamed = 'shoulder' | 'side';

/**
 * The dress laid open as paper on a table, both halves: fronts below, backs joined to them at the shoulder or beside
 * them at the side by a turn and a shift, so that nothing is stretched; skirts below the waist in their finished
 * width. Layers from the outside in. The two fronts meet at the centre; the backs, which open there, are the mirror
 * of the halves as drafted, since a back half of the same side is seen from the other side of the cloth.
 */
export function sewOpen(garment: Garment, cuts: readonly CutPiece[], joined: Seamed): readonly SewnLayer[] {
  const frames: Readonly<Record<Half, Affine>> = { front: STAY, back: backMotion(garment, joined) };
  return layersOf(garment)
    .map((layer) => sewLayer(garment, cuts, layer, frames, joined))
    .filter(({ pieces, widths }) => pieces.length + widths.length > 0);
}

function sewLayer(
  garment: Garment,
  cuts: readonly CutPiece[],
  layer: DressLayer,
  frames: Readonly<Record<Half, Affine>>,
  joined: Seamed,
): SewnLayer {
  const pieces: LaidPiece[] = [];
  const widths: SewnLayer['widths'][number][] = [];
  const lay = (piece: Piece, frame: Affine): void => {
    const cut = cuts.find((c) => c.piece.id === piece.id);
    if (cut === undefined) return;
    pieces.push({ key: `${piece.id} one`, cut, frame });
    pieces.push({ key: `${piece.id} other`, cut, frame: after(MIRROR, frame) });
  };
  for (const half of HALVES) {
    // Skirts lie under the waist of the bodice.
    const skirts = finishedSkirts(garment, half, layer);
    const hung = half === 'back' && joined === 'side' ? besideFront(garment, layer, skirts) : null;
    for (const skirt of skirts) {
      const frame = hung ?? frames[half];
      if (skirt.kind === 'piece') lay(skirt.piece, after(frame, skirt.frame));
      else {
        widths.push({ ...skirt, key: `${skirt.name} one`, frame });
        widths.push({ ...skirt, key: `${skirt.name} other`, frame: after(MIRROR, frame) });
      }
    }
  }
  for (const half of HALVES) for (const piece of halfPieces(garment, half, layer)) lay(piece, frames[half]);
  if (layer === 'shell' && joined === 'shoulder') {
    const sleeve = garment.pieces.find((piece) => piece.id === 'sleeve');
    const motion = sleeve === undefined ? null : sleeveMotion(garment, sleeve);
    if (sleeve !== undefined && motion !== null) lay(sleeve, motion);
  }
  return { layer, pieces, widths };
}

/** Where the dress lies open at the side, the skirts are joined there too, by their own side. */
function besideFront(garment: Garment, layer: DressLayer, back: readonly FinishedSkirt[]): Affine | null {
  const [frontSide, backSide] = [finishedSkirts(garment, 'front', layer), back].map(([first]) =>
    first === undefined ? null : sideOf(first),
  );
  if (frontSide == null || backSide == null) return null;
  const [from, fromEnd] = [pathStart(backSide), pathEnd(backSide)].map((at) => applyTo(MIRROR, at));
  if (from === undefined || fromEnd === undefined) return null;
  return after(chordOnto(from, fromEnd, pathStart(frontSide), pathEnd(frontSide)), MIRROR);
}

/** Room between halves that no seam joins, mm. */
const APART = 60;

/** Mirrors the back half and lays its seam on that of the front, end on end. */
function backMotion(garment: Garment, joined: Seamed): Affine {
  const [front, back] = [seamChord(garment, 'front', joined), seamChord(garment, 'back', joined)];
  if (front === null || back === null) {
    const boxes = halfPieces(garment, 'back').flatMap((p) => p.edges.map((edge) => pathBounds(edge.path)));
    const reach = Math.max(0, ...boxes.map((box) => box.maxX));
    const frontReach = Math.max(
      0,
      ...halfPieces(garment, 'front').flatMap((p) => p.edges.map((edge) => pathBounds(edge.path).maxX)),
    );
    return after(shift(frontReach + reach + APART, 0), MIRROR);
  }
  const [from, fromEnd] = [applyTo(MIRROR, back.from), applyTo(MIRROR, back.to)];
  return after(chordOnto(from, fromEnd, front.from, front.to), MIRROR);
}

interface Chord {
  readonly from: Point;
  readonly to: Point;
}

/** From the neck point to the end of the shoulder line, or from the underarm to the foot of the side. */
function seamChord(garment: Garment, half: Half, joined: Seamed): Chord | null {
  const seam = garment.seams.find((s) => s.id === joined);
  const inHalf = halfPieces(garment, half).map(({ id }) => id);
  const side = [seam?.a, seam?.b].find((edges) => edges?.some(({ piece }) => inHalf.includes(piece)));
  const ends = (side ?? []).flatMap(({ piece: id, edge: name, reversed = false }) => {
    const piece = garment.pieces.find((p) => p.id === id);
    const edge = piece === undefined ? undefined : findEdge(piece, name);
    if (edge === undefined) return [];
    const [start, end] = [pathStart(edge.path), pathEnd(edge.path)];
    return [reversed ? { from: end, to: start } : { from: start, to: end }];
  });
  const [first, last] = [ends[0], joined === 'shoulder' ? ends[0] : ends.at(-1)];
  return first === undefined || last === undefined ? null : { from: first.from, to: last.to };
}

/** The top of the cap to the shoulder tip, the sleeve running on as the shoulder does, its front to the front. */
function sleeveMotion(garment: Garment, sleeve: Piece): Affine | null {
  const front = halfPieces(garment, 'front').find(
    (piece) => findEdge(piece, 'armhole') && findEdge(piece, 'shoulder'),
  );
  if (front === undefined || findEdge(sleeve, 'cap-front') === undefined) return null;
  const tip = edgeStart(front, 'armhole');
  const neck = edgeStart(front, 'shoulder');
  const top = edgeStart(sleeve, 'cap-front');
  const down = { x: top.x, y: top.y + 1 };
  const beyond = { x: 2 * tip.x - neck.x, y: 2 * tip.y - neck.y };
  const plain = chordOnto(top, down, tip, beyond);
  const flipped = after(chordOnto(applyTo(MIRROR, top), applyTo(MIRROR, down), tip, beyond), MIRROR);
  const underarm = edgeEnd(front, 'armhole');
  const gap = (frame: Affine): number => {
    const end = applyTo(frame, edgeEnd(sleeve, 'cap-front'));
    return Math.hypot(end.x - underarm.x, end.y - underarm.y);
  };
  return gap(plain) <= gap(flipped) ? plain : flipped;
}
