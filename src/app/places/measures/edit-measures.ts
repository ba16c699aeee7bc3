import type { MeasureId } from '../../../engine/body/index.ts';
import type { ChildFile, EarlierFile } from '../../../engine/order/index.ts';
import { type Saying, say } from '../../../engine/words/index.ts';
import { dayText, today } from '../../device/today.ts';
import { toast } from '../../parts/toast.tsx';
import type { Session } from '../../session/session.ts';
import { useSession, useUnits } from '../../session/use-session.ts';

/** The children whose measures of an earlier day she said she corrects, for as long as the order is open. */
const correcting = new WeakMap<Session, Set<number>>();

/** From now on what she types for this child corrects the measuring that is there. */
export function correctMeasures(session: Session, index: number): void {
  const known = correcting.get(session) ?? new Set();
  correcting.set(session, known.add(index));
}

/**
 * Writes one measure of the child that is shown. Measures of an earlier day are never written over: the first number
 * typed on another day begins a new measuring from them, unless she says that she is correcting the old one.
 */
export function useEditMeasures(): (id: MeasureId, text: string | undefined) => void {
  const session = useSession();
  const units = useUnits();
  return (id, text) => {
    const { child: index, file, work } = session.state.getState();
    const before = file.children[index];
    if (before === undefined) return;
    const now = today();
    const isNew = isOfAnotherDay(before, now) && correcting.get(session)?.has(index) !== true;
    const label: Saying = {
      key: 'page.did.measure',
      values: { measure: { word: `measure.${id}` }, child: work.children[index]?.name ?? before.name },
    };
    const cause = `children[${index}].measures.${id}`;
    const write = (child: ChildFile): void => {
      child.measured ??= now;
      const measures = { ...child.measures };
      if (text === undefined) delete measures[id];
      else measures[id] = text;
      child.measures = measures;
    };
    const takeBack = session.change(
      label,
      ({ children }) => {
        const child = children[index];
        if (child === undefined) return;
        if (isNew) beginMeasuring(child, now);
        write(child);
      },
      { cause },
    );
    if (!isNew) return;
    const day =
      before.measured === undefined ? say('page.measures.day.none', {}, units) : dayText(before.measured);
    toast(say('page.measures.begun', { day }, units), {
      word: say('page.measures.correct', {}, units),
      run: () => {
        correctMeasures(session, index);
        takeBack();
      },
    });
  };
}

/** Whether there are measures that were not taken today. */
function isOfAnotherDay({ measured, measures }: ChildFile, now: string): boolean {
  return measured !== now && Object.keys(measures ?? {}).length > 0;
}

/** Puts the present measures among the earlier ones and begins a new measuring from them. */
export function beginMeasuring(child: ChildFile, now: string): void {
  child.earlier = [presentMeasuring(child), ...(child.earlier ?? [])].slice(0, MOST_MEASURINGS);
  child.measures = { ...child.measures };
  child.measured = now;
}

/** The present measuring as it is kept among the earlier ones. */
export const presentMeasuring = ({ measured, measures = {}, weight }: ChildFile): EarlierFile => ({
  ...(measured === undefined ? {} : { measured }),
  measures,
  ...(weight === undefined ? {} : { weight }),
});

/** As many earlier measurings as an order file takes. */
const MOST_MEASURINGS = 40;
