import type { ReactNode } from 'react';
import type { DraftPart } from '../../engine/construct/index.ts';
import { tell } from '../../engine/design/index.ts';
import type { UnitSystem } from '../../engine/units/index.ts';
import { say } from '../../engine/words/index.ts';
import { type PlayMove, type PlayPlace, played } from './drafting-play.ts';

interface PlayBarProps {
  readonly draft: readonly DraftPart[];
  readonly at: PlayPlace;
  readonly onPlay: (at: PlayPlace) => void;
  readonly units: UnitSystem;
}

/** The sentence of the step that was drawn last, and the way on. */
export function PlayBar({ draft, at, onPlay, units }: PlayBarProps): ReactNode {
  const part = draft[at.part];
  if (part === undefined) return <section className="t-card">{say('table.play.none', {}, units)}</section>;
  const step = part.steps[at.step - 1];
  const empty = part.before.length > 0 ? 'table.play.before' : 'table.play.paper';
  const go = (move: PlayMove) => () => onPlay(played(draft, at, move));
  const last = at.part === draft.length - 1 && at.step === part.steps.length;
  return (
    <section className="t-card t-play" aria-label={say('table.play.name', {}, units)}>
      <output className="t-reading" aria-live="polite">
        <span className="t-count">
          {say('table.play.count', { step: at.step, steps: part.steps.length }, units)}
        </span>{' '}
        {step === undefined ? say(empty, {}, units) : tell(step.saying, units)}
      </output>
      <div className="t-card-choice">
        <label>
          <span>{say('table.play.part', {}, units)}</span>
          <select
            value={at.part}
            onChange={({ target: { value } }) => onPlay({ part: Number(value), step: 0 })}
          >
            {draft.map((one, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: parts may bear one title; they keep their order.
              <option key={i} value={i}>
                {`${i + 1}. ${tell(one.title, units)}`}
              </option>
            ))}
          </select>
        </label>
        <button type="button" onClick={go('back')} disabled={at.part === 0 && at.step === 0}>
          {say('table.play.back', {}, units)}
        </button>
        <button type="button" onClick={go('all')}>
          {say('table.play.all', {}, units)}
        </button>
        <button type="button" className="t-main" onClick={go('on')} disabled={last}>
          {say('table.play.on', {}, units)}
        </button>
      </div>
    </section>
  );
}
