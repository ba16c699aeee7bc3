import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { countOf } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { useSession, useSessionState } from '../../session/use-session.ts';
import type { ChildWork } from '../../session/work.ts';
import { placeAddress } from '../address.ts';

/** Every child of the order with what was found about her dress. */
export function Everyone(): ReactNode {
  const session = useSession();
  const children = useSessionState(({ work }) => work.children);
  const shown = useSessionState(({ child }) => child);
  if (children.length < 2) return null;
  return (
    <details className="part">
      <summary>{say('page.fit.everyone', {}, 'in')}</summary>
      <ul className="everyone">
        {children.map((child, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a child of an order is known by its place in it.
          <li key={index}>
            <Link
              href={placeAddress(session.id, index, 'fit')}
              className="everyone-one"
              aria-current={index === shown ? 'true' : undefined}
            >
              <span>{child.name}</span>
              <span className="small">{standsOf(child)}</span>
            </Link>
          </li>
        ))}
      </ul>
    </details>
  );
}

function standsOf({ report, problems, pending }: ChildWork): string {
  if (problems.length > 0) return say('page.fit.everyone.cannot', {}, 'in');
  if (report === null)
    return say(pending ? 'page.fit.everyone.waiting' : 'page.fit.everyone.cannot', {}, 'in');
  const counts = (['stop', 'warn', 'note'] as const).flatMap((level) => {
    const count = countOf(report.findings, level);
    return count === 0 ? [] : [say(`page.fit.everyone.${level}`, { count }, 'in')];
  });
  return counts.length === 0 ? say('page.fit.everyone.fine', {}, 'in') : counts.join(', ');
}
