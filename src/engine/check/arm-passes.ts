import { edgeAt, type Piece, pieceAt, type Seam, seamsNamed } from '../piece/index.ts';
import { type Check, type Level, tell } from './check.ts';
import {
  bodiceOf,
  edgesOfKind,
  girthOf,
  type Look,
  type PieceEdge,
  placeOf,
  type Rule,
  runsOverArm,
  SLEEVE_EDGES,
  withYokes,
} from './look.ts';
import { SLACK } from './tolerance.ts';

/** Least ease of an opening round the bare upper arm, mm: arm + 2.5 to 4 cm (common practice, no source). */
const ARM_EASE = 25;

/**
 * Drawn armhole as a share of the upper arm: for a chest of 60, an arm of 20 and an armhole of 31.5 cm it is 1.57.
 * Under 1.35 it binds; with a dropped shoulder or cap it may go to 1.8 (worked out, and common practice without
 * source). Thin arms would fail this in a draft by the book, so an armhole that is usual for the chest passes too:
 * the "sixth of the neck" draft gives 0.51 to 0.56 of it (worked out from the draft).
 */
const ARMHOLE_PER_ARM = [1.35, 1.8] as const;
const ARMHOLE_PER_CHEST = 0.56;

/** The opening round each arm: the armhole, with the edge of a cap or of a sleeve cut in one where there is one. */
const armholeEdges = (look: Look): readonly PieceEdge[] =>
  edgesOfKind(bodiceOf(look), 'armhole', ...SLEEVE_EDGES);

/**
 * Hems of sleeves that close round the arm. A wing or a cap without underarm seam binds nothing, and where elastic
 * draws a long sleeve together at the wrist, the hand is asked instead.
 */
function sleeveHems(look: Look): readonly PieceEdge[] {
  const seamed = seamsNamed(look, 'sleeve-underarm').flatMap((seam) => [...seam.a, ...seam.b]);
  const closed = new Set(seamed.flatMap((at) => withYokes(look, pieceAt(look, at)).map(({ id }) => id)));
  const arm = look.body.values.upperArmGirth.mm;
  const atWrist = (piece: Piece): boolean =>
    piece.markings.some(({ drawnTo }) => drawnTo !== undefined && drawnTo < arm);
  return edgesOfKind(
    look.garment.pieces.filter((piece) => piece.layer === 'shell' && closed.has(piece.id) && !atWrist(piece)),
    ...SLEEVE_EDGES,
  );
}

/** Bands into which sleeves are gathered. */
const sleeveBands = (look: Look): readonly PieceEdge[] =>
  seamsNamed(look, 'band')
    .filter((seam) => isOnSleeve(look, seam))
    .flatMap((seam) => seam.a.map((at) => ({ piece: pieceAt(look, at), edge: edgeAt(look, at) })));

const isOnSleeve = (look: Look, seam: Seam): boolean =>
  seam.a.every((at) => edgeAt(look, at).kind === 'attach') &&
  seam.b.every((at) => pieceAt(look, at).edges.some((edge) => edge.kind === 'cap'));

export const armPasses: Rule = (look) =>
  [armholeEdges(look), sleeveHems(look), sleeveBands(look)].flatMap((edges) =>
    edges.length === 0 ? [] : [passes(look, edges)],
  );

function passes(look: Look, edges: readonly PieceEdge[]): Check {
  const round = girthOf(look, edges) / 2;
  const arm = look.body.values.upperArmGirth.mm;
  const wanted = arm + ARM_EASE;
  const level: Level = round < arm - SLACK ? 'stop' : round < wanted - SLACK ? 'warn' : 'ok';
  const values = {
    round: { mm: round },
    arm: { mm: arm },
    ease: { mm: round - arm },
    short: { mm: wanted - round },
  };
  return {
    code: 'arm-passes',
    level,
    measured: { mm: round },
    allowed: { from: { mm: wanted } },
    where: placeOf(edges),
    say: tell(`check.arm-passes.${level}`, values),
    todo: level === 'ok' ? null : tell('check.arm-passes.todo', values),
  };
}

export const armholeRatio: Rule = (look) => {
  const edges = armholeEdges(look);
  if (edges.length === 0) return [];
  const round = girthOf(look, edges) / 2;
  const arm = look.body.values.upperArmGirth.mm;
  const ratio = round / arm;
  const least = ARMHOLE_PER_ARM[0];
  const most = Math.max(ARMHOLE_PER_ARM[1], (ARMHOLE_PER_CHEST * look.body.values.chestGirth.mm) / arm);
  const variant = ratio < least - SLACK ? 'tight' : ratio > most + SLACK ? 'wide' : 'ok';
  const values = {
    round: { mm: round },
    arm: { mm: arm },
    least: { mm: least * arm },
    most: { mm: most * arm },
  };
  return [
    {
      code: 'armhole-ratio',
      // The opening of a cap or a sleeve in one is wide on purpose.
      level: variant === 'ok' ? 'ok' : variant === 'wide' && runsOverArm(look) ? 'note' : 'warn',
      measured: { ratio },
      allowed: { from: { ratio: least }, to: { ratio: most } },
      where: placeOf(edges),
      say: tell(`check.armhole-ratio.${variant}`, values),
      todo: variant === 'ok' ? null : tell(`check.armhole-ratio.${variant}.todo`, values),
    },
  ];
};
