import { type ReactNode, useCallback, useEffect, useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { say, speak } from '../../engine/words/index.ts';
import type { BackupState, Keeping } from '../../store/index.ts';
import { useDevice } from '../device/device.tsx';
import { download } from '../device/download.ts';
import { dayText } from '../device/today.ts';
import { Button } from '../parts/button.tsx';
import { toast } from '../parts/toast.tsx';
import { Restore } from './restore.tsx';

/** How safe the orders are: lasting storage, backup, and the way back from one. */
export function KeptSafe({
  orders,
  onChanged,
}: {
  readonly orders: number;
  readonly onChanged: () => Promise<void>;
}): ReactNode {
  const { store } = useDevice();
  const [keeping, setKeeping] = useState<Keeping | null>(null);
  const [backup, setBackup] = useState<BackupState | null>(null);
  const [chosen, setChosen] = useState<Uint8Array | null>(null);
  const look = useCallback(async (): Promise<void> => {
    setKeeping(await store.keeping());
    const state = await store.backupState();
    if (state.ok) setBackup(state.value);
  }, [store]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another number of orders is looked at anew.
  useEffect(() => void look(), [look, orders]);

  const makeBackup = async (): Promise<void> => {
    const made = await store.makeBackup();
    if (!made.ok) return toast(speak(made.problem.say, 'in'));
    download(made.value.fileName, made.value.bytes, 'application/zip');
    await store.noteBackup(made.value);
    toast(say('page.keep.backup.done', { file: made.value.fileName }, 'in'));
    await look();
  };
  const read = async (files: FileList | null): Promise<void> => {
    const file = files?.[0];
    if (file !== undefined) setChosen(new Uint8Array(await file.arrayBuffer()));
  };
  return (
    <section className="part">
      <h2>{say('page.keep', {}, 'in')}</h2>
      {orders > 0 && backup?.due != null && (
        <p className="reminder">{say(`page.keep.remind.${backup.due}`, { day: dayOf(backup.last) }, 'in')}</p>
      )}
      {orders > 0 && keeping !== null && (
        <>
          <p>{say(`page.keep.lasting.${keeping.lasting}`, {}, 'in')}</p>
          {keeping.lasting === 'no' && (
            <div>
              <Button onPress={() => void store.askToKeep().then(setKeeping)}>
                {say('page.keep.ask', {}, 'in')}
              </Button>
            </div>
          )}
          <p className="quiet small">
            {keeping.usedBytes !== null &&
              say('page.keep.used', { used: Math.ceil(keeping.usedBytes / 1e5) / 10 }, 'in')}{' '}
            {backup !== null && backedUp(backup)}
          </p>
        </>
      )}
      <div className="row row-wrap">
        {orders > 0 && <Button onPress={() => void makeBackup()}>{say('page.keep.backup', {}, 'in')}</Button>}
        <FileTrigger acceptedFileTypes={['.zip', 'application/zip']} onSelect={(files) => void read(files)}>
          <Button look="quiet">{say('page.keep.restore', {}, 'in')}</Button>
        </FileTrigger>
      </div>
      {chosen !== null && (
        <Restore
          bytes={chosen}
          onClose={() => {
            setChosen(null);
            void onChanged().then(look);
          }}
        />
      )}
    </section>
  );
}

const dayOf = (instant: string | null): string => (instant === null ? '' : dayText(instant.slice(0, 10)));

const backedUp = ({ last, changedOrders }: BackupState): string =>
  last === null
    ? say('page.keep.backup.never', {}, 'in')
    : say('page.keep.backup.last', { day: dayOf(last), count: changedOrders }, 'in');
