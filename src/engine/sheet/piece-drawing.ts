import type { CutPiece } from '../cut/index.ts';
import { type Path, pathFlatten } from '../geometry/index.ts';
import type { ClothRole, PieceId } from '../piece/index.ts';
import { cuttingRuns } from './cutting-runs.ts';
import type { Lettering, PieceLie } from './lettering.ts';
import { writePageNames } from './page-names.ts';
import { labelPiece } from './piece-label.ts';
import { foldBracket, writeAllowances, writeGrain, writeMarkings } from './piece-lettering.ts';
import { writePleatArrows } from './pleat-arrows.ts';
import type { Ink, Mark, TextMark } from './scene.ts';
import { doubleArrow, stroke, strokeLine } from './shapes.ts';
import type { HatchName } from './styles.ts';

/** A cut piece as it lies on paper, still in its own coordinates. */
export interface PieceDrawing {
  readonly id: PieceId;
  readonly title: string;
  /** 'Cut 2 in satin, 1 pair' */
  readonly cutting: string;
  readonly cloth: ClothRole;
  /** The cutting line, closed. */
  readonly outline: Path;
  readonly marks: readonly Mark[];
  /** The words among the marks, each wording with all its lines. */
  readonly words: readonly (readonly TextMark[])[];
}

/** Told apart by hatch, lightly, so that text stays readable. */
export const CLOTH_HATCHES = {
  main: 'plain',
  skirt: 'plain',
  yoke: 'net',
  lining: 'diagonal',
  net: 'net',
  trim: 'plain',
} as const satisfies Record<ClothRole, HatchName>;

/** How closely straight runs follow a curve where text is kept clear of it, mm. */
const FLAT = 0.5;
const GRAIN_HEAD = 4.5;

/** A piece that lies as it was drawn and is not parted by pages. */
const IN_ONE: PieceLie = { turns: 0, windows: [], clear: [] };

/** Draws a piece at true size with everything that is marked on it; its words follow from how it lies on paper. */
export function drawPiece(cut: CutPiece, ink: Ink, lie: PieceLie = IN_ONE): PieceDrawing {
  const { piece } = cut;
  const runs = cuttingRuns(cut);
  const stitched = piece.edges.filter(
    (edge) => edge.kind === 'dart' || (edge.kind !== 'fold' && (cut.allowances[edge.name] ?? 0) > 0),
  );
  const lettering: Lettering = {
    ...lie,
    ink,
    outline: piece.edges.flatMap((edge) => pathFlatten(edge.path, FLAT)),
    obstacles: [
      [piece.grain.from, piece.grain.to],
      ...piece.markings.map((marking) => pathFlatten(marking.path, FLAT)),
      ...cut.notches.map((notch) => [notch.from, notch.to]),
    ],
    marks: [],
    words: [],
  };
  for (const edge of piece.edges) if (edge.kind === 'fold') foldBracket(lettering, edge.path);
  writePleatArrows(lettering, cut);
  writeMarkings(lettering, piece.markings);
  const label = labelPiece(lettering, cut);
  writeGrain(lettering, piece.grain);
  writeAllowances(lettering, cut);
  writePageNames(lettering, cut, pathFlatten(cut.cuttingLine, FLAT), label);
  return {
    id: piece.id,
    title: cut.label.title,
    cutting: cut.label.cutting,
    cloth: piece.cloth,
    outline: cut.cuttingLine,
    marks: [
      { kind: 'hatch', outline: cut.cuttingLine, hatch: CLOTH_HATCHES[piece.cloth], scale: 1 },
      ...stitched.map((edge) => stroke(edge.path, 'stitching')),
      ...piece.markings.map((marking) => stroke(marking.path, marking.kind)),
      ...doubleArrow(piece.grain.from, piece.grain.to, 'grain', GRAIN_HEAD),
      ...lettering.marks,
      ...lettering.words.flat(),
      ...cut.notches.map((notch) => strokeLine(notch.from, notch.to, 'notch')),
      ...runs.fold.map((path) => stroke(path, 'fold')),
      ...runs.cut.map((path) => stroke(path, 'cutting')),
    ],
    words: lettering.words,
  };
}
