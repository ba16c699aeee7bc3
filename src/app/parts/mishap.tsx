import type { ReactNode } from 'react';
import { ErrorBoundary } from 'react-error-boundary';
import { say } from '../../engine/words/index.ts';
import { Button } from './button.tsx';

/**
 * Stands round a part of the page: when a mistake of the program breaks that part, all else stays, and she reads that
 * nothing is lost and what to do. `again`: while these are the same, the part stays away until she asks for it.
 * `also`: further ways out, given what shows the part again.
 */
export function Mishap({
  children,
  again = [],
  also,
}: {
  readonly children: ReactNode;
  readonly again?: readonly unknown[];
  readonly also?: (again: () => void) => ReactNode;
}): ReactNode {
  return (
    <ErrorBoundary
      resetKeys={[...again]}
      onError={(error) => console.error(error)}
      fallbackRender={({ error, resetErrorBoundary }) => (
        <section className="mishap" role="alert">
          <h2>{say('page.mishap', {}, 'in')}</h2>
          <p>{say('page.mishap.about', {}, 'in')}</p>
          <div className="row">
            <Button look="main" onPress={resetErrorBoundary}>
              {say('page.mishap.again', {}, 'in')}
            </Button>
            {also?.(resetErrorBoundary)}
          </div>
          <p className="quiet small">{error instanceof Error ? error.message : String(error)}</p>
        </section>
      )}
    >
      {children}
    </ErrorBoundary>
  );
}
