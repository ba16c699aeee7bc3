import { type ReactNode, useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { type Saying, say } from '../../engine/words/index.ts';
import { Button } from '../parts/button.tsx';
import { useOrderFile, useSession, useSessionState, useTell } from '../session/use-session.ts';

/** The way back to the book, the order's name, undo and redo by name, and quietly how it stands with saving. */
export function TopBar(): ReactNode {
  const title = useOrderFile((file) => file.title);
  const name = useRef<HTMLHeadingElement>(null);
  // What she pressed to come here is gone: the keyboard and the screen reader go on from the order's name.
  useEffect(() => {
    if (document.activeElement === document.body) name.current?.focus({ preventScroll: true });
  }, []);
  return (
    <header className="top-bar">
      <Link href="/" className="top-book">
        <svg className="icon" viewBox="0 0 24 24" aria-hidden="true">
          <path d="M15 4 7 12l8 8" />
        </svg>
        <span>{say('page.to-book', {}, 'in')}</span>
      </Link>
      <h1 ref={name} tabIndex={-1} className="top-title">
        {title}
      </h1>
      <Kept />
      <Link href="/guide" className="button button-quiet" aria-label={say('page.guide', {}, 'in')}>
        <svg className="icon" viewBox="0 0 24 24" aria-hidden="true">
          <path d="M12 6c-2-1.6-5-2-9-2v14c4 0 7 .4 9 2 2-1.6 5-2 9-2V4c-4 0-7 .4-9 2zM12 6v14" />
        </svg>
        <span className="wide-only">{say('page.guide', {}, 'in')}</span>
      </Link>
      <UndoRedo />
    </header>
  );
}

function UndoRedo(): ReactNode {
  const session = useSession();
  const { steps, position } = useSessionState(({ history }) => history);
  return (
    <div className="row">
      <StepButton
        word="page.undo"
        step={steps[position - 1]}
        onPress={session.undo}
        icon="M8 5 4 9l4 4M4 9h10a6 6 0 0 1 0 12h-3"
      />
      <StepButton
        word="page.redo"
        step={steps[position]}
        onPress={session.redo}
        icon="m16 5 4 4-4 4M20 9H10a6 6 0 0 0 0 12h3"
      />
    </div>
  );
}

/** Goes over one step of the history; it is named by what was done there. */
function StepButton({
  word,
  step,
  icon,
  onPress,
}: {
  readonly word: 'page.undo' | 'page.redo';
  readonly step: { readonly label: Saying } | undefined;
  readonly icon: string;
  readonly onPress: () => void;
}): ReactNode {
  const tell = useTell();
  const text = say(word, {}, 'in');
  const what = step === undefined ? null : told(tell, step.label);
  return (
    <Button
      look="quiet"
      name={what === null ? text : say(`${word}.what`, { what }, 'in')}
      disabled={step === undefined}
      onPress={onPress}
    >
      <svg className="icon" viewBox="0 0 24 24" aria-hidden="true">
        <path d={icon} />
      </svg>
      <span className="wide-only">{text}</span>
    </Button>
  );
}

function Kept(): ReactNode {
  const session = useSession();
  const keeping = useSessionState((state) => state.keeping);
  const tell = useTell();
  if (keeping.kind === 'failed') {
    return (
      <div className="kept kept-failed" role="alert">
        <span>{tell(keeping.problem.say)}</span>
        <Button look="quiet" onPress={() => void session.saveNow()}>
          {say('page.keep-again', {}, 'in')}
        </Button>
      </div>
    );
  }
  return (
    <span className="kept quiet" data-kept={keeping.kind}>
      {say(keeping.kind === 'saving' ? 'page.keeping' : 'page.kept', {}, 'in')}
    </span>
  );
}

/** Null where an older program kept the step under words that are no longer known: it can be undone all the same. */
function told(tell: (saying: Saying) => string, label: Saying): string | null {
  try {
    return tell(label);
  } catch {
    return null;
  }
}
