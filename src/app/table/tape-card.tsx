import type { ReactNode } from 'react';
import type { Ruler, UnitSystem } from '../../engine/units/index.ts';
import { say } from '../../engine/words/index.ts';
import type { LaidPiece } from './lay-pieces.ts';
import { lengthText } from './length-text.ts';
import { readTape, type TapeEnd } from './tape.ts';

interface TapeCardProps {
  readonly ends: readonly TapeEnd[];
  readonly laid: readonly LaidPiece[];
  readonly units: UnitSystem;
  readonly ruler: Ruler;
  readonly onAgain: () => void;
  readonly onAway: () => void;
}

/** What the tape says, and what to touch next. */
export function TapeCard({ ends, laid, units, ruler, onAgain, onAway }: TapeCardProps): ReactNode {
  const [from, to] = ends;
  const read = from === undefined || to === undefined ? null : readTape(laid, from, to);
  const length = (mm: number): string => lengthText(mm, units, ruler);
  return (
    <section className="t-card" aria-label={say('table.tape', {}, units)}>
      <output className="t-reading">
        {read === null ? (
          say(from === undefined ? 'table.tape.from' : 'table.tape.to', {}, units)
        ) : (
          <>
            <b className="t-figure">{say('table.tape.straight', { length: length(read.straight) }, units)}</b>
            {read.along === null ? null : (
              <p>{say('table.tape.along', { length: length(read.along) }, units)}</p>
            )}
          </>
        )}
      </output>
      <div className="t-card-choice">
        {read === null ? null : (
          <button type="button" className="t-quiet" onClick={onAgain}>
            {say('table.tape.again', {}, units)}
          </button>
        )}
        <button type="button" className="t-quiet" onClick={onAway}>
          {say('table.tape.off', {}, units)}
        </button>
      </div>
    </section>
  );
}
