import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { useChild, useSessionState, useUnits } from '../../session/use-session.ts';
import { EVERYTHING } from '../../work/paper-wish.ts';
import { changeDesk, useDesk } from './desk.ts';
import { MakePaper } from './make-paper.tsx';
import { PaperList } from './paper-list.tsx';
import { RunOfSizes } from './run-of-sizes.tsx';
import { TrueSize } from './true-size.tsx';
import { usePaperGrounds, usePaperLook, usePapersShown } from './use-paper-look.ts';
import { YourPaper } from './your-paper.tsx';
import '../../look/paper.css';

/** What can be printed, on which paper, at true size; one paper at a time or everything in one file. */
export function PaperPlace(): ReactNode {
  usePaperLook();
  const units = useUnits();
  const { work } = useChild();
  const children = useSessionState((state) => state.work.children.length);
  const forWhom = useDesk((desk) => desk.forWhom);
  const whom = [
    { id: 'child' as const, text: work.name },
    { id: 'party' as const, text: say('page.paper.for.party', {}, units) },
  ];
  return (
    <div className="stack">
      <h2>
        {forWhom === 'child'
          ? say('page.paper.of', { child: work.name }, units)
          : say('page.paper.of-party', {}, units)}
      </h2>
      {children > 1 && (
        <Choice
          label={say('page.paper.for', {}, units)}
          value={forWhom}
          options={whom}
          onChange={(chosen) => changeDesk({ forWhom: chosen, path: '', look: null })}
        />
      )}
      <ChosenPaper />
      {forWhom === 'party' && <RunOfSizes />}
      <YourPaper />
      <TrueSize />
      <Everything />
    </div>
  );
}

function ChosenPaper(): ReactNode {
  const { of } = usePaperGrounds();
  const look = usePapersShown();
  const shown = look?.papers.find(({ path }) => path === look.path) ?? null;
  return (
    <section className="part">
      <PaperList />
      {shown !== null && <MakePaper key={`${of} ${shown.path}`} paper={shown} main />}
    </section>
  );
}

function Everything(): ReactNode {
  const units = useUnits();
  return (
    <section className="part">
      <h3>{say('page.paper.all', {}, units)}</h3>
      <p className="quiet">{say('page.paper.all.about', {}, units)}</p>
      <MakePaper paper={{ path: EVERYTHING, about: '', count: 0 }} main={false} />
    </section>
  );
}
