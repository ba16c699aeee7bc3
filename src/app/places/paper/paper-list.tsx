import type { ReactNode } from 'react';
import { Label, Radio, RadioGroup } from 'react-aria-components';
import { say } from '../../../engine/words/index.ts';
import { fieldSentence, useTell, useUnits } from '../../session/use-session.ts';
import { changeDesk, type Desk, useDesk } from './desk.ts';
import { paperCount, paperName } from './paper-name.ts';
import { usePapersShown } from './use-paper-look.ts';

/** The papers that can be made, each with its number of pages; the chosen one lies on the table. */
export function PaperList(): ReactNode {
  const units = useUnits();
  const look = usePapersShown();
  const refusal = useDesk((desk) => desk.refusal);
  const chosen = useDesk((desk) => desk.path);
  return (
    <>
      {refusal !== null && <Refused refusal={refusal} />}
      {look === null && refusal === null && (
        <p className="quiet" role="status">
          {say('page.paper.drawing', {}, units)}
        </p>
      )}
      {look !== null && (
        <RadioGroup
          className="field"
          value={look.papers.some(({ path }) => path === chosen) ? chosen : look.path}
          onChange={(path) => changeDesk({ path })}
        >
          <Label>{say('page.paper.choose', {}, units)}</Label>
          <div className="paper-list">
            {look.papers.map((paper) => (
              <Radio key={paper.path} value={paper.path} className="paper-row">
                <span>{paperName(paper, units)}</span>
                <span className="quiet">{paperCount(paper, units)}</span>
              </Radio>
            ))}
          </div>
        </RadioGroup>
      )}
    </>
  );
}

/** Why a paper can't be drawn or made, and what to do. */
export function Refused({ refusal }: { readonly refusal: NonNullable<Desk['refusal']> }): ReactNode {
  const units = useUnits();
  const tell = useTell();
  const sentences = ((): readonly string[] => {
    switch (refusal.code) {
      case 'problems':
        return refusal.problems
          .slice(0, 3)
          .map((problem) => say('page.paper.problem', { what: fieldSentence(problem, tell) }, units));
      case 'stops':
        return [say('page.paper.barred.about', { names: refusal.names.join(', ') }, units)];
      case 'gone':
        return [say('page.paper.gone', {}, units)];
      case 'failed':
        return [say('page.paper.failed', { why: refusal.why }, units)];
    }
  })();
  return (
    <div role="alert" className="wrong">
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  );
}
