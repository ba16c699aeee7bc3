import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { countOf } from '../../../engine/order/index.ts';
import { say, type WordKey, type WordValues } from '../../../engine/words/index.ts';
import { download } from '../../device/download.ts';
import { Button } from '../../parts/button.tsx';
import { Confirm } from '../../parts/sheet.tsx';
import { UnderWay } from '../../parts/under-way.tsx';
import { useSessionState, useUnits } from '../../session/use-session.ts';
import { EVERYTHING, type MadePaper, type PaperKind, type PaperStep } from '../../work/paper-wish.ts';
import { useDesk } from './desk.ts';
import { Refused } from './paper-list.tsx';
import { useMaking } from './use-making.ts';
import { usePaperGrounds } from './use-paper-look.ts';

/** Makes one paper: says how many sheets it takes, asks where something must not be cut, tells how far it is. */
export function MakePaper({ paper, main }: { readonly paper: PaperKind; readonly main: boolean }): ReactNode {
  const units = useUnits();
  const { grounds, of } = usePaperGrounds();
  const { making, make, stop } = useMaking();
  const drawing = useDesk((desk) => desk.drawing);
  const [asking, setAsking] = useState(false);
  const whole = paper.path === EVERYTHING;
  const known = useBarred(whole ? 'party' : of);
  const refused = making.kind === 'refused' && making.refusal.code === 'stops' ? making.refusal.names : [];
  const barred = known.length > 0 ? known : refused;
  const pages = paper.path.endsWith('.pdf');
  const begin = (evenSo: boolean): void => make(grounds, { of, path: paper.path, evenSo });
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, units);

  if (making.kind === 'making') return <Under step={making.step} whole={whole} onStop={stop} />;
  return (
    <div className="stack">
      {barred.length > 0 && (
        <div className="paper-barred">
          <p>
            <strong>{told('page.paper.barred')}</strong>
          </p>
          <p>{told('page.paper.barred.about', { names: barred.join(', ') })}</p>
        </div>
      )}
      {pages && (
        <p className="quiet">
          {drawing
            ? told('page.paper.drawing')
            : paper.count === 1
              ? told('page.paper.make.count.one')
              : told('page.paper.make.count', { count: paper.count })}
        </p>
      )}
      <div>
        <Button
          look={main ? 'main' : 'plain'}
          onPress={() => (barred.length > 0 ? setAsking(true) : begin(false))}
        >
          {told(whole ? 'page.paper.all.make' : pages ? 'page.paper.make' : 'page.paper.make.zip')}
        </Button>
      </div>
      {making.kind === 'stopped' && <p role="status">{told('page.paper.stopped')}</p>}
      {making.kind === 'refused' && refused.length === 0 && <Refused refusal={making.refusal} />}
      {making.kind === 'made' && making.grounds.file === grounds.file && <Made paper={making.paper} />}
      <Confirm
        open={asking}
        title={told('page.paper.barred.ask')}
        action={told('page.paper.barred.even-so')}
        cancel={told('page.paper.barred.not')}
        onCancel={() => setAsking(false)}
        onAction={() => {
          setAsking(false);
          begin(true);
        }}
      >
        <p>{told('page.paper.barred.about', { names: barred.join(', ') })}</p>
      </Confirm>
    </div>
  );
}

/** The children whose dress must not be cut as it stands; those not yet looked at are found out by the worker. */
function useBarred(of: number | 'party'): readonly string[] {
  const children = useSessionState((state) => state.work.children);
  return useMemo(
    () =>
      children
        .filter((child, i) => (of === 'party' || i === of) && child.report !== null)
        .filter(({ report }) => countOf(report?.findings ?? [], 'stop') > 0)
        .map(({ name }) => name),
    [children, of],
  );
}

function Under({
  step,
  whole,
  onStop,
}: {
  readonly step: PaperStep | null;
  readonly whole: boolean;
  readonly onStop: () => void;
}): ReactNode {
  const units = useUnits();
  const words =
    step === null
      ? say('page.paper.making.begin', {}, units)
      : say(whole ? 'page.paper.all.making' : 'page.paper.making', { ...step }, units);
  return (
    <UnderWay
      words={words}
      far={step === null ? null : { value: step.done, max: step.total }}
      stop={say('page.paper.stop', {}, units)}
      onStop={onStop}
    />
  );
}

function Made({ paper }: { readonly paper: MadePaper }): ReactNode {
  const units = useUnits();
  const square = useSessionState(({ file }) => file.paper?.printerMeasured);
  const { fileName, content, pages, missing } = paper;
  const isPdf = content.type === 'application/pdf';
  const address = useMemo(() => URL.createObjectURL(content), [content]);
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  return (
    <div className="paper-made" role="status">
      <p>
        {pages === 0
          ? say('page.paper.made', { file: fileName }, units)
          : say('page.paper.made.pages', { file: fileName, count: pages }, units)}
      </p>
      {pages > 0 && <p>{say('page.paper.made.remember', {}, units)}</p>}
      {pages > 0 && square !== undefined && <p>{say('page.paper.made.printer', {}, units)}</p>}
      {missing.map(({ text, letters }) => (
        <p key={text} className="wrong">
          {say('page.paper.unprintable', { text, letters: letters.join(' ') }, units)}
        </p>
      ))}
      <div className="row row-wrap">
        {isPdf && (
          <a className="button button-plain" href={address} target="_blank" rel="noreferrer">
            {say('page.paper.made.open', {}, units)}
          </a>
        )}
        <Button look="quiet" onPress={() => download(fileName, content, content.type)}>
          {say('page.paper.made.again', {}, units)}
        </Button>
      </div>
    </div>
  );
}
