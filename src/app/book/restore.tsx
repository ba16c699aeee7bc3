import { type ReactNode, useEffect, useState } from 'react';
import { say, speak } from '../../engine/words/index.ts';
import type { BackupEntry, BackupPlan, ClashChoice, StoreProblem } from '../../store/index.ts';
import { useDevice } from '../device/device.tsx';
import { dayText } from '../device/today.ts';
import { Button } from '../parts/button.tsx';
import { Choice } from '../parts/choice.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { Switch } from '../parts/switch.tsx';
import { toast } from '../parts/toast.tsx';

/** What is in a backup and how it stands to the book; nothing is written before she says so. */
export function Restore({
  bytes,
  onClose,
}: {
  readonly bytes: Uint8Array;
  readonly onClose: () => void;
}): ReactNode {
  const { store, set } = useDevice();
  const [takeSettings, setTakeSettings] = useState(false);
  const [plan, setPlan] = useState<BackupPlan | null>(null);
  const [problem, setProblem] = useState<StoreProblem | null>(null);
  const [tolerant, setTolerant] = useState(false);
  const [choices, setChoices] = useState<Readonly<Record<string, ClashChoice>>>({});

  useEffect(() => {
    let gone = false;
    void store.readBackup(bytes, { leaveOutDamaged: tolerant }).then((read) => {
      if (gone) return;
      setProblem(read.ok ? null : read.problem);
      setPlan(read.ok ? read.value : null);
      if (read.ok) setChoices(Object.fromEntries(read.value.entries.map((e) => [e.id, e.suggested])));
    });
    return () => {
      gone = true;
    };
  }, [store, bytes, tolerant]);

  const write = async (): Promise<void> => {
    if (plan === null) return;
    const done = await store.restore(plan, { orders: choices, takeSettings });
    if (!done.ok) return setProblem(done.problem);
    if (takeSettings && plan.settings !== null) set(plan.settings);
    toast(say('page.keep.restore.done', { ...done.value }, 'in'));
    onClose();
  };
  const nothing =
    plan?.settings === null && plan.entries.every(({ standing }) => standing === 'same') === true;
  return (
    <Sheet
      open
      title={say('page.keep.restore.title', {}, 'in')}
      close={say('page.cancel', {}, 'in')}
      onClose={onClose}
    >
      {problem !== null && (
        <>
          <p role="alert" className="wrong">
            {speak(problem.say, 'in')}
          </p>
          {problem.code === 'bad-backup' && !tolerant && (
            <Button onPress={() => setTolerant(true)}>{say('page.keep.restore.damaged', {}, 'in')}</Button>
          )}
        </>
      )}
      {plan !== null && (
        <>
          <p>{say('page.keep.restore.made', { day: dayText(plan.madeAt.slice(0, 10)) }, 'in')}</p>
          {plan.unreadable.map(({ part, why }) => (
            <p key={part} className="wrong">
              {say('page.keep.restore.unreadable', { part, why }, 'in')}
            </p>
          ))}
          {nothing && <p>{say('page.keep.restore.nothing', {}, 'in')}</p>}
          <ul className="stack">
            {plan.entries
              .filter(({ standing }) => standing !== 'same')
              .map((entry) => (
                <li key={entry.id}>
                  <OneOrder
                    entry={entry}
                    choice={choices[entry.id] ?? 'keep-mine'}
                    onChange={(choice) => setChoices({ ...choices, [entry.id]: choice })}
                  />
                </li>
              ))}
          </ul>
          {plan.settings !== null && (
            <Switch
              label={say('page.keep.restore.settings', {}, 'in')}
              value={takeSettings}
              onChange={setTakeSettings}
            />
          )}
          {!nothing && (
            <Button look="main" onPress={() => void write()}>
              {say('page.keep.restore.do', {}, 'in')}
            </Button>
          )}
        </>
      )}
    </Sheet>
  );
}

function OneOrder({
  entry,
  choice,
  onChange,
}: {
  readonly entry: BackupEntry;
  readonly choice: ClashChoice;
  readonly onChange: (choice: ClashChoice) => void;
}): ReactNode {
  const { theirs, standing } = entry;
  const isNew = standing === 'new';
  const ways = isNew
    ? (['take-theirs', 'keep-mine'] as const)
    : (['keep-mine', 'take-theirs', 'keep-both'] as const);
  const options = ways.map((id) => {
    const word = !isNew ? id : id === 'keep-mine' ? 'leave-out' : 'add';
    return { id, text: say(`page.keep.restore.${word}`, {}, 'in') };
  });
  return (
    <>
      <strong>{theirs.title}</strong>
      <p className="quiet small">
        {say(`page.keep.restore.standing.${standing}`, {}, 'in')}
        {theirs.deletedAt !== null && ` · ${say('page.keep.restore.was-deleted', {}, 'in')}`}
      </p>
      <Choice
        label={say('page.keep.restore.which', { title: theirs.title }, 'in')}
        value={isNew && choice === 'keep-both' ? 'take-theirs' : choice}
        options={options}
        onChange={onChange}
      />
    </>
  );
}
