import { type PointerEvent, type ReactNode, useRef, useState } from 'react';
import { say } from '../../engine/words/index.ts';

/** How much of the page below the tags the panel takes on a phone. */
const HEIGHTS = [0.16, 0.46, 0.86] as const;

/**
 * The panel of a place: beside the table on a larger screen; on a phone a sheet over the lower part of the drawing,
 * pulled up and down by its handle with the thumb, or by its buttons.
 */
export function PullUp({
  title,
  children,
}: {
  readonly title: string;
  readonly children: ReactNode;
}): ReactNode {
  const [height, setHeight] = useState<number>(HEIGHTS[1]);
  const panel = useRef<HTMLElement>(null);
  const held = useRef<{ readonly y: number; readonly height: number; moved: boolean } | null>(null);

  const room = (): number => panel.current?.parentElement?.clientHeight ?? 1;
  const grab = (event: PointerEvent<HTMLElement>): void => {
    event.currentTarget.setPointerCapture(event.pointerId);
    held.current = { y: event.clientY, height, moved: false };
  };
  const pull = ({ clientY }: PointerEvent<HTMLElement>): void => {
    const { current } = held;
    if (current === null) return;
    if (Math.abs(clientY - current.y) > 6) current.moved = true;
    if (!current.moved) return;
    setHeight(Math.min(Math.max(current.height + (current.y - clientY) / room(), HEIGHTS[0]), HEIGHTS[2]));
  };
  const letGo = (): void => {
    const { current } = held;
    held.current = null;
    if (current?.moved === true) {
      setHeight((at) => HEIGHTS.reduce((a, b) => (Math.abs(b - at) < Math.abs(a - at) ? b : a)));
    } else setHeight((at) => (at > 0.6 ? HEIGHTS[1] : HEIGHTS[2]));
  };
  const step = (by: 1 | -1): void => {
    const now = HEIGHTS.findIndex((at) => Math.abs(at - height) < 0.05);
    setHeight(HEIGHTS[Math.min(Math.max(now + by, 0), HEIGHTS.length - 1)] ?? HEIGHTS[1]);
  };
  return (
    <section
      ref={panel}
      className="panel"
      aria-label={title}
      style={{ '--pulled': height } as Record<string, number>}
    >
      <div
        className="panel-handle"
        onPointerDown={grab}
        onPointerMove={pull}
        onPointerUp={letGo}
        onPointerCancel={letGo}
      >
        <span className="panel-grip" aria-hidden="true" />
      </div>
      <div className="panel-steps">
        <button type="button" className="unseen-until-focus" onClick={() => step(1)}>
          {say('page.panel.taller', {}, 'in')}
        </button>
        <button type="button" className="unseen-until-focus" onClick={() => step(-1)}>
          {say('page.panel.lower', {}, 'in')}
        </button>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a panel that scrolls must be reached by keyboard. */}
      <div className="panel-inside" tabIndex={0}>
        {children}
      </div>
    </section>
  );
}
