import {
  distance,
  outlineArea,
  outlineSelfCrossings,
  type Point,
  pathEnd,
  pathStart,
} from '../geometry/index.ts';
import { type EdgeName, outlineOf, type Piece } from '../piece/index.ts';
import { type Check, NOWHERE, tell } from './check.ts';
import { kindWords, type Look, type Rule, titleOf } from './look.ts';

/** Edges that meet nearer than this are closed, mm. */
const CLOSED = 1e-6;
/** Nobody can sew an edge shorter than this, mm; one that short was left over by a cut. */
const SHORTEST_EDGE = 1;

/** Every edge of a piece begins where the one before ended. */
export const outlineClosed: Rule = ({ garment }) => {
  const open = garment.pieces.flatMap(openCorner);
  if (open.length > 0) return open;
  const count = garment.pieces.length;
  return [
    {
      code: 'outline-closed',
      level: 'ok',
      measured: { count },
      allowed: null,
      where: NOWHERE,
      say: tell('check.outline-closed.all', { count }),
      todo: null,
    },
  ];
};

/** No piece crosses itself, lies inside out, or has an edge too short to sew. Open outlines are told elsewhere. */
export const outlineSimple: Rule = (look) => {
  const closed = look.garment.pieces.filter((piece) => openCorner(piece).length === 0);
  const faults = closed.flatMap((piece) => [...shape(piece), ...shortEdges(look, piece)]);
  if (faults.length > 0 || closed.length === 0) return faults;
  return [
    {
      code: 'outline-simple',
      level: 'ok',
      measured: { count: closed.length },
      allowed: null,
      where: NOWHERE,
      say: tell('check.outline-simple.all', { count: closed.length }),
      todo: null,
    },
  ];
};

/** The widest gap between two edges that follow each other; nothing when the outline is closed. */
function openCorner(piece: Piece): readonly Check[] {
  let gap = CLOSED;
  let at: Point | undefined;
  let edge: EdgeName = '';
  for (const [i, here] of piece.edges.entries()) {
    const next = piece.edges[(i + 1) % piece.edges.length];
    if (next === undefined) continue;
    const apart = distance(pathEnd(here.path), pathStart(next.path));
    if (apart <= gap) continue;
    gap = apart;
    at = pathEnd(here.path);
    edge = here.name;
  }
  if (at === undefined) return [];
  return [
    {
      code: 'outline-closed',
      level: 'stop',
      measured: { mm: gap },
      allowed: { to: { mm: CLOSED } },
      where: { pieces: [piece.id], edges: [{ piece: piece.id, edge }], at },
      say: tell('check.outline-closed.open', { piece: titleOf(piece), gap: { mm: gap } }),
      todo: tell('check.outline-closed.todo', { piece: titleOf(piece) }),
    },
  ];
}

function shape(piece: Piece): readonly Check[] {
  const outline = outlineOf(piece);
  const [crossing] = outlineSelfCrossings(outline);
  const fault = (variant: 'crosses' | 'inside-out', at: Point): Check => ({
    code: 'outline-simple',
    level: 'stop',
    measured: null,
    allowed: null,
    where: { pieces: [piece.id], edges: [], at },
    say: tell(`check.outline-simple.${variant}`, { piece: titleOf(piece) }),
    todo: tell('check.outline-simple.todo', { piece: titleOf(piece) }),
  });
  if (crossing !== undefined) return [fault('crosses', crossing)];
  return outlineArea(outline) > 0 ? [] : [fault('inside-out', pathStart(outline))];
}

const shortEdges = (look: Look, piece: Piece): readonly Check[] =>
  piece.edges
    .map((edge) => ({ edge, length: look.lengthOf(edge.path) }))
    .filter(({ length }) => length < SHORTEST_EDGE)
    .map(({ edge, length }) => ({
      code: 'outline-simple',
      level: 'warn',
      measured: { mm: length },
      allowed: { from: { mm: SHORTEST_EDGE } },
      where: { pieces: [piece.id], edges: [{ piece: piece.id, edge: edge.name }], at: pathStart(edge.path) },
      say: tell('check.outline-simple.short', { piece: titleOf(piece), edge: kindWords(edge.kind) }),
      todo: tell('check.outline-simple.lengthen', { edge: kindWords(edge.kind) }),
    }));
