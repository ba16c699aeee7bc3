import { type ReactNode, useState } from 'react';
import { say, speak } from '../../engine/words/index.ts';
import type { BrokenOrder } from '../../store/index.ts';
import { useDevice } from '../device/device.tsx';
import { download } from '../device/download.ts';
import { Button } from '../parts/button.tsx';
import { Confirm } from '../parts/sheet.tsx';
import { toast } from '../parts/toast.tsx';

/** Records that can't be read: what is wrong, a way to save what is left, and to remove them. */
export function BrokenOrders({
  broken,
  onChanged,
}: {
  readonly broken: readonly BrokenOrder[];
  readonly onChanged: () => Promise<void>;
}): ReactNode {
  const { store } = useDevice();
  const [asked, setAsked] = useState<BrokenOrder | null>(null);
  const titleOf = ({ title }: BrokenOrder): string => title ?? say('page.book.broken.untitled', {}, 'in');
  const fetchRaw = async (id: string): Promise<void> => {
    const raw = await store.raw(id);
    if (raw.ok) download(raw.value.fileName, raw.value.text, 'application/json');
    else toast(speak(raw.problem.say, 'in'));
  };
  const remove = async (order: BrokenOrder): Promise<void> => {
    setAsked(null);
    const gone = await store.discard([order.id]);
    await onChanged();
    toast(
      gone.ok
        ? say('page.book.broken.removed', { title: titleOf(order) }, 'in')
        : speak(gone.problem.say, 'in'),
    );
  };
  return (
    <section className="part">
      <h2>{say('page.book.broken', {}, 'in')}</h2>
      <p>{say('page.book.broken.about', {}, 'in')}</p>
      <ul className="stack">
        {broken.map((order) => (
          <li key={order.id} className="stack">
            <strong>{titleOf(order)}</strong>
            <span className="wrong">{speak(order.why, 'in')}</span>
            <div className="row row-wrap">
              <Button onPress={() => void fetchRaw(order.id)}>
                {say('page.book.broken.download', {}, 'in')}
              </Button>
              <Button look="wrong" onPress={() => setAsked(order)}>
                {say('page.book.broken.remove', {}, 'in')}
              </Button>
            </div>
          </li>
        ))}
      </ul>
      <Confirm
        open={asked !== null}
        title={say('page.book.broken.remove.title', {}, 'in')}
        action={say('page.book.broken.remove', {}, 'in')}
        cancel={say('page.cancel', {}, 'in')}
        onCancel={() => setAsked(null)}
        onAction={() => {
          if (asked !== null) void remove(asked);
        }}
      >
        <p>{asked === null ? '' : say('page.book.broken.remove.about', { title: titleOf(asked) }, 'in')}</p>
      </Confirm>
    </section>
  );
}
