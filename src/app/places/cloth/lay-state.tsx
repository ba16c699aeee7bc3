import { type ReactNode, useState } from 'react';
import type { PlacedFault } from '../../../engine/lay/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { UnderWay } from '../../parts/under-way.tsx';
import { useUnits } from '../../session/use-session.ts';
import { enoughLaid } from '../../work/lay.ts';
import { useDesk } from './desk.ts';
import { clothText } from './lay-tape.tsx';
import { pieceName } from './piece-name.ts';
import type { SeenLay } from './seen-lay.ts';
import { lengthSum, useLaySearch } from './use-lay-search.ts';

const TIMES = ['10', '60', '300'] as const;
/** So many faults are told one by one. */
const TOLD = 3;

/** How it stands with the lay that is shown, and the one thing to do next: to look for a shorter one. */
export function LayState({ seen }: { readonly seen: SeenLay }): ReactNode {
  const units = useUnits();
  const search = useDesk((desk) => desk.search);
  const [time, setTime] = useState<(typeof TIMES)[number]>('10');
  const begin = useLaySearch(seen);
  const looking = useDesk((desk) => desk.looking);
  const state = stateOf(seen, looking);
  if (search !== null) return <Searching seen={seen} gone={search.gone} hasFound={search.found !== null} />;
  return (
    <>
      <p className={state === 'spoiled' || state === 'old' ? 'wrong' : 'quiet'}>
        {say(`page.cloth.state.${state}`, {}, units)}
      </p>
      {state === 'spoiled' && <Faults seen={seen} />}
      <Choice
        label={say('page.cloth.time', {}, units)}
        value={time}
        options={TIMES.map((id) => ({ id, text: say(`page.cloth.time.${id}`, {}, units) }))}
        onChange={setTime}
      />
      <Button look="main" onPress={() => begin(Number(time))}>
        {say(buttonWord(seen, state), {}, units)}
      </Button>
    </>
  );
}

type State = 'first' | 'short' | 'kept' | 'old' | 'spoiled';

function stateOf({ lengths, kept, isOld }: SeenLay, looking: boolean): State {
  if (lengths.some(({ faults }) => faults.length > 0)) return 'spoiled';
  return kept === null ? (looking ? 'first' : 'short') : isOld ? 'old' : 'kept';
}

function buttonWord({ lengths }: SeenLay, state: State) {
  if (state === 'old') return 'page.cloth.again';
  if (lengths.some(({ pinned }) => pinned.size > 0) || state === 'spoiled') return 'page.cloth.rest';
  return state === 'short' || state === 'first' ? 'page.cloth.look' : 'page.cloth.look-longer';
}

function Searching({
  seen,
  gone,
  hasFound,
}: {
  readonly seen: SeenLay;
  readonly gone: number;
  readonly hasFound: boolean;
}): ReactNode {
  const units = useUnits();
  const [before] = useState(lengthSum(seen));
  const length = lengthSum(seen);
  const saved = before - length;
  const words = !hasFound
    ? say('page.cloth.first', {}, units)
    : saved < 1
      ? say('page.cloth.searching', { length: clothText(length, units) }, units)
      : say(
          'page.cloth.searching.saved',
          { length: clothText(length, units), saved: clothText(saved, units) },
          units,
        );
  return (
    <UnderWay
      words={words}
      far={{ value: gone, max: 1 }}
      stop={say('page.cloth.enough', {}, units)}
      onStop={() => void enoughLaid()}
    />
  );
}

function Faults({ seen }: { readonly seen: SeenLay }): ReactNode {
  const units = useUnits();
  const sentences = seen.lengths.flatMap(({ faults }, length) =>
    faults.map((fault) => faultSentence(seen, length, fault, units)),
  );
  const all = [...new Set(sentences)];
  return (
    <ul className="wrong small">
      {all.slice(0, TOLD).map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
      {all.length > TOLD && <li>{say('page.cloth.fault.more', { count: all.length - TOLD }, units)}</li>}
    </ul>
  );
}

function faultSentence(
  seen: SeenLay,
  length: number,
  fault: PlacedFault,
  units: ReturnType<typeof useUnits>,
): string {
  const name = (item: number): string => pieceName(seen, { length, stretch: fault.stretch, item }, units);
  if (fault.code !== 'overlap')
    return say(`page.cloth.fault.${fault.code}`, { piece: name(fault.item) }, units);
  const [a, b] = fault.items;
  const gap = clothText(seen.cloth.gap, units);
  return say('page.cloth.fault.overlap', { piece: name(a), other: name(b), gap }, units);
}
