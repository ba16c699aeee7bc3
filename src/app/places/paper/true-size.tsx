import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { toastDone } from '../../parts/toast.tsx';
import { useOrderFile, useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { correction, paperOfDraft, type Side, sideOf, sideOff, squareWith } from './edit-paper.ts';

/** From here on a measured side is worth a second look, mm; from 3 mm on the engine refuses it. */
const WORTH_A_LOOK = 1;

/** How to print at true size, how to see whether it was, and what to do where the printer errs a little. */
export function TrueSize(): ReactNode {
  const session = useSession();
  const units = useUnits();
  const square = useOrderFile((file) => file.paper?.printerMeasured);
  const tooFar = useProblemAt('paper.printerMeasured');
  const forget = (): void => {
    const takeBack = session.change({ key: 'page.did.paper-square', values: {} }, (file) => {
      delete file.paper?.printerMeasured;
    });
    toastDone(say('page.paper.true.forgotten', {}, units), takeBack);
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
        <SquareSide side="across" />
        <SquareSide side="down" />
      </div>
      {tooFar !== null && (
        <p className="wrong" role="alert">
          {tooFar}
        </p>
      )}
      {square !== undefined && (
        <>
          {tooFar === null && <Change />}
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

function SquareSide({ side }: { readonly side: Side }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const square = useOrderFile((file) => file.paper?.printerMeasured);
  const problem = useProblemAt(`paper.printerMeasured.${side}`);
  return (
    <NumberField
      label={say(`page.paper.true.${side}`, {}, units)}
      value={sideOf(square, side) ?? undefined}
      unit="mm"
      byRule="100"
      problem={problem}
      notANumber={say('page.paper.true.number', {}, units)}
      onDone={session.settle}
      onChange={(typed) =>
        session.change(
          { key: 'page.did.paper-square', values: {} },
          (file) => {
            const paper = paperOfDraft(file);
            const measured = squareWith(paper.printerMeasured, side, typed);
            if (measured === undefined) delete paper.printerMeasured;
            else paper.printerMeasured = measured;
          },
          { cause: `paper.printerMeasured.${side}` },
        )
      }
    />
  );
}

/** What becomes of the next print, and whether the square should be measured again. */
function Change(): ReactNode {
  const units = useUnits();
  const square = useOrderFile((file) => file.paper?.printerMeasured);
  const [across, down] = [sideOf(square, 'across'), sideOf(square, 'down')];
  const off = Math.max(sideOff(across), sideOff(down));
  return (
    <div className="stack" role="status">
      {off > WORTH_A_LOOK && <p className="doubt">{say('page.paper.true.doubt', { off }, units)}</p>}
      <p>{say('page.paper.true.now', { across: correction(across), down: correction(down) }, units)}</p>
    </div>
  );
}
