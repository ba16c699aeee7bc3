import { type ReactNode, useState } from 'react';
import { say } from '../../../engine/words/index.ts';
import { today } from '../../device/today.ts';
import { MoreLink } from '../../parts/more-link.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { useChild, useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { useDoubt } from '../use-doubt.ts';
import { TapeGuide } from './tape-guide.tsx';

/** The weight with its unit, as part of the present measuring. A number alone is meant in kilos, or in pounds by inches. */
export function WeightField(): ReactNode {
  const session = useSession();
  const { index, file, work } = useChild();
  const units = useUnits();
  const [howShown, setHowShown] = useState(false);
  const problem = useProblemAt(`children[${index}].weight`);
  const doubt = useDoubt(index, 'weight');
  const word = say('measure.weight', {}, units);
  const write = (text: string): void => {
    session.change(
      { key: 'page.did.weight', values: { child: work.name } },
      ({ children }) => {
        const draft = children[index];
        if (draft === undefined) return;
        if (text.trim() === '') delete draft.weight;
        else {
          draft.weight = withUnit(text);
          draft.measured ??= today();
        }
      },
      { cause: `children[${index}].weight` },
    );
  };
  const withUnit = (text: string): string =>
    /^\s*[\d.,]+\s*$/.test(text)
      ? say(
          'page.measures.weight.unit',
          { number: text.trim(), unit: { word: `measuring.unit.${units === 'in' ? 'lb' : 'kg'}` } },
          units,
        )
      : text;
  return (
    <div className={howShown ? 'measure measure-open' : 'measure'}>
      <TextField
        label={word}
        value={file.weight}
        problem={problem}
        doubt={doubt}
        about={say('page.measures.weight.about', {}, units)}
        onChange={write}
        onDone={session.settle}
        aside={
          <MoreLink
            word={say('page.measures.how', {}, units)}
            name={say('page.measures.how.what', { measure: word }, units)}
            open={howShown}
            onChange={setHowShown}
          />
        }
      />
      {howShown && <TapeGuide id="weight" />}
    </div>
  );
}
