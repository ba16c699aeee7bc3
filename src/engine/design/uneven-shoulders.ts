import type { Half } from '../block/index.ts';
import type { Bench } from '../construct/index.ts';
import { type Path, pathLength } from '../geometry/index.ts';
import type { Garment, Marking, Piece, PieceId, SeamEdge } from '../piece/index.ts';
import { bodicePieces, HALVES } from './bodice.ts';
import {
  facingLines,
  hasWholeShoulder,
  type LowerSide,
  lowerLines,
  lowerSide,
  mostLowered,
  shoulderEdges,
} from './lower-side.ts';
import { cannot, choiceParam, defineStep, done, lengthParam, type StepContext } from './step.ts';

/** Least and most by which a shoulder hangs lower, mm, and what is usual. */
const LEAST = 3;
const MOST = 25;
const USUAL = 8;
/** A shoulder can't turn down by more than this share of its length: it would run steeper than any shoulder does. */
const STEEPEST = 0.3;

/** The piece of a half that carries the shoulder, of the shell or of the lining. */
const shoulderPiece = (garment: Garment, half: Half, layer: 'shell' | 'lining'): Piece | undefined =>
  bodicePieces(garment, half, layer).find(hasWholeShoulder);

const mostHere = ({ garment }: StepContext): number => {
  const lengths = HALVES.flatMap((half) => {
    const piece = shoulderPiece(garment, half, 'shell');
    return piece === undefined ? [] : [shoulderLength(piece)];
  });
  return Math.max(LEAST, Math.min(MOST, ...lengths.map((length) => STEEPEST * length)));
};

const shoulderLength = (piece: Piece): number =>
  shoulderEdges(piece).reduce((sum, { path }) => sum + pathLength(path), 0);

/**
 * One shoulder lower than the other. The halves stay those of the higher shoulder and are cut alike on both sides; a
 * second line, for the lower side only, says where that side is trimmed before it is sewn.
 */
export const unevenShoulders = defineStep({
  id: 'uneven-shoulders',
  stage: 'marking',
  kind: 'uneven-shoulders',
  params: {
    lower: choiceParam(
      ['left', 'right'],
      'left',
      'look at the child from behind, arms hanging (common practice, no source)',
    ),
    by: lengthParam(
      (c) => Math.min(USUAL, mostHere(c)),
      (c) => [LEAST, mostHere(c)],
      'measured on the child, from the floor to each shoulder tip (common practice, no source)',
    ),
  },
  words: {
    title: 'Uneven shoulders',
    about:
      'For a child with one shoulder lower than the other: both sides are cut for the higher one, and the lower side is trimmed along a line of its own.',
    lower: 'Lower shoulder, as worn',
    'lower.left': 'Her left',
    'lower.right': 'Her right',
    by: 'Lower by',
    'side.left': 'left',
    'side.right': 'right',
    'no-shoulder': 'This dress has no shoulders from neck to arm that could be drawn lower.',
    'no-room':
      'Lowering the shoulder by {by} leaves no room to draw the edge round the arm again on {piece}. {most} is the most here.',
    'draw.front': 'Lower shoulder, front',
    'draw.back': 'Lower shoulder, back',
    'draw.shoulder':
      'For the {side} side only: turn the shoulder line about the neck point until the shoulder tip lies {by} lower. It stays {length} long.',
    'draw.overarm':
      'Draw the overarm on from the lowered tip to the outer edge, {by} further down that edge, and meet it as before. It must be {length} in front and behind alike.',
    'draw.armhole':
      'Draw the armhole again from there, square to the shoulder as before, into the old line {along} along it from the old tip. It comes out {loss} shorter, and front and back must lose the same.',
    draw: 'Lower shoulder',
    'draw.trim':
      'Write “{side} side only” on these lines, and draw them on the lining and the facings too. Cut both sides alike, for the higher shoulder. Then trim the {side} side, as worn, along the lines with the same allowance, front and back alike, so that the shoulder seam still agrees. Mind that a back seen from outside has her left on the left, and a front has it on the right.',
    'draw.sleeve':
      'That armhole is now {loss} shorter all round. Gathers take it up; for a smooth cap lower the underarm of that side by {by} as well, and the sleeve fits as drawn.',
    'draw.strip':
      'The edge round that arm is now {loss} shorter. What is sewn to it must be shorter by as much on that side.',
  },
  apply: (work, values) => {
    const { garment, bench } = work;
    const by = bench.rounded(values.by);
    const side = { word: `uneven-shoulders.side.${values.lower}` };
    const shell = lowerLayer(garment, 'shell', by);
    const lining = lowerLayer(garment, 'lining', by);
    if (shell.length < HALVES.length) return cannot('uneven-shoulders.no-shoulder');
    const tight = [...shell, ...lining].find(({ most }) => by > most);
    if (tight !== undefined) {
      const most = { mm: Math.floor(tight.most) };
      return cannot('uneven-shoulders.no-room', { by: { mm: by }, piece: tight.piece.title, most });
    }
    for (const half of shell) tellHalf(bench, half, by, side);
    bench.part({ key: 'uneven-shoulders.draw', values: {} });
    bench.tell('uneven-shoulders.draw.trim', { side });
    const loss = shell.reduce((sum, { lowered }) => sum + lowered.loss, 0);
    const sewn = sewnToArm(garment, shell);
    if (sewn !== null) bench.tell(`uneven-shoulders.draw.${sewn}`, { loss: { mm: loss }, by: { mm: by } });

    const lines = new Map<PieceId, readonly Path[]>();
    for (const { piece, lowered } of [...shell, ...lining]) lines.set(piece.id, lowerLines(lowered));
    for (const { half, lowered } of shell)
      for (const facing of facingsOf(garment, half)) lines.set(facing.id, facingLines(facing, lowered));
    const marked = (piece: Piece): Piece => ({
      ...piece,
      markings: [
        ...piece.markings,
        ...(lines.get(piece.id) ?? []).map(
          (path): Marking => ({ kind: 'lower-side', side: values.lower, path }),
        ),
      ],
    });
    return done({
      ...garment,
      pieces: garment.pieces.map((piece) => (lines.has(piece.id) ? marked(piece) : piece)),
    });
  },
});

interface LoweredHalf {
  readonly half: Half;
  readonly piece: Piece;
  readonly lowered: LowerSide;
  /** The most by which it could be lowered, mm. */
  readonly most: number;
}

/**
 * Both halves of a layer, as far as they carry shoulders. Both lose as much of their armhole as the one that loses
 * less by itself, and get the longer overarm: a curve can always be drawn fuller, but not always flatter.
 */
function lowerLayer(garment: Garment, layer: 'shell' | 'lining', by: number): readonly LoweredHalf[] {
  const carrying = HALVES.flatMap((half) => {
    const piece = shoulderPiece(garment, half, layer);
    return piece === undefined ? [] : [{ half, piece }];
  });
  const alone = carrying.map(({ piece }) => lowerSide(piece, by, null));
  const alike = {
    loss: Math.min(...alone.map(({ loss }) => loss)),
    overarm: Math.max(...alone.map(({ overarm }) => (overarm === null ? 0 : pathLength(overarm)))),
  };
  return carrying.map(({ half, piece }) => ({
    half,
    piece,
    lowered: lowerSide(piece, by, alike),
    most: mostLowered(piece),
  }));
}

/** Facings of the neck and of the arm that belong to a half. */
const facingsOf = (garment: Garment, half: Half): readonly Piece[] =>
  garment.pieces.filter(({ id }) => id === `facing-${half}` || id === `armhole-facing-${half}`);

function tellHalf(
  bench: Bench,
  { half, piece, lowered }: LoweredHalf,
  by: number,
  side: { readonly word: string },
): void {
  bench.part(
    { key: `uneven-shoulders.draw.${half}`, values: {} },
    piece.edges.map((edge) => edge.path),
  );
  bench.tell(
    'uneven-shoulders.draw.shoulder',
    { side, by: { mm: by }, length: { mm: shoulderLength(piece) } },
    { lines: lowered.shoulder },
  );
  if (lowered.overarm !== null)
    bench.tell(
      'uneven-shoulders.draw.overarm',
      { by: { mm: by }, length: { mm: pathLength(lowered.overarm) } },
      { lines: [lowered.overarm] },
    );
  if (lowered.armhole !== null)
    bench.tell(
      'uneven-shoulders.draw.armhole',
      { along: { mm: lowered.joins }, loss: { mm: lowered.loss } },
      { lines: [lowered.armhole] },
    );
}

/** Whether a sleeve or a strip is sewn to the edge round the arm; linings and facings are trimmed with it. */
function sewnToArm(garment: Garment, shell: readonly LoweredHalf[]): 'sleeve' | 'strip' | null {
  if (garment.seams.some(({ name }) => name === 'sleeve-cap')) return 'sleeve';
  const round = (use: SeamEdge): boolean =>
    ['armhole', 'sleeve-edge'].includes(use.edge) && shell.some(({ piece }) => piece.id === use.piece);
  const sewn = garment.seams.some(
    ({ name, a, b }) => name !== 'armhole-lining' && name !== 'facing' && [...a, ...b].some(round),
  );
  return sewn ? 'strip' : null;
}
