import { linePath, type Point } from '../geometry/index.ts';
import {
  edgeLength,
  flatSeam,
  type Garment,
  type Notch,
  type Piece,
  partsNeckAtBack,
  pieceOf,
  type Seam,
  withPiece,
} from '../piece/index.ts';
import { arc } from './arc.ts';
import { type NeckForCollar, neckForCollar } from './neck-ring.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, lengthParam, ratioParam } from './step.ts';
import { stripPiece } from './strip.ts';

/** A frill round the neck: a straight strip gathered, or a ring cut from a circle that needs no gathers. */
export const neckFrill = defineStep({
  id: 'neck-frill',
  stage: 'finish',
  kind: 'collar',
  params: {
    way: choiceParam(['gathered', 'circular'], 'gathered', COMMON_PRACTICE),
    frillWidth: lengthParam(
      () => 40,
      () => [15, 90],
      COMMON_PRACTICE,
    ),
    ratio: ratioParam(
      () => 2,
      [1.5, 3],
      'usual for a ruffle: 1.5 to 3 times the edge (teaching page on gathers)',
    ),
  },
  words: {
    title: 'Neck frill',
    about:
      'A frill sewn round the neck. It has no ties: nothing that ties belongs at the neck of a young child.',
    way: 'Way',
    'way.gathered': 'A straight strip, gathered',
    'way.circular': 'A ring cut from a circle, not gathered',
    frillWidth: 'Finished width',
    ratio: 'Gathered strip, times the neck',
    'no-neck': 'The bodice has no neck that a frill could be sewn to.',
    'open-shoulders':
      'A frill runs over the shoulders, and these open with press studs. Open the back instead.',
    'too-wide':
      'A frill {width} long cannot be cut from cloth {usable} wide in one. Gather it less, or take the ring.',
    piece: 'Neck frill',
    'draw.gathered':
      'Rule a strip {length} long and {width} wide for half the frill; one end is the fold. Gather its long edge to the neck.',
    'draw.circular':
      'Draw a half circle of radius {radius} and a second one {width} outside it; the straight end in front is the fold.',
    'draw.hem': 'Hem the outer edge narrowly before it is sewn to the neck.',
  },
  apply: ({ garment, bench, clothWidth }, values) => {
    if (garment.closing?.kind === 'shoulder-studs') return cannot('neck-frill.open-shoulders');
    const neck = neckForCollar(garment);
    if (neck === null) return cannot('neck-frill.no-neck');
    const width = bench.rounded(values.frillWidth);
    const gathered = values.way === 'gathered';
    const length = neck.half * (gathered ? values.ratio : 1);
    const usable = clothWidth.main;
    if (gathered && 2 * length > usable)
      return cannot('neck-frill.too-wide', { width: { mm: 2 * length }, usable: { mm: usable } });

    const title = { key: 'neck-frill.piece', values: {} };
    const piece = gathered
      ? strip(length, width, partsNeckAtBack(garment.closing))
      : ring(length, width, partsNeckAtBack(garment.closing));
    const lines = piece.edges.map((edge) => edge.path);
    bench.part(title);
    if (gathered)
      bench.tell('neck-frill.draw.gathered', { length: { mm: length }, width: { mm: width } }, { lines });
    else
      bench.tell(
        'neck-frill.draw.circular',
        { radius: { mm: length / Math.PI }, width: { mm: width } },
        { lines },
      );
    bench.tell('neck-frill.draw.hem', {});
    return done(sewOn(garment, neck, piece, gathered ? values.ratio : null));
  },
});

/** Half the strip, the fold at the centre front on its left. */
const strip = (length: number, width: number, parts: boolean): Piece =>
  stripPiece({
    id: 'neck-frill',
    title: { key: 'neck-frill.piece', values: {} },
    length,
    width,
    upper: 'attach',
    right: parts ? 'free' : 'join',
    lower: 'free',
    left: 'fold',
    cutting: { as: 'fold', copies: 1 },
    grain: 'across',
    cloth: 'main',
  });

/** Half a ring whose inner edge is half the neck; hung out straight it falls in folds at its outer edge. */
function ring(length: number, width: number, parts: boolean): Piece {
  const hub: Point = { x: 0, y: 0 };
  const [inner, outer] = [length / Math.PI, length / Math.PI + width];
  return {
    ...strip(length, width, parts),
    edges: [
      // Angles turn from straight down; walked this way the cloth lies outside, on the right hand.
      { name: 'upper', kind: 'attach', path: arc(hub, inner, 0, Math.PI) },
      {
        name: 'right',
        kind: parts ? 'free' : 'join',
        path: linePath({ x: 0, y: -inner }, { x: 0, y: -outer }),
      },
      { name: 'lower', kind: 'free', path: arc(hub, outer, Math.PI, 0) },
      { name: 'left', kind: 'fold', path: linePath({ x: 0, y: outer }, { x: 0, y: inner }) },
    ],
    grain: {
      from: { x: inner + width / 2, y: width * 0.3 },
      to: { x: inner + width / 2, y: -width * 0.3 },
    },
  };
}

/** Sewn from the centre front to the centre back, with a notch half-way along the front neck. */
function sewOn(garment: Garment, neck: NeckForCollar, frill: Piece, ratio: number | null): Garment {
  const [atFront] = neck.side;
  if (atFront === undefined) throw new Error('A bodice has a neck.');
  const holder = pieceOf(garment, atFront.piece);
  const middle = edgeLength(holder, atFront.edge) / 2;
  const notch = (edge: string, at: number): Notch => ({ edge, at, style: 'single', match: 'neck-frill' });
  const dress = withPiece(garment, {
    ...holder,
    notches: [...holder.notches, notch(atFront.edge, middle)],
  });
  const seam = (id: string, a: Seam['a'], b: Seam['b']): Seam => flatSeam(id, 'frill', a, b);
  const round: Seam = {
    ...seam('neck-frill', neck.side, [{ piece: frill.id, edge: 'upper', times: 2 }]),
    join: ratio === null ? { kind: 'flat' } : { kind: 'gathered', ratio },
    ...neck.bare,
  };
  const end = [{ piece: frill.id, edge: 'right', times: 1 }];
  return {
    ...dress,
    pieces: [...dress.pieces, { ...frill, notches: [notch('upper', middle * (ratio ?? 1))] }],
    seams: [
      ...dress.seams,
      round,
      ...(partsNeckAtBack(garment.closing) ? [] : [seam('neck-frill-back', end, end)]),
    ],
  };
}
