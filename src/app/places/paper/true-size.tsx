import type { ReactNode } from 'react';
import { parseLength } from '../../../engine/units/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { LengthField } from '../../parts/length-field.tsx';
import { toast } from '../../parts/toast.tsx';
import { useOrderFile, useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { paperOfDraft, shownSide, sideOff, squareWith } from './edit-paper.ts';

/** From here on a measured side is worth a second look, mm; from 3 mm on the engine refuses it. */
const WORTH_A_LOOK = 1;

/** How to print at true size, how to see whether it was, and what to do where the printer errs a little. */
export function TrueSize(): ReactNode {
  const session = useSession();
  const units = useUnits();
  const square = useOrderFile((file) => file.paper?.printerMeasured);
  const tooFar = useProblemAt('paper.printerMeasured');
  const forget = (): void => {
    session.change({ key: 'page.did.paper-square', values: {} }, (file) => {
      delete file.paper?.printerMeasured;
    });
    toast(say('page.paper.true.forgotten', {}, units), {
      word: say('page.undo', {}, units),
      run: session.undo,
    });
  };
  return (
    <section className="part">
      <h3>{say('page.paper.true', {}, units)}</h3>
      <ol className="paper-steps">
        <li>{say('page.paper.true.print', {}, units)}</li>
        <li>{say('page.paper.true.measure', {}, units)}</li>
        <li>{say('page.paper.true.square', {}, units)}</li>
      </ol>
      <div className="paper-square">
        <Side side="across" />
        <Side side="down" />
      </div>
      {tooFar !== null && (
        <p className="wrong" role="alert">
          {tooFar}
        </p>
      )}
      {square !== undefined && (
        <>
          {tooFar === null && <Change across={square.across} down={square.down} />}
          <div>
            <Button look="quiet" onPress={forget}>
              {say('page.paper.true.forget', {}, units)}
            </Button>
          </div>
        </>
      )}
    </section>
  );
}

function Side({ side }: { readonly side: 'across' | 'down' }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const square = useOrderFile((file) => file.paper?.printerMeasured);
  const problem = useProblemAt(`paper.printerMeasured.${side}`);
  const off = sideOff(square?.[side]);
  const isDoubtful = off !== null && off > WORTH_A_LOOK;
  return (
    <LengthField
      label={say(`page.paper.true.${side}`, {}, units)}
      value={shownSide(square?.[side])}
      units="cm"
      byRule="10"
      problem={problem}
      doubt={isDoubtful ? say('page.paper.true.doubt', { off: Math.round(off * 10) / 10 }, units) : null}
      onDone={session.settle}
      onChange={(text) =>
        session.change(
          { key: 'page.did.paper-square', values: {} },
          (file) => {
            const paper = paperOfDraft(file);
            const measured = squareWith(paper.printerMeasured, side, text);
            if (measured === undefined) delete paper.printerMeasured;
            else paper.printerMeasured = measured;
          },
          { cause: `paper.printerMeasured.${side}` },
        )
      }
    />
  );
}

function Change({
  across,
  down,
}: {
  readonly across: string | number;
  readonly down: string | number;
}): ReactNode {
  const units = useUnits();
  const [wide, high] = [parseLength(across, 'cm'), parseLength(down, 'cm')];
  if (!wide.ok || !high.ok || wide.mm === 0 || high.mm === 0) return null;
  const percent = (mm: number): number => Math.round(1e5 / mm) / 10;
  return (
    <p role="status">
      {say('page.paper.true.now', { across: percent(wide.mm), down: percent(high.mm) }, units)}
    </p>
  );
}
