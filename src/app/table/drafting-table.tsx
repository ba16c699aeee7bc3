import { type KeyboardEvent, type ReactNode, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Point } from '../../engine/geometry/index.ts';
import type { Garment } from '../../engine/piece/index.ts';
import type { Ruler, UnitSystem } from '../../engine/units/index.ts';
import { say } from '../../engine/words/index.ts';
import { afterFrame } from '../device/after-frame.ts';
import { panned } from './camera.ts';
import { ChildrenKey } from './children-key.tsx';
import { type PlayMove, type PlayPlace, played } from './drafting-play.ts';
import type { Governed } from './governed-places.ts';
import { Hatches } from './hatches.tsx';
import { LabelsLayer } from './labels-layer.tsx';
import type { LaidPiece } from './lay-pieces.ts';
import { lengthText } from './length-text.ts';
import { LiveLayer, markBox, placeBox } from './live-layer.tsx';
import { tableLabels } from './measure-labels.ts';
import { boundsOfAll, movedBounds } from './motion.ts';
import { type ParamRef, sameParam } from './param-now.ts';
import { PlayBar } from './play-bar.tsx';
import { ReadingCard } from './reading-card.tsx';
import { SceneView } from './scene-view.tsx';
import { SewnBar } from './sewn-bar.tsx';
import { TableBar } from './table-bar.tsx';
import { TableMenu } from './table-menu.tsx';
import { tableScene, widthLines } from './table-scene.ts';
import type { TableDress, TableLook, TableMark, TablePlace } from './table-types.ts';
import { type TapeEnd, tapeEnd } from './tape.ts';
import { TapeCard } from './tape-card.tsx';
import { TapeLayer } from './tape-layer.tsx';
import { touched } from './touch.ts';
import { transformOf, useCamera } from './use-camera.ts';
import { useGestures } from './use-gestures.ts';
import { useNarrow } from './use-narrow.ts';
import { type OnDragParam, useParamDrag } from './use-param-drag.ts';
import { ZoomButtons } from './zoom-buttons.tsx';
import './table.css';
import './table-lines.css';

export interface DraftingTableProps {
  /** Null while no dress can be drawn. */
  readonly dress: TableDress | null;
  /** The other children of the order, to be laid over. */
  readonly others: readonly { readonly name: string; readonly garment: Garment }[];
  readonly units: UnitSystem;
  readonly ruler: Ruler;
  readonly look: TableLook;
  readonly onLook: (look: TableLook) => void;
  readonly picked: TablePlace | null;
  readonly onPick: (place: TablePlace | null) => void;
  readonly marks?: readonly TableMark[];
  /** The mark that is spoken of elsewhere: the table goes to its place. */
  readonly markShown?: string | null;
  readonly onMark?: (id: string) => void;
  /** What the numbers govern (`useGoverned`); the points of `liveParam` light up and can be dragged. */
  readonly governed?: readonly Governed[];
  readonly liveParam?: ParamRef | null;
  readonly onDragParam?: OnDragParam;
}

/** A touch reaches this far, px: half a fingertip. */
const REACH = 16;
const STEP = 60;
/** She rests in a drag when no move has come for this long, ms. */
const DRAG_REST = 160;
const NEARER = 1.35;
const PLAY_KEYS: Readonly<Record<string, PlayMove>> = { n: 'on', b: 'back', a: 'all' };

/** A child's dress drawn true: to be looked at from every side, read, measured, and changed by hand. */
export function DraftingTable(props: DraftingTableProps): ReactNode {
  const { dress, others, units, ruler, look, onLook, picked, onPick } = props;
  const { marks = NONE, markShown = null, governed = NONE, liveParam = null } = props;
  const narrow = useNarrow();
  const hatches = useId().replaceAll(':', '');
  const sheet = useRef<HTMLDivElement | null>(null);
  const svg = useRef<SVGSVGElement | null>(null);
  const [play, setPlay] = useState<PlayPlace>({ part: 0, step: 1 });
  const [tape, setTape] = useState<readonly TapeEnd[] | null>(null);
  const [shape, setShape] = useState(4 / 3);
  const lay = useRef<readonly LaidPiece[]>(NONE);

  const scene = useMemo(
    () => (dress === null ? null : tableScene({ dress, others, look, play, shape, before: lay.current })),
    [dress, others, look, play, shape],
  );
  const laid = scene?.laid ?? NONE;
  const laidNow = useRef(laid);
  laidNow.current = laid;
  if (scene?.view === 'pieces') lay.current = laid;

  const part = look.view === 'drafting' ? play.part : look.view === 'sewn' ? look.joined : '';
  const work = useCamera(sheet, scene?.box ?? EMPTY, `${dress?.name ?? ''} ${look.view} ${part} ${shape}`);
  const { screen, zoom, show } = work;
  // Pieces are laid anew for another shape of screen, not for every pixel of it.
  const wanted = 2 ** (Math.round(Math.log2(screen.width / screen.height) * 2) / 2);
  useEffect(() => {
    lay.current = NONE;
    setShape(wanted);
  }, [wanted]);

  const live = useMemo(
    () => (liveParam === null ? NONE : governed.filter(({ ref }) => sameParam(ref, liveParam))),
    [governed, liveParam],
  );
  const { drag, held, value, governed: dragged } = useParamDrag(dress, laid, live, ruler, props.onDragParam);

  const touch = (at: Point): void => {
    if (look.view !== 'pieces' && look.view !== 'sewn') return;
    const reach = REACH / work.camera().zoom;
    if (tape !== null)
      setTape(tape.length === 1 ? [...tape, tapeEnd(laid, at, reach)] : [tapeEnd(laid, at, reach)]);
    else onPick(touched(laid, at, reach));
  };
  const gestures = useGestures(svg, work, drag, touch);

  const always = picked?.kind === 'edge' ? `${picked.piece} ${picked.edge}` : null;
  const readable = look.view === 'pieces' || look.view === 'sewn';
  const lying = useMemo(() => {
    const top = scene?.view === 'sewn' ? (scene.layers.at(-1)?.pieces ?? NONE) : (scene?.laid ?? NONE);
    return {
      laid: top,
      beside: (scene?.laid ?? NONE).filter((piece) => !top.includes(piece)),
      lines: scene?.view === 'sewn' ? widthLines(scene) : NONE,
    };
  }, [scene]);
  // Words are placed after the lines are drawn, and while she drags only when she rests.
  const [settled, setSettled] = useState(lying);
  const dragging = held !== null;
  useEffect(() => {
    if (!dragging) return afterFrame(() => setSettled(lying));
    const rest = setTimeout(() => setSettled(lying), DRAG_REST);
    return () => clearTimeout(rest);
  }, [lying, dragging]);
  const labels = useMemo(
    () =>
      readable
        ? tableLabels({
            ...settled,
            zoom,
            units,
            ruler,
            measures: look.shown.measures,
            names: look.shown.names,
            allowances: look.view === 'pieces' && look.shown.allowances,
            always,
          })
        : NONE,
    [readable, settled, zoom, units, ruler, look, always],
  );

  const shownMark = marks.find(({ id }) => id === markShown);
  // biome-ignore lint/correctness/useExhaustiveDependencies: pieces lie anew for another shape or view.
  useEffect(() => {
    const box = shownMark === undefined ? null : markBox(shownMark, laidNow.current);
    if (box !== null) show(box);
  }, [shownMark, show, shape, look.view]);
  useEffect(() => {
    const box = picked === null ? null : placeBox(picked, laidNow.current);
    if (box !== null) show(box);
  }, [picked, show]);

  // The keys of a phone leave little of the table: it comes near to what her number governs.
  const nearTo = useMemo(
    (): readonly string[] =>
      narrow ? live.flatMap(({ handles }) => handles.map(({ piece }) => piece)) : NONE,
    [narrow, live],
  );
  const { near, back } = work;
  useEffect(() => {
    const boxes = laidNow.current.flatMap(({ cut, frame }) =>
      nearTo.includes(cut.piece.id) ? [movedBounds(cut.cuttingLine, frame)] : [],
    );
    if (boxes.length === 0) back();
    else near(boundsOfAll(boxes));
  }, [nearTo, near, back]);

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const pan = PANS[event.key];
    const move = look.view === 'drafting' ? PLAY_KEYS[event.key.toLowerCase()] : undefined;
    if (event.key === '+' || event.key === '=') work.nearer(NEARER);
    else if (event.key === '-') work.nearer(1 / NEARER);
    else if (event.key === '0') work.all();
    else if (pan !== undefined) work.move(panned(work.camera(), { x: pan.x * STEP, y: pan.y * STEP }));
    else if (move !== undefined && dress !== null) setPlay(played(dress.draft, play, move));
    else if (event.key === 'Escape') {
      if (tape !== null) setTape(null);
      else onPick(null);
    } else return;
    event.preventDefault();
  };

  const measuring = tape !== null;
  const bar = useMemo(
    () => (
      <TableBar
        look={look}
        onLook={onLook}
        tape={measuring}
        onTape={(out) => setTape(out ? [] : null)}
        units={units}
      />
    ),
    [look, onLook, measuring, units],
  );

  if (dress === null || scene === null) {
    return <section className="t-table t-empty">{say('table.empty', {}, units)}</section>;
  }
  const sewn =
    scene.view === 'sewn' ? <SewnBar scene={scene} look={look} onLook={onLook} units={units} /> : null;
  const reading =
    !readable || tape !== null ? null : (
      <ReadingCard
        garment={dress.garment}
        pieces={laid.map(({ cut }) => cut).filter((cut, i, all) => all.indexOf(cut) === i)}
        picked={picked}
        onPick={onPick}
        units={units}
        ruler={ruler}
      />
    );
  return (
    <section className="t-table">
      {narrow ? (
        <TableMenu view={look.view} units={units}>
          {bar}
          {sewn}
          {picked === null ? reading : null}
        </TableMenu>
      ) : (
        bar
      )}
      <div className="t-sheet" ref={sheet}>
        <svg
          ref={svg}
          className={tape === null ? 't-drawing' : 't-drawing t-measuring'}
          role="application"
          aria-label={say('table.name', { child: dress.name }, units)}
          aria-description={say('table.how', {}, units)}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: it takes keys.
          tabIndex={0}
          onKeyDown={onKeyDown}
          onClick={(event) => {
            const mark = event.target instanceof Element ? event.target.closest('[data-mark]') : null;
            const id = mark?.getAttribute('data-mark');
            if (id !== null && id !== undefined) props.onMark?.(id);
          }}
          {...gestures}
        >
          <Hatches id={hatches} zoom={zoom} />
          <g
            ref={work.group}
            transform={transformOf(work.camera())}
            style={{ '--mm': 1 / work.camera().zoom } as object}
          >
            <SceneView scene={scene} dress={dress} shown={look.shown} hatches={hatches} units={units} />
            <LabelsLayer labels={labels} />
            {readable ? (
              <LiveLayer
                garment={dress.garment}
                laid={laid}
                picked={picked}
                marks={marks}
                markShown={markShown}
                governed={live}
                held={held}
              />
            ) : null}
            {tape === null || !readable ? null : <TapeLayer ends={tape} />}
          </g>
        </svg>
        <ZoomButtons units={units} by={NEARER} nearer={work.nearer} all={work.all} />
        {dragged === null || value === null ? null : (
          <output className="t-dragged">
            {dragged.now.kind === 'length' ? lengthText(value, units, ruler) : Math.round(value * 100) / 100}
          </output>
        )}
      </div>
      {narrow ? null : sewn}
      {scene.view === 'children' ? <ChildrenKey scene={scene} units={units} /> : null}
      {scene.view === 'drafting' ? (
        <PlayBar draft={dress.draft} at={play} onPlay={setPlay} units={units} />
      ) : null}
      {narrow && picked === null ? null : reading}
      {!readable || tape === null ? null : (
        <TapeCard
          ends={tape}
          laid={laid}
          units={units}
          ruler={ruler}
          onAgain={() => setTape([])}
          onAway={() => setTape(null)}
        />
      )}
    </section>
  );
}

const NONE = [] as const;
const EMPTY = { minX: 0, minY: 0, maxX: 100, maxY: 100 };
const PANS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: 1, y: 0 },
  ArrowRight: { x: -1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};
