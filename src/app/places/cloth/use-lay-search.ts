import { produce } from 'immer';
import { useEffect } from 'react';
import { say } from '../../../engine/words/index.ts';
import { today } from '../../device/today.ts';
import type { Session } from '../../session/session.ts';
import { useSession } from '../../session/use-session.ts';
import { searchLay } from '../../work/lay.ts';
import type { LayWish, LengthFound } from '../../work/lay-wish.ts';
import { changeDesk } from './desk.ts';
import { asKeptLay, putLay } from './keep-lay.ts';
import { keyOf, type SeenLay, seenLength } from './seen-lay.ts';
import { useOf } from './use-lay-look.ts';

/** Searches on from the lay that is seen; what was found is kept with the order, also when the place is left. */
export function useLaySearch(seen: SeenLay | null): (seconds: number) => void {
  const session = useSession();
  const of = useOf();
  useEffect(() => () => running?.leave(), []);
  return (seconds) => {
    if (seen !== null && running === null) void search(session, seen, of, { seconds });
  };
}

/** The one search that is under way. */
let running: { readonly leave: () => void } | null = null;

async function search(
  session: Session,
  seen: SeenLay,
  of: LayWish['of'],
  until: LayWish['until'],
): Promise<void> {
  const key = keyOf(seen);
  const units = session.state.getState().file.units;
  const seed = seen.kept === null ? 1 : seen.kept.seed + 1;
  let best: { readonly lengths: readonly LengthFound[]; readonly evaluations: number } | null = null;
  let isLeft = false;
  const keep = (lengths: readonly LengthFound[], evaluations: number): void => {
    const lay = asKeptLay(withFound(seen, lengths), { seed, evaluations });
    session.change({ key: 'page.did.lay', values: { cloth: seen.cloth.name } }, (file) => putLay(file, lay));
  };
  running = {
    leave: () => {
      isLeft = true;
      running = null;
      if (best !== null) keep(best.lengths, best.evaluations);
    },
  };
  changeDesk({ search: { key, gone: 0, evaluations: 0, found: null }, picked: null, said: null });
  const file = produce(session.state.getState().file, (draft) => putLay(draft, asKeptLay(seen)));
  const wish = { file, today: today(), of, cloth: seen.cloth.name, child: seen.child, seed, until };
  const end = await searchLay(wish, ({ gone, evaluations, lengths }) => {
    if (isLeft) return;
    if (lengths !== null) best = { lengths, evaluations };
    changeDesk({ search: { key, gone, evaluations, found: best?.lengths ?? null } });
  });
  if (isLeft) return;
  running = null;
  const before = lengthSum(seen);
  let said = null;
  if (end.ok && end.value.ok) {
    keep(end.value.lengths, end.value.evaluations);
    const isShorter = lengthSum(withFound(seen, end.value.lengths)) < before - 0.5;
    if (!isShorter) said = { text: say('page.cloth.no-shorter', {}, units), wrong: false };
  } else if (end.ok) {
    said = { text: end.value.ok ? '' : end.value.refused.join(' '), wrong: true };
  } else {
    const last = best as { readonly lengths: readonly LengthFound[]; readonly evaluations: number } | null;
    if (last !== null) keep(last.lengths, last.evaluations);
    if (end.code === 'failed') said = { text: say('page.cloth.failed', {}, units), wrong: true };
  }
  changeDesk({ search: null, said });
}

/** Of all its lengths, mm. */
export const lengthSum = ({ lengths }: Pick<SeenLay, 'lengths'>): number =>
  lengths.reduce((sum, { lay }) => sum + lay.length, 0);

function withFound(seen: SeenLay, found: readonly LengthFound[]): SeenLay {
  const lengths = seen.lengths.map((length) => {
    const placed = found.find(({ at }) => at === length.at)?.placed;
    return placed === undefined ? length : seenLength(length.at, length.plan, placed, length.pinned);
  });
  return { ...seen, lengths };
}
