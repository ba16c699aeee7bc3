import { type ReactNode, useState } from 'react';
import { say } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { useChild, useSessionState, useUnits } from '../../session/use-session.ts';
import { Batches } from './batches.tsx';
import { Cautions } from './cautions.tsx';
import { StepList } from './step-list.tsx';
import { useSewings } from './use-sewing.ts';
import '../../look/sew.css';

/** The order of work of one child's dress, to tick off; or of the whole party, one step for all at once. */
export function SewPlace(): ReactNode {
  const units = useUnits();
  const { work, index } = useChild();
  const count = useSessionState((state) => state.work.children.length);
  const [shown, setShown] = useState<'child' | 'party'>('child');
  const sewings = useSewings();
  const sewing = sewings[index] ?? null;
  const whom = [
    { id: 'child' as const, text: work.name },
    { id: 'party' as const, text: say('page.sew.for.party', {}, units) },
  ];
  const forParty = shown === 'party' && count > 1;
  return (
    <div className="stack sew">
      <h2>
        {forParty ? say('page.sew.of-party', {}, units) : say('page.sew.of', { child: work.name }, units)}
      </h2>
      {count > 1 && (
        <Choice label={say('page.sew.for', {}, units)} value={shown} options={whom} onChange={setShown} />
      )}
      {forParty ? (
        <Batches sewings={sewings} />
      ) : (
        <>
          <Cautions work={work} />
          {sewing === null ? (
            <p>{say('page.sew.waiting', {}, units)}</p>
          ) : (
            <StepList key={index} index={index} result={sewing} />
          )}
        </>
      )}
    </div>
  );
}
