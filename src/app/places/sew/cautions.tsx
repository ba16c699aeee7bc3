import type { ReactNode } from 'react';
import { cautionsOf } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { useTell, useUnits } from '../../session/use-session.ts';
import type { ChildWork } from '../../session/work.ts';

/** What can hurt the child, each with its limit; always in sight, never in the way. */
export function Cautions({ work }: { readonly work: ChildWork }): ReactNode {
  const units = useUnits();
  const tell = useTell();
  const { report } = work;
  if (report === null) return null;
  return (
    <section className="level">
      <h3>{say('page.sew.cautions', {}, units)}</h3>
      <ul className="cautions">
        {cautionsOf(report.findings, report.dress.body).map(({ level, say: what, todo }) => {
          const said = tell(what);
          return (
            <li key={said} className={`caution caution-${level}`}>
              {said} {todo === null ? null : <span className="quiet">{tell(todo)}</span>}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
