import { lazy, type ReactNode, Suspense } from 'react';
import { say } from '../../engine/words/index.ts';
import type { Place } from '../places/registry.ts';
import { fieldSentence, useChild, useSessionState, useTell } from '../session/use-session.ts';

const Drawing = lazy(async () => ({ default: (await import('./drawing.tsx')).Drawing }));

/** What lies on the table beside the panel, and a word above it when the drawing is not of the present numbers. */
export function TableSide({ table: Table }: { readonly table: Exclude<Place['table'], 'none'> }): ReactNode {
  const { work } = useChild();
  const party = useSessionState((state) => state.work.problems);
  const tell = useTell();
  const problem = work.problems[0] ?? (work.old || work.drawing === null ? party[0] : undefined);
  const what = problem === undefined ? null : fieldSentence(problem, tell);
  return (
    <div className="table-side">
      {what !== null && (
        <p className="old-note" role="status">
          {say(work.drawing === null ? 'page.no-drawing' : 'page.old', { what }, 'in')}
        </p>
      )}
      <div className={work.old ? 'table-room table-old' : 'table-room'}>
        <Suspense fallback={null}>{Table === 'drawing' ? <Drawing /> : <Table />}</Suspense>
      </div>
    </div>
  );
}
