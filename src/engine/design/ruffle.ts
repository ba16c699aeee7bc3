import { edgeLength, edgeOf, findEdge, type Piece, type Seam, type SeamEdge } from '../piece/index.ts';
import { freshId } from './long-strip.ts';
import { COMMON_PRACTICE, cannot, defineStep, done, lengthParam, ratioParam, textParam } from './step.ts';
import { stripPiece, tellStrip } from './strip.ts';
import { JOIN_ROOM } from './waist-ring.ts';

/** Stands for every outer piece that has the edge. */
const ALL = 'all';

/** A gathered strip along any edge that the maker names. */
export const ruffle = defineStep({
  id: 'ruffle',
  stage: 'trim',
  kind: null,
  params: {
    edge: { ...textParam('neckline', COMMON_PRACTICE), names: 'edge' },
    piece: { ...textParam(ALL, COMMON_PRACTICE), names: 'piece-or-all' },
    ruffleDepth: lengthParam(
      () => 40,
      () => [8, 400],
      COMMON_PRACTICE,
    ),
    ruffleRatio: ratioParam(() => 2, [1.2, 4], 'usual range for a ruffle 1.5 to 3 (sewing page on gathers)'),
  },
  words: {
    title: 'Ruffle',
    about: 'A gathered strip along an edge that you name.',
    edge: 'Along the edge (neckline, waist, hem, ...)',
    piece: 'Of the piece ("all" for every outer piece that has the edge)',
    ruffleDepth: 'Finished depth',
    ruffleRatio: 'Times the edge',
    'no-edge': 'No outer piece "{piece}" has an edge "{edge}". There are: {known}.',
    'piece.ruffle': 'Ruffle',
    draw: 'Ruffle',
    'draw.length':
      'The edge measures {edge} in all; {ratio} times that, {length}, is gathered to it, in {widths} equal lengths. Hem one long edge narrowly.',
  },
  apply: ({ garment, bench, clothWidth }, values) => {
    const outer = garment.pieces.filter((piece) => piece.layer === 'shell');
    const carriers = outer.filter(
      (piece) => (values.piece === ALL || piece.id === values.piece) && isOuterEdge(piece, values.edge),
    );
    if (carriers.length === 0) {
      const known = [...new Set(outer.flatMap((piece) => piece.edges.map((edge) => edge.name)))].filter(
        (name) => outer.some((piece) => isOuterEdge(piece, name)),
      );
      return cannot('ruffle.no-edge', { piece: values.piece, edge: values.edge, known: known.join(', ') });
    }
    const sewn = carriers.map(
      (piece): SeamEdge => ({ piece: piece.id, edge: values.edge, times: timesCut(piece) }),
    );
    const along = carriers.reduce((sum, piece) => sum + timesCut(piece) * edgeLength(piece, values.edge), 0);
    const total = along * values.ruffleRatio;
    const widths = Math.ceil(total / (clothWidth.trim - JOIN_ROOM));
    const depth = bench.rounded(values.ruffleDepth);
    const strip = stripPiece({
      id: freshId(garment, 'ruffle'),
      title: { key: 'ruffle.piece.ruffle', values: {} },
      length: total / widths,
      width: depth,
      upper: 'attach',
      lower: 'free',
      left: 'join',
      right: 'join',
      cutting: { as: 'single', copies: widths },
      grain: 'across',
    });
    bench.part({ key: 'ruffle.draw', values: {} });
    bench.tell('ruffle.draw.length', {
      edge: { mm: along },
      ratio: values.ruffleRatio,
      length: { mm: total },
      widths,
    });
    tellStrip(bench, strip, depth);
    return done({
      ...garment,
      pieces: [...garment.pieces, strip],
      seams: [...garment.seams, ...ruffleSeams(strip, sewn, widths, values.ruffleRatio)],
    });
  },
});

const timesCut = (piece: Piece): number =>
  piece.cutting.as === 'fold' ? 2 * piece.cutting.copies : piece.cutting.copies;

const isOuterEdge = (piece: Piece, name: string): boolean =>
  findEdge(piece, name) !== undefined && !['fold', 'dart'].includes(edgeOf(piece, name).kind);

function ruffleSeams(
  strip: Piece,
  sewn: readonly SeamEdge[],
  widths: number,
  ratio: number,
): readonly Seam[] {
  const seam = (name: string, a: readonly SeamEdge[], b: readonly SeamEdge[], join: Seam['join']): Seam => ({
    id: `${strip.id}-${name}`,
    name: 'trim',
    a,
    b,
    join,
    smoothStart: false,
    smoothEnd: false,
  });
  const at = (edge: string, times: number): SeamEdge => ({ piece: strip.id, edge, times });
  return [
    seam('edge', sewn, [at('upper', widths)], { kind: 'gathered', ratio }),
    ...(widths > 1
      ? [seam('join', [at('left', widths - 1)], [at('right', widths - 1)], { kind: 'flat' })]
      : []),
  ];
}
