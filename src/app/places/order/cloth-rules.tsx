import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { LengthField } from '../../parts/length-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Switch } from '../../parts/switch.tsx';
import { useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import type { OneCloth } from './change-cloth.ts';
import { ClothAtHand } from './cloth-at-hand.tsx';
import { ClothFlaws } from './cloth-flaws.tsx';
import { ClothGrain } from './cloth-grain.tsx';

const SOLD_BY = ['1/8 yd', '1/4 yd', '10 cm', '50 cm'] as const;
const WAYS = ['one-way', 'child-one-way', 'both-ways'] as const;
const FOLDINGS = ['single', 'lengthwise', 'crosswise'] as const;

/** All that decides how a cloth is laid; closed until it is wanted, since the rules do for most cloths. */
export function ClothRules(one: OneCloth): ReactNode {
  const units = useUnits();
  return (
    <details>
      <summary>{say('page.rules', {}, units)}</summary>
      <div className="stack">
        <Laid {...one} />
        <Repeat {...one} />
        <ClothGrain {...one} />
        <ClothFlaws {...one} />
        <ClothAtHand {...one} />
      </div>
    </details>
  );
}

function Laid({ cloth, path, change }: OneCloth): ReactNode {
  const session = useSession();
  const units = useUnits();
  const gapProblem = useProblemAt(`${path}.gap`);
  const extraProblem = useProblemAt(`${path}.extra`);
  const word = (field: 'soldBy' | 'way' | 'folding' | 'gap' | 'extra') =>
    say(`page.rules.${field}`, {}, units);
  const about = (field: 'soldBy' | 'way' | 'folding' | 'gap' | 'extra') =>
    say(`page.rules.${field}.about`, {}, units);
  const byRule = { id: 'rule', text: say('page.rules.by-rule', {}, units) } as const;
  return (
    <div className="fields">
      <Choice
        label={word('way')}
        about={about('way')}
        value={cloth.way ?? 'rule'}
        options={[byRule, ...WAYS.map((id) => ({ id, text: say(`page.rules.way.${id}`, {}, units) }))]}
        onChange={(way) =>
          change('way', word('way'), (draft) => {
            if (way === 'rule') delete draft.way;
            else draft.way = way;
          })
        }
      />
      <Choice
        label={word('folding')}
        about={about('folding')}
        value={cloth.folding ?? 'single'}
        options={FOLDINGS.map((id) => ({ id, text: say(`page.rules.folding.${id}`, {}, units) }))}
        onChange={(folding) =>
          change('folding', word('folding'), (draft) => {
            draft.folding = folding;
            if (folding !== 'lengthwise') delete draft.selvedgesToMiddle;
          })
        }
      />
      {cloth.folding === 'lengthwise' && <Flag name="selvedgesToMiddle" {...{ cloth, path, change }} />}
      <Flag name="facesAlike" {...{ cloth, path, change }} />
      <Flag name="oneLength" {...{ cloth, path, change }} />
      <Choice
        label={word('soldBy')}
        about={about('soldBy')}
        value={cloth.soldBy ?? 'rule'}
        options={[byRule, ...SOLD_BY.map((id) => ({ id, text: say(`page.rules.soldBy.${id}`, {}, units) }))]}
        onChange={(soldBy) =>
          change('soldBy', word('soldBy'), (draft) => {
            if (soldBy === 'rule') delete draft.soldBy;
            else draft.soldBy = soldBy;
          })
        }
      />
      <LengthField
        label={word('gap')}
        about={about('gap')}
        value={cloth.gap}
        units={units}
        problem={gapProblem}
        onDone={session.settle}
        onChange={(text) =>
          change('gap', word('gap'), (draft) => {
            if (text === undefined) delete draft.gap;
            else draft.gap = text;
          })
        }
      />
      <NumberField
        label={word('extra')}
        about={about('extra')}
        value={cloth.extra}
        byRule="0"
        problem={extraProblem}
        notANumber={say('page.order.not-a-number', {}, units)}
        onDone={session.settle}
        onChange={(value) =>
          change('extra', word('extra'), (draft) => {
            if (value === undefined) delete draft.extra;
            else draft.extra = value;
          })
        }
      />
    </div>
  );
}

function Flag({
  name,
  cloth,
  change,
}: OneCloth & { readonly name: 'facesAlike' | 'oneLength' | 'selvedgesToMiddle' }): ReactNode {
  const units = useUnits();
  const label = say(`page.rules.${name}`, {}, units);
  return (
    <div>
      <Switch
        label={label}
        value={cloth[name] ?? false}
        onChange={(isOn) =>
          change(name, label, (draft) => {
            if (isOn) draft[name] = true;
            else delete draft[name];
          })
        }
      />
      {name !== 'selvedgesToMiddle' && (
        <p className="quiet small">{say(`page.rules.${name}.about`, {}, units)}</p>
      )}
    </div>
  );
}

/** Stripes and checks. */
function Repeat({ cloth, path, change }: OneCloth): ReactNode {
  const session = useSession();
  const units = useUnits();
  const problems = {
    along: useProblemAt(`${path}.repeat.along`),
    across: useProblemAt(`${path}.repeat.across`),
  };
  return (
    <div className="fields">
      {(['along', 'across'] as const).map((way) => (
        <LengthField
          key={way}
          label={say(`page.rules.${way}`, {}, units)}
          about={say(`page.rules.${way}.about`, {}, units)}
          value={cloth.repeat?.[way]}
          units={units}
          problem={problems[way]}
          onDone={session.settle}
          onChange={(text) =>
            change(`repeat.${way}`, say('page.rules.repeat', {}, units), (draft) => {
              const { [way]: _, ...rest } = draft.repeat ?? {};
              const repeat = text === undefined ? rest : { ...rest, [way]: text };
              if (Object.keys(repeat).length === 0) delete draft.repeat;
              else draft.repeat = repeat;
            })
          }
        />
      ))}
    </div>
  );
}
