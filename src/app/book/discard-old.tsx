import { type ReactNode, useEffect, useState } from 'react';
import { say, speak } from '../../engine/words/index.ts';
import type { OrderSummary } from '../../store/index.ts';
import { useDevice } from '../device/device.tsx';
import { Button } from '../parts/button.tsx';
import { Confirm } from '../parts/sheet.tsx';
import { toast } from '../parts/toast.tsx';

/** Orders that were deleted so long ago that nobody will miss them; they go when she says so, never by themselves. */
export function DiscardOld({
  deleted,
  onChanged,
}: {
  readonly deleted: readonly OrderSummary[];
  readonly onChanged: () => Promise<void>;
}): ReactNode {
  const { store } = useDevice();
  const [old, setOld] = useState<readonly OrderSummary[]>([]);
  const [asked, setAsked] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: other deleted orders are looked at anew.
  useEffect(() => {
    let gone = false;
    void store.discardable().then((found) => {
      if (!gone && found.ok) setOld(found.value);
    });
    return () => {
      gone = true;
    };
  }, [store, deleted.length]);
  if (old.length === 0) return null;
  const remove = async (): Promise<void> => {
    setAsked(false);
    const done = await store.discard(old.map(({ id }) => id));
    await onChanged();
    toast(
      done.ok
        ? say('page.book.discard.old.done', { count: done.value.length }, 'in')
        : speak(done.problem.say, 'in'),
    );
  };
  return (
    <div>
      <Button look="wrong" onPress={() => setAsked(true)}>
        {say('page.book.discard.old', { count: old.length }, 'in')}
      </Button>
      <Confirm
        open={asked}
        title={say('page.book.discard.title', {}, 'in')}
        action={say('page.book.discard', {}, 'in')}
        cancel={say('page.cancel', {}, 'in')}
        onCancel={() => setAsked(false)}
        onAction={() => void remove()}
      >
        <p>
          {say('page.book.discard.old.about', { titles: old.map(({ title }) => title).join(', ') }, 'in')}
        </p>
      </Confirm>
    </div>
  );
}
