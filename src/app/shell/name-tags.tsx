import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { countOf } from '../../engine/order/index.ts';
import { say } from '../../engine/words/index.ts';
import { placeAddress } from '../places/address.ts';
import { useSessionState } from '../session/use-session.ts';
import type { ChildWork } from '../session/work.ts';

/** The children as name tags: she changes child without leaving the place, and sees at each how it fits. */
export function NameTags({ order, place }: { readonly order: string; readonly place: string }): ReactNode {
  const children = useSessionState(({ work }) => work.children);
  const shown = useSessionState(({ child }) => child);
  return (
    <nav className="tags" aria-label={say('page.children', {}, 'in')}>
      {children.map((child, index) => (
        <Link
          // biome-ignore lint/suspicious/noArrayIndexKey: a child of an order is known by its place in it.
          key={index}
          href={placeAddress(order, index, place)}
          className={index === shown ? 'tag tag-shown' : 'tag'}
          aria-current={index === shown ? 'true' : undefined}
        >
          <span className="tag-name">{child.name}</span>
          <HowItFits child={child} />
        </Link>
      ))}
    </nav>
  );
}

/** A small count with a shape of its own: what does not fit, or what to look at, or that all is well. */
function HowItFits({ child }: { readonly child: ChildWork }): ReactNode {
  const stand = standOf(child);
  const told = say(`page.fits.${stand.kind}`, { count: stand.count }, 'in');
  return (
    <span className={`count count-${stand.kind}`} title={told}>
      <svg className="icon-small" viewBox="0 0 12 12" aria-hidden="true">
        <path d={SHAPES[stand.kind]} />
      </svg>
      {stand.count > 0 && <span aria-hidden="true">{stand.count}</span>}
      <span className="unseen">{told}</span>
    </span>
  );
}

type Stand = 'stop' | 'warn' | 'fine' | 'cannot' | 'waiting';

const SHAPES: Readonly<Record<Stand, string>> = {
  stop: 'M2 2l8 8M10 2l-8 8',
  cannot: 'M2 2l8 8M10 2l-8 8',
  warn: 'M6 1v6M6 10v1',
  fine: 'M1 6l4 4 6-8',
  waiting: 'M2 6h.1M6 6h.1M10 6h.1',
};

function standOf({ report, problems, pending }: ChildWork): { readonly kind: Stand; readonly count: number } {
  if (problems.length > 0) return { kind: 'cannot', count: problems.length };
  if (report === null) return { kind: pending ? 'waiting' : 'cannot', count: 0 };
  const stops = countOf(report.findings, 'stop');
  if (stops > 0) return { kind: 'stop', count: stops };
  const looks = countOf(report.findings, 'warn');
  return looks > 0 ? { kind: 'warn', count: looks } : { kind: 'fine', count: 0 };
}
