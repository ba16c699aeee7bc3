import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';
import { useUnits } from '../../session/use-session.ts';
import type { LayAnswer } from '../../work/lay-wish.ts';
import { PageMarks } from '../paper/page-drawing.tsx';

/** What to buy of each cloth, and the pages of the lay as they are printed. */
export function LaidCloths({ answer }: { readonly answer: Extract<LayAnswer, { ok: true }> }): ReactNode {
  const units = useUnits();
  return (
    <>
      <section className="part" role="status">
        {answer.cloths.map(({ cloth, child, buy, length, percent, saves }) => (
          <div key={`${cloth} ${child}`}>
            <p>
              <strong>
                {say('page.cloth.buy', { cloth: child === null ? cloth : `${cloth}, ${child}`, buy }, units)}
              </strong>
            </p>
            <p className="quiet">
              {say('page.cloth.takes', { length: { mm: Math.round(length) }, percent }, units)}{' '}
              {saves !== null && say('page.cloth.saves', { saves }, units)}
            </p>
          </div>
        ))}
        {answer.refused.map((sentence) => (
          <p key={sentence} className="wrong">
            {sentence}
          </p>
        ))}
      </section>
      <p className="quiet">{say('page.cloth.not-kept', {}, units)}</p>
      {answer.pages.map((page) => (
        <svg
          key={page.name}
          viewBox={`0 0 ${page.width} ${page.height}`}
          className="paper-white"
          role="img"
          aria-label={page.name}
        >
          <PageMarks page={page} />
        </svg>
      ))}
    </>
  );
}
