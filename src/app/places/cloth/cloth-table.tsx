import { type KeyboardEvent, type ReactNode, useId, useMemo, useRef } from 'react';
import type { Point } from '../../../engine/geometry/index.ts';
import { say } from '../../../engine/words/index.ts';
import { useSession, useUnits } from '../../session/use-session.ts';
import { Hatches, panned, transformOf, useCamera, useGestures, ZoomButtons } from '../../table/index.ts';
import { ClothStrip } from './cloth-strip.tsx';
import { changeDesk, useDesk } from './desk.ts';
import { HeldPiece } from './held-piece.tsx';
import { LaidPiece } from './laid-piece.tsx';
import { layScene, type SceneStretch, sceneBox } from './lay-scene.ts';
import { LayTape } from './lay-tape.tsx';
import { itemsOf, sameItem } from './piece-name.ts';
import { concerns, type ItemAt, isPinned, keyOf, type SeenLay } from './seen-lay.ts';
import { type Hand, useHand } from './use-hand.ts';
import { type DraggedPiece, itemUnder, useLayDrag } from './use-lay-drag.ts';
import { useSeen } from './use-lay-look.ts';
import '../../table/table.css';
import '../../look/cloth.css';

/** The lay on the table, to scale: she looks at it, measures it, and puts pieces elsewhere. */
export function ClothTable(): ReactNode {
  const units = useUnits();
  const seen = useSeen();
  const looking = useDesk((desk) => desk.looking);
  if (seen === null) {
    return (
      <p className="paper-none quiet">
        {say(looking ? 'page.cloth.looking' : 'page.cloth.none-shown', {}, units)}
      </p>
    );
  }
  return <LayOnTable key={keyOf(seen)} seen={seen} />;
}

const NEARER = 1.4;
/** For the words above and below the cloth, px. */
const AIR = { width: 12, height: 36 };
/** Screen px by which an arrow key moves the drawing. */
const PAN = 60;
const PANS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: 1, y: 0 },
  ArrowRight: { x: -1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};
/** How far an arrow key moves a piece, and with Shift, mm. */
const NUDGES = { in: [25.4 / 4, 50.8], cm: [5, 50] } as const;

function LayOnTable({ seen }: { readonly seen: SeenLay }): ReactNode {
  const units = useUnits();
  const session = useSession();
  const hatches = useId();
  const sheet = useRef<HTMLDivElement>(null);
  const svg = useRef<SVGSVGElement>(null);
  const picked = useDesk((desk) => desk.picked);
  const said = useDesk((desk) => desk.said);
  const hand = useHand(seen);
  const scene = useMemo(() => layScene(seen), [seen]);
  const work = useCamera(sheet, sceneBox(scene), keyOf(seen), AIR);
  const camera = useRef(work.camera);
  camera.current = work.camera;
  const { drag, dragged } = useLayDrag(seen, hand, camera);
  const touchedItem = useRef<ItemAt | null>(null);
  const gestures = useGestures(svg, work, drag, () => {
    session.settle();
    changeDesk({ picked: touchedItem.current, said: null });
  });
  const isThere =
    picked !== null &&
    seen.lengths[picked.length]?.lay.stretches[picked.stretch]?.pieces[picked.item] !== undefined;
  const held = isThere ? picked : null;

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (!pressed(event, held, hand)) return;
    event.preventDefault();
  };
  const pressed = ({ key, shiftKey }: KeyboardEvent, at: ItemAt | null, own: Hand | null): boolean => {
    const to = PANS[key];
    if (key === '+' || key === '=') work.nearer(NEARER);
    else if (key === '-') work.nearer(1 / NEARER);
    else if (key === '0') work.all();
    else if (key === 'PageDown' || key === 'PageUp') chooseNext(seen, at, key === 'PageDown' ? 1 : -1);
    else if (to !== undefined && at === null)
      work.move(panned(work.camera(), { x: to.x * PAN, y: to.y * PAN }));
    else if (at === null) return false;
    else if (to !== undefined) {
      const by = NUDGES[units][shiftKey ? 1 : 0];
      own?.nudge(at, { x: -to.x * by, y: -to.y * by });
    } else if (key === 't' || key === 'T') own?.turn(at);
    else if (key === 'Enter') {
      const length = seen.lengths[at.length];
      own?.pin(at, length !== undefined && !isPinned(length, at.stretch, at.item));
    } else if (key === 'Escape') {
      session.settle();
      changeDesk({ picked: null });
    } else return false;
    return true;
  };

  return (
    <section className="t-table lay-table">
      <div className="t-sheet" ref={sheet}>
        <svg
          ref={svg}
          className="t-drawing lay-drawing"
          role="application"
          aria-label={say('page.cloth.table', { cloth: seen.cloth.name }, units)}
          aria-description={say('page.cloth.table.how', {}, units)}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: it takes keys.
          tabIndex={0}
          onKeyDown={onKeyDown}
          {...gestures}
          onPointerDown={(event) => {
            touchedItem.current = itemUnder(event.target);
            gestures.onPointerDown(event);
          }}
        >
          <Hatches id={hatches} zoom={work.zoom} />
          <g
            ref={work.group}
            transform={transformOf(work.camera())}
            style={{ '--mm': 1 / work.camera().zoom } as object}
          >
            {scene.map((one) => (
              <g
                key={`${one.length}.${one.stretch}`}
                transform={`translate(${one.origin.x} ${one.origin.y})`}
              >
                <StretchOnTable
                  seen={seen}
                  scene={one}
                  held={held}
                  dragged={dragged}
                  hatches={hatches}
                  zoom={work.zoom}
                />
              </g>
            ))}
          </g>
        </svg>
        <ZoomButtons units={units} by={NEARER} nearer={work.nearer} all={work.all} />
        <p role="status" className={saidLook(said?.wrong === true, held !== null)}>
          {said?.text}
        </p>
      </div>
      {held !== null && <HeldPiece seen={seen} at={held} hand={hand} />}
    </section>
  );
}

/** Where a held piece lies is told below the drawing; it need not be told over it. */
const saidLook = (isWrong: boolean, isHeld: boolean): string =>
  isWrong ? 'lay-said lay-said-wrong' : isHeld ? 'unseen' : 'lay-said';

function chooseNext(seen: SeenLay, at: ItemAt | null, by: 1 | -1): void {
  const all = itemsOf(seen);
  const now = at === null ? -1 : all.findIndex((other) => sameItem(at, other));
  const next = now < 0 ? (by > 0 ? 0 : all.length - 1) : (now + by + all.length) % all.length;
  changeDesk({ picked: all[next] ?? null, said: null });
}

/** One stretch with what lies on it; the piece that she holds is drawn over the others. */
function StretchOnTable({
  seen,
  scene,
  held,
  dragged,
  hatches,
  zoom,
}: {
  readonly seen: SeenLay;
  readonly scene: SceneStretch;
  readonly held: ItemAt | null;
  readonly dragged: DraggedPiece | null;
  readonly hatches: string;
  readonly zoom: number;
}): ReactNode {
  const units = useUnits();
  const length = seen.lengths[scene.length];
  if (length === undefined) return null;
  const { laid, stretch } = scene;
  const how = say(`page.cloth.stretch.${laid.folding}`, {}, units);
  const where =
    length.at === null
      ? say('page.cloth.bought', { how }, units)
      : say('page.cloth.on-length', { number: length.at + 1, how }, units);
  const isHere = (at: ItemAt | null | undefined): at is ItemAt =>
    at?.length === scene.length && at.stretch === stretch;
  const active = isHere(dragged?.at) ? dragged : null;
  const top = isHere(held) ? held.item : null;
  const order = [...laid.pieces.keys()].filter((item) => item !== top && item !== active?.at.item);
  const last = active?.at.item ?? top;
  const topPiece = last === null ? undefined : laid.pieces[last];
  return (
    <>
      <ClothStrip scene={scene} plan={length.plan} how={where} zoom={zoom} units={units} />
      {[...order, ...(last === null ? [] : [last])].map((item) => {
        const one = laid.pieces[item];
        const piece = length.plan.pieces[one?.piece ?? -1];
        if (one === undefined || piece === undefined) return null;
        const isMoving = active?.at.item === item;
        const isBad = isMoving
          ? active.isBad
          : active?.over.includes(item) === true ||
            length.faults.some((fault) => concerns(fault, stretch, item) && !isMoving);
        return (
          <g key={item} {...(isMoving ? { transform: `translate(${active.by.x} ${active.by.y})` } : {})}>
            <LaidPiece
              laid={one}
              role={piece.cut.piece.cloth}
              name={one.title}
              child={seen.child === null ? one.child : null}
              id={`${scene.length}.${stretch}.${item}`}
              isHeld={item === top && active === null}
              look={isBad ? 'bad' : item === last ? 'picked' : 'plain'}
              isPinned={isPinned(length, stretch, item)}
              hatches={hatches}
              zoom={zoom}
            />
          </g>
        );
      })}
      {topPiece !== undefined && active === null && <LayTape laid={topPiece} stretch={laid} units={units} />}
    </>
  );
}
