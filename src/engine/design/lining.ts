import { findEdge, type Garment, type Piece, pieceOf } from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { linedPieces, trueOverarms } from './lining-pieces.ts';
import { liningSeams } from './lining-seams.ts';
import { liningSkirt } from './lining-skirt.ts';
import {
  COMMON_PRACTICE,
  cannot,
  choiceParam,
  defineStep,
  done,
  flagParam,
  lengthParam,
  ratioParam,
} from './step.ts';

/** Lines the bodice, and the skirt if there is one. */
export const lining = defineStep({
  id: 'lining',
  stage: 'lining',
  kind: 'lining',
  params: {
    cut: choiceParam(['whole', 'follow-yoke', 'below-yoke'], 'whole', COMMON_PRACTICE),
    turn: lengthParam(
      () => 2.5,
      () => [0, 3],
      'flat bagged bodice linings: 2-3 mm off at neck and armhole, waist equal (common practice, no source)',
    ),
    skirt: flagParam(true, COMMON_PRACTICE),
    skirtRatio: ratioParam(
      () => 1.5,
      [1, 3],
      'a lining skirt may be less full: A-line or 1.5 times (common practice)',
    ),
    skirtShorter: lengthParam(
      () => 25,
      () => [0, 100],
      '1 in shorter than the dress (common practice, no source)',
    ),
  },
  words: {
    title: 'Lining',
    about: 'A lining for the bodice, a little smaller where it turns to the inside.',
    cut: 'Cut',
    'cut.whole': 'Whole, without the yoke line',
    'cut.follow-yoke': 'Following the yoke line',
    'cut.below-yoke': 'Below the yoke only, so that the yoke stays sheer',
    turn: 'Trimmed at neck and armhole for the turn of cloth',
    skirt: 'Line the skirt',
    skirtRatio: 'Lining skirt, times the waist',
    skirtShorter: 'Lining skirt shorter than the dress by',
    'no-room': 'Trimming {piece} by {turn} leaves no outline. Trim less.',
    'piece.front': 'Front lining',
    'piece.back': 'Back lining',
    'piece.front-yoke': 'Front yoke lining',
    'piece.back-yoke': 'Back yoke lining',
    'piece.skirt-front': 'Lining skirt front',
    'piece.skirt-back': 'Lining skirt back',
    draw: 'Lining',
    'draw.trace':
      'Trace {piece} from its pattern. At the neck and the armholes draw new lines {turn} inside the old ones.',
    'draw.apart': 'Cut the lining along the yoke line of the pattern, as far as it is lined.',
    'draw.skirt': 'Lining skirt',
  },
  apply: (work, values) => {
    const { garment, bench } = work;
    const turn = bench.rounded(values.turn);
    const pieces: Piece[] = [];
    for (const half of HALVES) {
      const source = garment.whole[half] ?? pieceOf(garment, half);
      const lined = linedPieces(garment, half, values.cut, turn);
      if (lined === null) return cannot('lining.no-room', { piece: source.title, turn: { mm: turn } });
      bench.part(
        { key: 'lining.draw', values: {} },
        source.edges.map((edge) => edge.path),
      );
      bench.tell(
        'lining.draw.trace',
        { piece: source.title, turn: { mm: turn } },
        { lines: lined.flatMap((piece) => piece.edges.map((edge) => edge.path)) },
      );
      if (lined.some((piece) => findEdge(piece, 'yoke-line') !== undefined))
        bench.tell('lining.draw.apart', {});
      pieces.push(...lined);
    }
    const lined: Garment = { ...garment, pieces: [...garment.pieces, ...trueOverarms(pieces)] };
    const withSeams: Garment = { ...lined, seams: [...lined.seams, ...liningSeams(lined)] };
    return done(
      values.skirt ? liningSkirt(work, withSeams, values.skirtRatio, values.skirtShorter) : withSeams,
    );
  },
});
