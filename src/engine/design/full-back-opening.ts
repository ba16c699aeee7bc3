import {
  type Closing,
  edgeLength,
  type Garment,
  opensBack,
  type Piece,
  pieceOf,
  type Seam,
  type SeamEdge,
} from '../piece/index.ts';
import { centreBackLength } from './back-opening.ts';
import { withEdgePlackets } from './back-placket.ts';
import { zipToBuy } from './back-zip.ts';
import { cannot, defineStep, done } from './step.ts';

/**
 * Lets the closing of the back run on through the whole skirt and its hem, layer by layer, for whoever is dressed
 * lying or leaning forward. Fasteners stay on the bodice; a zip runs the whole way.
 */
export const fullBackOpening = defineStep({
  id: 'full-back-opening',
  stage: 'opening',
  kind: 'full-back-opening',
  params: {},
  words: {
    title: 'Back open to the hem',
    about:
      'The closing runs on from the neck through the whole back of the skirt, so that a child who sits or lies is dressed from the front.',
    'no-closing':
      'Only a closing down the back can run on to the hem. Choose one: a zip, buttons, a lacing or ties in the centre back.',
    draw: 'Back open to the hem',
    'draw.open':
      'Leave the centre back of the skirt, and of everything over and under it, unsewn from the waist to the hem. The opening is {length} long from the neck. Turn the hem first, then finish both back edges with the allowance of the closing.',
    'draw.zip': 'Take a zip of {zip} that comes apart at its lower end, or shorten a longer one.',
    'draw.fasten':
      'Below the waist the two edges fall free, for she sits on what would close them. Where the skirt should stay shut, sew flat fasteners no lower than her seat, none where she leans or sits. Small fasteners that come off can be swallowed: sew them on firmly, or take ties for a child under three, and follow your local rules.',
    'draw.skirt-strips':
      'For the back edges of the skirt cut two strips {length} long and {width} wide, folded lengthwise, in the place of the strip for a slit.',
  },
  apply: ({ garment, bench, units }) => {
    const { closing } = garment;
    if (!opensBack(closing)) return cannot('full-back-opening.no-closing');
    const below = skirtAtCentreBack(garment);
    const openingLength = centreBackLength(garment) + below;
    const open = openLayers(garment);
    bench.part({ key: 'full-back-opening.draw', values: {} });
    bench.tell('full-back-opening.draw.open', { length: { mm: openingLength } });
    if ('zipLength' in closing) {
      const zipLength = zipToBuy(closing.kind, openingLength, units);
      bench.tell('full-back-opening.draw.zip', { zip: { mm: zipLength } });
      return done({ ...open, closing: { ...closing, openingLength, zipLength, toHem: true } });
    }
    const longer: Closing = { ...closing, openingLength, toHem: true };
    if (below > 0) bench.tell('full-back-opening.draw.fasten', {});
    return done(withEdgePlackets({ ...open, closing: longer }, bench, below));
  },
});

/** Seams that hold the two sides of a skirt together at the centre back, open or not, in every layer. */
const isCentreBack = (seam: Seam): boolean =>
  seam.id !== 'centre-back' && (seam.name === 'closing' || seam.id.endsWith('-centre-back'));

/** Length of the outer skirt down its centre back, tiers together, mm; nought without a skirt. */
const skirtAtCentreBack = (garment: Garment): number =>
  garment.seams
    .filter(isCentreBack)
    .flatMap((seam) => seam.a.slice(0, 1))
    .filter(({ piece }) => piece.startsWith('skirt-'))
    .reduce((sum, { piece, edge }) => sum + edgeLength(pieceOf(garment, piece), edge), 0);

/** Every layer's centre back becomes an opening from top to bottom, and no mark says that it ends. */
function openLayers(garment: Garment): Garment {
  const opened = garment.seams.filter(isCentreBack).flatMap(({ a, b }) => [...a, ...b]);
  return {
    ...garment,
    seams: garment.seams.map((seam) => (isCentreBack(seam) ? { ...seam, name: 'closing' } : seam)),
    pieces: garment.pieces.map((piece) => openPiece(piece, opened)),
  };
}

function openPiece(piece: Piece, opened: readonly SeamEdge[]): Piece {
  const own = opened.filter((use) => use.piece === piece.id).map(({ edge }) => edge);
  if (own.length === 0) return piece;
  return {
    ...piece,
    edges: piece.edges.map((edge) => (own.includes(edge.name) ? { ...edge, kind: 'closing' } : edge)),
    markings: piece.markings.filter(({ kind }) => kind !== 'closing-end'),
  };
}
