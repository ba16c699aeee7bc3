import { useEffect, useRef, useState } from 'react';
import { say } from '../../../engine/words/index.ts';
import { download } from '../../device/download.ts';
import { toast } from '../../parts/toast.tsx';
import { makePaper, stopPaper } from '../../work/paper.ts';
import type { MadePaper, PaperGrounds, PaperStep, PaperWish } from '../../work/paper-wish.ts';
import type { Desk } from './desk.ts';

/** How it stands with a paper that she wants. */
export type Making =
  | { readonly kind: 'idle' }
  /** `step` null: being drawn, nothing is written yet. */
  | { readonly kind: 'making'; readonly step: PaperStep | null }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'made'; readonly paper: MadePaper; readonly grounds: PaperGrounds }
  | { readonly kind: 'refused'; readonly refusal: NonNullable<Desk['refusal']> };

export interface Maker {
  readonly making: Making;
  readonly make: (grounds: PaperGrounds, wish: PaperWish) => void;
  readonly stop: () => void;
}

/**
 * Makes a paper in the worker and saves it. What is under way is broken off when another paper is chosen or the place
 * is left, and she is told.
 */
export function useMaking(): Maker {
  const [making, setMaking] = useState<Making>({ kind: 'idle' });
  const there = useRef(true);
  const busy = useRef(false);
  useEffect(() => {
    there.current = true;
    return () => {
      there.current = false;
      if (!busy.current) return;
      stopPaper();
      toast(say('page.paper.stopped', {}, 'in'));
    };
  }, []);
  const show = (next: Making): void => {
    if (there.current) setMaking(next);
  };
  const make = async (grounds: PaperGrounds, wish: PaperWish): Promise<void> => {
    show({ kind: 'making', step: null });
    busy.current = true;
    const end = await makePaper(grounds, wish, (step) =>
      setMaking((now) => (now.kind === 'making' ? { kind: 'making', step } : now)),
    );
    busy.current = false;
    if (!end.ok)
      return show(end.code === 'stopped' ? { kind: 'stopped' } : { kind: 'refused', refusal: end });
    if (!end.value.ok) return show({ kind: 'refused', refusal: end.value });
    const { value: paper } = end.value;
    if (!there.current) return;
    download(paper.fileName, paper.content, paper.content.type);
    show({ kind: 'made', paper, grounds });
  };
  return { making, make: (grounds, wish) => void make(grounds, wish), stop: stopPaper };
}
