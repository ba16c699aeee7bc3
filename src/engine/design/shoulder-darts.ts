import type { Half } from '../block/index.ts';
import { dot, outward, type Point, pathStart, pathStartTangent, subtract } from '../geometry/index.ts';
import {
  edgeLength,
  edgeOf,
  edgeStart,
  findEdge,
  type Garment,
  type Piece,
  type PieceId,
  withPiece,
} from '../piece/index.ts';
import { inches } from '../units/index.ts';
import { HALVES } from './bodice.ts';
import {
  cutShoulderDart,
  lengthenShoulder,
  type ShoulderDart,
  shoulderLines,
  withShoulderDart,
} from './shoulder-dart.ts';
import {
  cannot,
  choiceParam,
  defineStep,
  done,
  flagParam,
  lengthParam,
  type StepContext,
  type StepOutcome,
  type StepWork,
} from './step.ts';

/** Width of a shoulder dart by rule: a tenth of the shoulder, mm at least and at most. */
const [NARROWEST, WIDEST] = [8, 12];
/** Length of a shoulder dart by rule, mm at least and at most. */
const [SHORTEST, LONGEST] = [50, 70];
const WIDTH_SOURCE = 'a tenth of the shoulder, 8-12 mm (common practice, no source)';
const LENGTH_SOURCE = 'two thirds of the shoulder, 50-70 mm (common practice, no source)';

/** Least that must be left of the shoulder on either side of the middle of a dart, mm. */
const LEAST_BESIDE = 20;
/** A dart wider than this share of its length stands off at its tip (common practice, no source). */
const BLUNT = 0.25;

const shoulderOf = ({ garment }: StepContext, half: Half): number => {
  const piece = garment.pieces.find(({ id }) => id === half);
  return piece === undefined || findEdge(piece, 'shoulder') === undefined ? 0 : edgeLength(piece, 'shoulder');
};

const within = (mm: number, least: number, most: number): number => Math.min(most, Math.max(least, mm));

const widthParam = (half: Half) =>
  lengthParam(
    (c) => within(shoulderOf(c, half) / 10, NARROWEST, WIDEST),
    () => [4, 20],
    WIDTH_SOURCE,
  );

const dartLengthParam = (half: Half) =>
  lengthParam(
    (c) => within((shoulderOf(c, half) * 2) / 3, SHORTEST, LONGEST),
    () => [30, 120],
    LENGTH_SOURCE,
  );

const params = {
  back: choiceParam(
    ['dart', 'eased', 'none'],
    'dart',
    'a dart, or the back eased (common practice, no source)',
  ),
  backWidth: widthParam('back'),
  backLength: dartLengthParam('back'),
  backEase: lengthParam(
    () => inches(1 / 4),
    () => [1, 12],
    "a back shoulder 1/4 in longer than the front, eased to it (Woman's Encyclopaedia, lesson on the bodice)",
  ),
  front: flagParam(false, 'for figures that begin to develop (common practice, no source)'),
  frontWidth: widthParam('front'),
  frontLength: dartLengthParam('front'),
} as const;

/**
 * Darts in the shoulders, or a back shoulder that is eased to the front. Runs when neck, sleeves and linings have
 * been drawn from the plain shoulder: everything that is sewn keeps its length.
 */
export const shoulderDarts = defineStep({
  id: 'shoulder-darts',
  stage: 'shoulder',
  kind: 'shoulder-darts',
  params,
  words: {
    title: 'Shoulder darts',
    about:
      'Room for the shoulder blades, or for a figure that begins to develop, from darts in the shoulders.',
    back: 'Back shoulder',
    'back.dart': 'With a dart',
    'back.eased': 'Longer than the front, and eased to it',
    'back.none': 'As it is',
    backWidth: 'Width of the back dart',
    backLength: 'Length of the back dart',
    backEase: 'Back shoulder longer than the front by',
    front: 'A dart in the front shoulder',
    frontWidth: 'Width of the front dart',
    frontLength: 'Length of the front dart',
    'over-arm':
      'A shoulder that runs on over the arm has no place for a shoulder dart. Choose a set-in sleeve or none, or leave the dart out.',
    yoke: 'A yoke that is cut at the shoulders has no room for a shoulder dart. Leave out the yoke or the dart.',
    opens: 'Shoulders that open cannot have darts or be eased. Open the back instead, or leave the dart out.',
    faced:
      'An armhole facing has the shape of the plain armhole, which a shoulder dart changes. Bind or line the armholes instead, or leave the dart out.',
    'no-room': 'A shoulder of {shoulder} has no room for a dart {width} wide. Ease the back instead.',
    blunt:
      'A dart {width} wide and only {length} long would stand off at its tip. Make it narrower or longer.',
    'tip-outside':
      'A shoulder dart {length} long comes too near to another edge of {piece}. Make it shorter, or ease the back instead.',
    armhole:
      'The armhole of {piece} cannot be drawn again, at the same length, to a shoulder that is {by} wider. Make it less.',
    'draw.none': 'The shoulders stay as they are.',
    'draw.front': 'Shoulder dart, front',
    'draw.back': 'Shoulder, back',
    'draw.dart':
      '{piece}: mark the dart on the shoulder {middle} from the neck point, and from there rule its first leg {length} long into the piece, square to the shoulder. Rule the second leg from its tip, as long, so that the mouth is {width} wide toward the arm.',
    'draw.outer':
      '{piece}: from the end of the second leg draw the rest of the shoulder, {rest} long: square to the leg at first, then in a slight hollow until it runs like the old shoulder. It ends {below} below the line of the old shoulder, drawn on.',
    'draw.fold':
      'Fold the dart toward the neck: the shoulder must run across it in one smooth line. On a lining fold it toward the arm, so that the two do not lie on each other.',
    'draw.longer':
      '{piece}: draw the shoulder on at the arm by {by}. It is eased to the front when it is sewn.',
    'draw.armhole':
      '{piece}: draw the armhole again from the new shoulder tip, leaving the shoulder at the same angle as before and ending at the underarm as before. Measure it, and hollow it a little more or less until it is as long as it was, {armhole}.',
  },
  apply: (work, values) => {
    const refusal = refusalOf(work.garment);
    if (refusal !== null) return refusal;
    if (values.back === 'none' && !values.front) {
      work.bench.part({ key: 'shoulder-darts.draw.back', values: {} });
      work.bench.tell('shoulder-darts.draw.none', {});
    }
    let outcome: StepOutcome = done(work.garment);
    if (values.front)
      outcome = dartHalf(work, 'front', { width: values.frontWidth, length: values.frontLength });
    if (!outcome.ok) return outcome;
    const next: StepWork = { ...work, garment: outcome.garment };
    switch (values.back) {
      case 'dart':
        return dartHalf(next, 'back', { width: values.backWidth, length: values.backLength });
      case 'eased':
        return easeBack(next, values.backEase);
      case 'none':
        return outcome;
    }
  },
});

/** Why this dress has no plain shoulder to work on; null when it has. */
function refusalOf(garment: Garment): StepOutcome | null {
  if (garment.closing?.kind === 'shoulder-studs') return cannot('shoulder-darts.opens');
  if (garment.pieces.some((piece) => findEdge(piece, 'overarm') !== undefined))
    return cannot('shoulder-darts.over-arm');
  const plain = HALVES.every((half) => shouldersOf(garment, half)[0]?.id === half);
  if (!plain) return cannot('shoulder-darts.yoke');
  const faced = garment.pieces.some(({ id }) => id.startsWith('armhole-facing'));
  return faced ? cannot('shoulder-darts.faced') : null;
}

/** The piece that carries the shoulder of a half, and that of its lining. */
const shouldersOf = (garment: Garment, half: Half): readonly Piece[] => {
  const ids: readonly PieceId[] = [half, `${half}-lining`];
  return garment.pieces.filter(
    (piece) =>
      ids.includes(piece.id) &&
      findEdge(piece, 'shoulder') !== undefined &&
      findEdge(piece, 'armhole') !== undefined,
  );
};

/** Cuts the same dart into shell and lining; the lining is trimmed at the neck, so its shoulder begins later. */
function dartHalf(
  { garment, bench }: StepWork,
  half: Half,
  wish: { readonly width: number; readonly length: number },
): StepOutcome {
  const [width, length] = [bench.rounded(wish.width), bench.rounded(wish.length)];
  if (width > length * BLUNT)
    return cannot('shoulder-darts.blunt', { width: { mm: width }, length: { mm: length } });
  let dress = garment;
  for (const piece of shouldersOf(garment, half)) {
    const shoulder = edgeLength(piece, 'shoulder');
    const dart: ShoulderDart = { middle: bench.rounded(shoulder / 2), width, length };
    if (shoulder < 2 * LEAST_BESIDE)
      return cannot('shoulder-darts.no-room', { shoulder: { mm: shoulder }, width: { mm: width } });
    const cut = cutShoulderDart(piece, dart);
    if (!cut.ok)
      return cannot(`shoulder-darts.${cut.why}`, {
        piece: piece.title,
        length: { mm: length },
        by: { mm: width },
      });
    const { middle } = dart;
    bench.part(
      { key: `shoulder-darts.draw.${half}`, values: {} },
      piece.edges.map((edge) => edge.path),
    );
    bench.tell(
      'shoulder-darts.draw.dart',
      { piece: piece.title, middle: { mm: middle }, length: { mm: length }, width: { mm: width } },
      { lines: shoulderLines(cut.piece) },
    );
    bench.tell('shoulder-darts.draw.outer', {
      piece: piece.title,
      rest: { mm: shoulder - middle },
      below: { mm: belowShoulder(piece, edgeStart(cut.piece, 'armhole')) },
    });
    tellArmhole(bench, cut.piece);
    bench.tell('shoulder-darts.draw.fold', {});
    dress = withShoulderDart(dress, cut.piece);
  }
  return done(dress);
}

/** How far a place lies below the straight line through the shoulder of a piece, mm. */
function belowShoulder(piece: Piece, place: Point): number {
  const { path } = edgeOf(piece, 'shoulder');
  return dot(subtract(pathStart(path), place), outward(pathStartTangent(path)));
}

function easeBack({ garment, bench }: StepWork, ease: number): StepOutcome {
  const by = bench.rounded(ease);
  let dress = garment;
  for (const piece of shouldersOf(garment, 'back')) {
    const longer = lengthenShoulder(piece, by);
    if (longer === null) return cannot('shoulder-darts.armhole', { piece: piece.title, by: { mm: by } });
    bench.part(
      { key: 'shoulder-darts.draw.back', values: {} },
      piece.edges.map((edge) => edge.path),
    );
    bench.tell(
      'shoulder-darts.draw.longer',
      { piece: piece.title, by: { mm: by } },
      { lines: shoulderLines(longer) },
    );
    tellArmhole(bench, longer);
    dress = withPiece(dress, longer);
    dress = {
      ...dress,
      // Two shoulders; the back is the second side of the seam.
      seams: dress.seams.map((seam) =>
        seam.name === 'shoulder' && seam.b.some((edge) => edge.piece === piece.id)
          ? { ...seam, join: { kind: 'eased', ease: 2 * by } }
          : seam,
      ),
    };
  }
  return done(dress);
}

const tellArmhole = (bench: StepWork['bench'], piece: Piece): void =>
  bench.tell('shoulder-darts.draw.armhole', {
    piece: piece.title,
    armhole: { mm: edgeLength(piece, 'armhole') },
  });
