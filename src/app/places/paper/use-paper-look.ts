import { useEffect, useMemo } from 'react';
import { today } from '../../device/today.ts';
import { useOrderFile, useSessionState } from '../../session/use-session.ts';
import { lookAtPaper, stopPaper } from '../../work/paper.ts';
import type { PaperGrounds, PaperLook, PaperOf } from '../../work/paper-wish.ts';
import { useTimedElsewhere } from '../other-orders.ts';
import { changeDesk, clearDesk, useDesk } from './desk.ts';

/** Nothing is drawn before she has paused this long, ms. */
const PAUSE = 250;

/** What papers are made from, and for whom. The history and the day of today have no part in it. */
export function usePaperGrounds(): { readonly grounds: PaperGrounds; readonly of: PaperOf } {
  const file = useOrderFile((order) => order);
  const child = useSessionState((state) => state.child);
  const forWhom = useDesk((desk) => desk.forWhom);
  const timed = useTimedElsewhere();
  const grounds = useMemo(() => ({ file, today: today(), timed }), [file, timed]);
  return { grounds, of: forWhom === 'party' ? 'party' : child };
}

/** The papers of whom she looks at; null while only those of somebody else are drawn. */
export function usePapersShown(): PaperLook | null {
  const { of } = usePaperGrounds();
  return useDesk((desk) => (desk.of === of ? desk.look : null));
}

/**
 * Keeps the desk at what the order asks for: draws anew in the worker after each change. While one drawing is under
 * way the next one waits, and only the newest is drawn. Ends the worker on leaving the place.
 */
export function usePaperLook(): void {
  const { grounds, of } = usePaperGrounds();
  const path = useDesk((desk) => desk.path);
  const line = useMemo(createLine, []);
  useEffect(() => line.ask(grounds, of, path), [line, grounds, of, path]);
  useEffect(
    () => () => {
      line.close();
      stopPaper();
      clearDesk();
    },
    [line],
  );
}

interface Line {
  ask(grounds: PaperGrounds, of: PaperOf, path: string): void;
  close(): void;
}

function createLine(): Line {
  let wanted: { readonly grounds: PaperGrounds; readonly of: PaperOf; readonly path: string } | null = null;
  let pause: ReturnType<typeof setTimeout> | undefined;
  let busy = false;
  let closed = false;

  const draw = async (): Promise<void> => {
    if (busy || closed || wanted === null) return;
    const asked = wanted;
    wanted = null;
    busy = true;
    const end = await lookAtPaper(asked.grounds, asked.of, asked.path);
    busy = false;
    if (closed) return;
    // Broken off together with something that was being made: it is still wanted.
    if (!end.ok && end.code === 'stopped') wanted ??= asked;
    else if (!end.ok) changeDesk({ refusal: end, drawing: wanted !== null });
    else if (!end.value.ok) changeDesk({ refusal: end.value, drawing: wanted !== null });
    else changeDesk({ look: end.value.value, of: asked.of, refusal: null, drawing: wanted !== null });
    void draw();
  };

  return {
    ask(grounds, of, path) {
      wanted = { grounds, of, path };
      changeDesk({ drawing: true });
      clearTimeout(pause);
      pause = setTimeout(() => void draw(), PAUSE);
    },
    close() {
      closed = true;
      clearTimeout(pause);
    },
  };
}
