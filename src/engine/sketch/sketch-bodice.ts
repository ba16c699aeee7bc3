import { type Path, pathMirrorX, pathTranslate } from '../geometry/index.ts';
import { type EdgeKind, edgeStart, findEdge, type Garment, type Piece } from '../piece/index.ts';
import type { SketchLine, SketchSide, SketchStroke } from './sketch.ts';

/** How an edge of a bodice piece looks in the sketch; what is not here is not seen. */
const STROKES: Partial<Record<EdgeKind, SketchStroke>> = {
  neck: 'outline',
  shoulder: 'outline',
  armhole: 'outline',
  'sleeve-hem': 'outline',
  'curved-sleeve-hem': 'outline',
  side: 'outline',
  waist: 'seam',
  'style-line': 'seam',
  closing: 'opening',
  // A keyhole, the edge of a wrap.
  free: 'outline',
  dart: 'seam',
};

/** The bodice of one side: its pieces lie where they were drafted, and are mirrored at the centre. */
export function sketchBodice(garment: Garment, side: SketchSide): readonly SketchLine[] {
  const pieces = bodiceOf(garment, side);
  return [
    ...pieces.flatMap((piece) =>
      piece.edges.flatMap((edge): readonly SketchLine[] => {
        const stroke = STROKES[edge.kind];
        return stroke === undefined ? [] : bothHalves(stroke, edge.path);
      }),
    ),
    ...(side === 'front' ? neckBehind(garment) : []),
  ];
}

export const bodiceOf = (garment: Garment, side: SketchSide): readonly Piece[] =>
  garment.pieces.filter(
    (piece) => piece.layer === 'shell' && (piece.id === side || piece.id.startsWith(`${side}-`)),
  );

export const bothHalves = (stroke: SketchStroke, path: Path): readonly SketchLine[] => [
  { stroke, path },
  { stroke, path: pathMirrorX(path) },
];

/** Seen from the front, the back of the neck stands behind the neckline: the neck points laid on each other. */
function neckBehind(garment: Garment): readonly SketchLine[] {
  const [front, back] = (['front', 'back'] as const).map((side) =>
    bodiceOf(garment, side).find((piece) => findEdge(piece, 'neckline') && findEdge(piece, 'shoulder')),
  );
  const neckline = back === undefined ? undefined : findEdge(back, 'neckline');
  if (front === undefined || back === undefined || neckline === undefined) return [];
  const [to, from] = [edgeStart(front, 'shoulder'), edgeStart(back, 'shoulder')];
  return bothHalves('light', pathTranslate(neckline.path, { x: to.x - from.x, y: to.y - from.y }));
}
