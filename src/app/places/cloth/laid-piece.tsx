import { memo, type ReactNode } from 'react';
import { pathBounds } from '../../../engine/geometry/index.ts';
import type { LaidOnCloth } from '../../../engine/lay/index.ts';
import type { ClothRole } from '../../../engine/piece/index.ts';
import { lineData, pathData } from '../../parts/path-data.ts';
import { AtSize, hatchFill } from '../../table/index.ts';

interface LaidPieceProps {
  readonly laid: LaidOnCloth;
  readonly role: ClothRole;
  readonly name: string;
  /** The child, where several lie on the cloth. */
  readonly child: string | null;
  /** `length.stretch.item`, by which a touch finds it. */
  readonly id: string;
  readonly look: 'plain' | 'picked' | 'bad';
  /** She holds it: tapes lie on it, and its name is told beside the drawing. */
  readonly isHeld: boolean;
  readonly isPinned: boolean;
  readonly hatches: string;
  /** px for each mm, as it was when the zoom last rested. */
  readonly zoom: number;
}

/** A letter of 12 px is about as wide. */
const LETTER = 6.6;

/** One piece where it lies: cutting line, grain line with its arrow at the head, its name, and its pin. */
export const LaidPiece = memo(function LaidPiece(props: LaidPieceProps): ReactNode {
  const { laid, role, name, child, id, look, isHeld, isPinned, hatches, zoom } = props;
  const outline = pathData(laid.outline);
  const [head, foot] = laid.pins;
  const box = pathBounds(laid.outline);
  const room = { across: (box.maxX - box.minX) * zoom - 8, down: (box.maxY - box.minY) * zoom - 8 };
  const words = isHeld ? [] : wordsIn(room, name, child);
  const fill = hatchFill(hatches, role);
  const middle =
    head === undefined || foot === undefined
      ? { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 }
      : { x: (head.at.x + foot.at.x) / 2, y: (head.at.y + foot.at.y) / 2 };
  return (
    <g className={`lay-piece lay-${look}`} data-laid={id}>
      <path className="lay-body" d={outline} />
      {fill !== null && <path d={outline} fill={fill} />}
      <path className="lay-line" d={outline} />
      {head !== undefined && foot !== undefined && (
        <path className="lay-grain" d={lineData(foot.at, head.at) + arrow(head.at, foot.at)} />
      )}
      <AtSize at={middle}>
        {words.map((line, i) => (
          <text key={line} className="lay-name" y={heightOf(i, words.length)}>
            {line}
          </text>
        ))}
      </AtSize>
      {isPinned && (
        <AtSize at={{ x: (box.minX + box.maxX) / 2, y: box.minY }}>
          <path className="lay-pin" d="M0 20V8" />
          <circle className="lay-pin-head" cy={8} r={5} />
        </AtSize>
      )}
    </g>
  );
});

/** From one line of words to the next, px. */
const LINE = 15;

/** The name, in as many lines as there is room for, and the child below it; nothing rather than a few letters. */
function wordsIn(
  { across, down }: { readonly across: number; readonly down: number },
  name: string,
  child: string | null,
): readonly string[] {
  const [letters, lines] = [Math.floor(across / LETTER), Math.floor(down / LINE)];
  if (letters < 5) return [];
  const last = child === null ? [] : [shortened(child, letters)];
  const most = lines - last.length;
  if (most < 1) return [];
  const wrapped: string[] = [];
  for (const word of name.split(' ')) {
    const line = wrapped.at(-1);
    const longer = line === undefined ? word : `${line} ${word}`;
    if (line === undefined || (longer.length > letters && wrapped.length < most)) wrapped.push(word);
    else wrapped[wrapped.length - 1] = longer;
  }
  return [...wrapped.map((line) => shortened(line, letters)), ...last];
}

const shortened = (text: string, letters: number): string =>
  text.length <= letters ? text : `${text.slice(0, letters - 1)}…`;

/** Lines stand above and below the grain line, px from it. */
function heightOf(line: number, lines: number): number {
  const above = Math.ceil(lines / 2);
  return line < above ? -5 - LINE * (above - 1 - line) : LINE * (line - above + 1);
}

const ARROW = 14;

/** Two short strokes back from the head of the grain line. */
function arrow(head: { x: number; y: number }, foot: { x: number; y: number }): string {
  const [dx, dy] = [foot.x - head.x, foot.y - head.y];
  const long = Math.hypot(dx, dy);
  if (long < 1) return '';
  const back = { x: (dx / long) * Math.min(ARROW, long / 2), y: (dy / long) * Math.min(ARROW, long / 2) };
  const side = { x: -back.y * 0.45, y: back.x * 0.45 };
  return [1, -1]
    .map((k) => lineData(head, { x: head.x + back.x + k * side.x, y: head.y + back.y + k * side.y }))
    .join('');
}
