import { type ReactNode, useEffect, useMemo } from 'react';
import { MEASURING_SHEET } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { today } from '../../device/today.ts';
import { Button } from '../../parts/button.tsx';
import { UnderWay } from '../../parts/under-way.tsx';
import { useChild, useOrderFile, useUnits } from '../../session/use-session.ts';
import type { MadePaper } from '../../work/paper-wish.ts';
import { Refused } from '../paper/paper-list.tsx';
import { useMaking } from '../paper/use-making.ts';

/** Makes the measuring sheet of the child that is shown, also before there is a dress that can be drawn. */
export function SheetToPrint(): ReactNode {
  const units = useUnits();
  const { index } = useChild();
  const file = useOrderFile((order) => order);
  const { making, make, stop } = useMaking();
  if (making.kind === 'making') {
    const words = say('page.paper.making.begin', {}, units);
    return <UnderWay words={words} far={null} stop={say('page.paper.stop', {}, units)} onStop={stop} />;
  }
  return (
    <div className="stack">
      <div>
        <Button
          look="plain"
          onPress={() => make({ file, today: today() }, { of: index, path: MEASURING_SHEET, evenSo: false })}
        >
          {say('page.measures.sheet', {}, units)}
        </Button>
      </div>
      <p className="small quiet">{say('page.measures.sheet.about', {}, units)}</p>
      {making.kind === 'refused' && <Refused refusal={making.refusal} />}
      {making.kind === 'made' && making.grounds.file === file && <Made paper={making.paper} />}
    </div>
  );
}

function Made({ paper: { fileName, content } }: { readonly paper: MadePaper }): ReactNode {
  const units = useUnits();
  const address = useMemo(() => URL.createObjectURL(content), [content]);
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  return (
    <p role="status">
      {say('page.measures.sheet.made', { file: fileName }, units)}{' '}
      <a href={address} target="_blank" rel="noreferrer">
        {say('page.measures.sheet.open', {}, units)}
      </a>
    </p>
  );
}
