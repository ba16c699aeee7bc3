import { edgeLength, edgeOf, findEdge, type Garment, type Piece, type Seam } from '../piece/index.ts';
import { inches } from '../units/index.ts';
import { bodicePieces } from './bodice.ts';
import { COMMON_PRACTICE, choiceParam, defineStep, done, lengthParam } from './step.ts';

/** A concealed zip loses about 1 1/2 in of its named length once sewn: 8 in gave 6 1/2 (flower-girl sewing notes). */
const CONCEALED_LOSS = inches(1.5);
/** Zips are sold in steps of 2 in or 5 cm (common practice, no source); 5 cm is the finer of the two. */
const ZIP_STEP = 50;

/** Opens the centre back for a zip, down from the neck and past the waist. */
export const backZip = defineStep({
  id: 'back-zip',
  stage: 'closing',
  kind: 'closing',
  params: {
    way: choiceParam(['centred', 'concealed'], 'concealed', COMMON_PRACTICE),
    belowWaist: lengthParam(
      () => 100,
      () => [0, 250],
      '8-12 cm below the waist seam for a fitted waist (common practice, no source)',
    ),
  },
  words: {
    title: 'Back zip',
    about: 'A zip in the centre back, from the neck to below the waist.',
    way: 'Kind of zip',
    'way.centred': 'Centred, stitched on both sides',
    'way.concealed': 'Concealed in the seam',
    belowWaist: 'Runs below the waist by',
  },
  apply: ({ garment, bench }, { way, belowWaist }) => {
    const back = bodicePieces(garment, 'back');
    const onBodice = back.reduce((sum, piece) => sum + edgeLength(piece, 'centre'), 0);
    const openingLength = onBodice + bench.rounded(belowWaist);
    const needed = openingLength + (way === 'concealed' ? CONCEALED_LOSS : 0);
    const open: Garment = {
      ...garment,
      pieces: garment.pieces.map((piece) => (back.includes(piece) ? openCentre(piece) : piece)),
      whole: Object.fromEntries(
        Object.entries(garment.whole).map(([id, piece]) => [id, id === 'back' ? openCentre(piece) : piece]),
      ),
      closing: {
        kind: way === 'centred' ? 'centred-zip' : 'concealed-zip',
        openingLength,
        zipLength: Math.ceil(needed / ZIP_STEP - 1e-9) * ZIP_STEP,
      },
    };
    return done({ ...open, seams: [...open.seams, centreBack(back)] });
  },
});

function openCentre(piece: Piece): Piece {
  if (findEdge(piece, 'centre') === undefined) return piece;
  const centre = edgeOf(piece, 'centre');
  return {
    ...piece,
    cutting: { as: 'pair', copies: 2 },
    edges: piece.edges.map((edge) => (edge === centre ? { ...edge, kind: 'closing' } : edge)),
  };
}

const centreBack = (back: readonly Piece[]): Seam => {
  const side = back.map((piece) => ({ piece: piece.id, edge: 'centre', times: 1, reversed: true }));
  return {
    id: 'centre-back',
    name: 'closing',
    a: side,
    b: side,
    join: { kind: 'flat' },
    smoothStart: false,
    smoothEnd: false,
  };
};
