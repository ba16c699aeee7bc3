import type { Half } from '../block/index.ts';
import { curveOfLength, offsetOutline, type Path } from '../geometry/index.ts';
import {
  type EdgeName,
  edgeLength,
  edgeOf,
  findEdge,
  type Garment,
  type Piece,
  pieceOf,
  reshape,
  type Seam,
  type SeamEdge,
  type SeamName,
} from '../piece/index.ts';
import { bodicePieces, HALVES } from './bodice.ts';
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

/**
 * Edges that lining and shell share and that are turned: there the lining is cut back so that it rolls inside. Not
 * where the opening makes a point at the underarm (there is no room to roll, and something may be sewn to it).
 */
const turnedEdges = (garment: Garment): readonly EdgeName[] =>
  garment.seams.some((seam) => seam.name === 'side' && seam.smoothStart)
    ? ['neckline', 'armhole', 'sleeve-edge']
    : ['neckline', 'armhole'];

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
    'draw.skirt': 'Lining skirt',
  },
  apply: (work, values) => {
    const { garment, bench } = work;
    const turn = bench.rounded(values.turn);
    const pieces: Piece[] = [];
    for (const half of HALVES) {
      for (const source of sources(garment, half, values.cut)) {
        const lined = lineFrom(source, turn, turnedEdges(garment));
        if (lined === null) {
          return cannot('lining.no-room', { piece: source.title, turn: { mm: turn } });
        }
        bench.part(
          { key: 'lining.draw', values: {} },
          source.edges.map((edge) => edge.path),
        );
        bench.tell(
          'lining.draw.trace',
          { piece: source.title, turn: { mm: turn } },
          { lines: lined.edges.map((edge) => edge.path) },
        );
        pieces.push(lined);
      }
    }
    const lined: Garment = { ...garment, pieces: [...garment.pieces, ...trueOverarms(pieces)] };
    const withSeams: Garment = { ...lined, seams: [...lined.seams, ...liningSeams(lined)] };
    return done(
      values.skirt ? liningSkirt(work, withSeams, values.skirtRatio, values.skirtShorter) : withSeams,
    );
  },
});

/**
 * Trimming the sleeve edge shortens two overarms of different slope by different amounts; the one that can be bent
 * is brought to the length of the other again.
 */
function trueOverarms(pieces: readonly Piece[]): readonly Piece[] {
  const [front, back] = HALVES.map((half) =>
    pieces.find((piece) => piece.id.startsWith(half) && findEdge(piece, 'overarm') !== undefined),
  );
  if (front === undefined || back === undefined) return pieces;
  const trued = overarmLike(back, front) ?? overarmLike(front, back);
  return pieces.map((piece) => (piece.id === trued?.id ? trued : piece));
}

function overarmLike(piece: Piece, model: Piece): Piece | null {
  const path = curveOfLength(edgeOf(piece, 'overarm').path, edgeLength(model, 'overarm'));
  return path === null ? null : reshape(piece, { overarm: path });
}

/** The shell pieces, or the outline before the yoke was cut off, that the lining is traced from. */
function sources(
  garment: Garment,
  half: Half,
  cut: 'whole' | 'follow-yoke' | 'below-yoke',
): readonly Piece[] {
  const shell = bodicePieces(garment, half);
  switch (cut) {
    case 'whole': {
      const whole = garment.whole[half];
      return whole === undefined ? shell : [whole];
    }
    case 'follow-yoke':
      return shell;
    case 'below-yoke':
      return shell.filter((piece) => piece.id === half);
  }
}

function lineFrom(source: Piece, turn: number, turned: readonly EdgeName[]): Piece | null {
  const paths = source.edges.map((edge) => edge.path);
  const distances = source.edges.map((edge) => (turned.includes(edge.name) ? -turn : 0));
  const moved = turn === 0 ? paths : offsetOutline(paths, distances);
  const edges = source.edges.flatMap((edge, i) => {
    const path: Path | undefined = moved[i];
    return path === undefined ? [] : [{ ...edge, path }];
  });
  if (edges.length !== source.edges.length) return null;
  return {
    ...source,
    id: `${source.id}-lining`,
    title: { key: `lining.piece.${source.id}`, values: {} },
    edges,
    cloth: 'lining',
    layer: 'lining',
    notches: [],
  };
}

/**
 * The lining's own seams follow the shell's; its neck, armhole and waist are sewn to the shell. Whether corners run
 * through is judged on the shell: trimming for the turn of cloth shifts them a little, inside and unseen.
 */
function liningSeams(garment: Garment): readonly Seam[] {
  const own: Seam[] = [];
  for (const seam of garment.seams) {
    const [a, b] = [liningSide(garment, seam.a), liningSide(garment, seam.b)];
    if (a !== null && b !== null && OWN_SEAMS.includes(seam.name))
      own.push({ ...seam, id: `${seam.id}-lining`, a, b, smoothStart: false, smoothEnd: false });
  }
  return [
    ...own,
    ...toShell(garment, 'neck-lining', ['neckline']),
    ...toShell(garment, 'armhole-lining', ['armhole', 'sleeve-edge']),
    ...toShell(garment, 'waist-lining', ['waist']),
  ];
}

const OWN_SEAMS: readonly SeamName[] = ['shoulder', 'side', 'yoke', 'closing'];

/** The same side of a seam on the lining; null when the lining has not all of its edges. */
function liningSide(garment: Garment, side: readonly SeamEdge[]): readonly SeamEdge[] | null {
  const found: SeamEdge[] = [];
  for (const edge of side) {
    const half = HALVES.find((h) => edge.piece === h || edge.piece === `${h}-yoke`);
    if (half === undefined) return null;
    const carrier = bodicePieces(garment, half, 'lining').find(
      (piece) =>
        findEdge(piece, edge.edge) !== undefined &&
        (piece.id === `${edge.piece}-lining` || isWhole(garment, half)),
    );
    if (carrier === undefined) return null;
    if (!found.some((e) => e.piece === carrier.id && e.edge === edge.edge))
      found.push({ ...edge, piece: carrier.id });
  }
  return found;
}

/** A lining cut whole stands for both parts of a shell that a yoke line has cut. */
const isWhole = (garment: Garment, half: Half): boolean =>
  garment.whole[half] !== undefined &&
  bodicePieces(garment, half, 'lining').every((piece) => findEdge(piece, 'yoke-line') === undefined);

/** The seam that joins the lining to the shell along these edges, over all that both of them have. */
function toShell(garment: Garment, name: SeamName, edges: readonly EdgeName[]): readonly Seam[] {
  const inside: SeamEdge[] = [];
  const shell: SeamEdge[] = [];
  for (const half of HALVES) {
    const linings = bodicePieces(garment, half, 'lining');
    const lined = bodicePieces(garment, half).filter(
      (piece) => isWhole(garment, half) || linings.some((l) => l.id === `${piece.id}-lining`),
    );
    inside.push(...linings.flatMap((piece) => carried(piece, edges)));
    shell.push(...lined.flatMap((piece) => carried(piece, edges)));
  }
  if (inside.length === 0 || shell.length === 0) return [];
  const length = (list: readonly SeamEdge[]): number =>
    list.reduce((sum, e) => sum + e.times * edgeLength(pieceOf(garment, e.piece), e.edge), 0);
  return [
    {
      id: name,
      name,
      a: shell,
      b: inside,
      join:
        name === 'waist-lining' ? { kind: 'flat' } : { kind: 'eased', ease: length(inside) - length(shell) },
      smoothStart: false,
      smoothEnd: false,
    },
  ];
}

const carried = (piece: Piece, edges: readonly EdgeName[]): readonly SeamEdge[] =>
  edges
    .filter((edge) => findEdge(piece, edge) !== undefined)
    .map((edge) => ({ piece: piece.id, edge, times: 2 }));
