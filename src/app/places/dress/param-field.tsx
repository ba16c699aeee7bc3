import { type ReactNode, useState } from 'react';
import type { StepContext } from '../../../engine/design/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { LengthField } from '../../parts/length-field.tsx';
import { MoreLink } from '../../parts/more-link.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { shownLength } from '../../parts/shown-length.ts';
import { TextField } from '../../parts/text-field.tsx';
import { useTell } from '../../session/use-session.ts';
import type { Scope } from '../scope.ts';
import { setParam } from './change-dress.ts';
import { type DressDesk, didSaying, useDesk, useSentenceAt } from './dress-desk.ts';
import { type Given, givenAt, keyText, type ListedStep, sameStep } from './dress-list.ts';
import { NamedPlaceField } from './named-place-field.tsx';
import { rangeSentence, ruleValue, type StepParam, valueText } from './step-facts.ts';

interface ParamFieldProps {
  readonly listed: ListedStep;
  readonly scope: Scope;
  readonly name: string;
  readonly param: StepParam;
  /** Null until it is known what the step finds done. */
  readonly context: StepContext | null;
}

/** Writes one number of a step for whom she changes it. */
export const writeParam = (
  desk: DressDesk,
  scope: Scope,
  listed: ListedStep,
  name: string,
  value: Given | undefined,
  joined = false,
): void => {
  desk.session.change(
    didSaying(desk, scope, 'step-param', listed, { what: { word: `${listed.step}.${name}` } }),
    (file) => setParam(file, scope, listed, name, value),
    joined ? { cause: `${scope} ${keyText(listed)} ${name}` } : {},
  );
};

/** One parameter as its declaration says: the field, where its value comes from, and the way back. */
export function ParamField(props: ParamFieldProps): ReactNode {
  const { listed, scope, name, param, context } = props;
  const desk = useDesk();
  const { units } = desk;
  const tell = useTell();
  const [ruleShown, setRuleShown] = useState(false);
  const at = givenAt(listed, scope, name);
  const problem = useSentenceAt(at.path);
  const label = tell({ key: `${listed.step}.${name}`, values: {} });
  const shown = (value: Given | undefined): string =>
    value === undefined
      ? ''
      : param.kind === 'length' && typeof value !== 'boolean'
        ? shownLength(value, units)
        : valueText(listed.step, name, param, value, units);
  const byRule = context === null ? undefined : ruleValue(param, context);
  const ruleText = byRule === undefined ? '' : valueText(listed.step, name, param, byRule, units);
  const under = at.under.from === 'rule' ? ruleText : shown(at.under.value);
  const range = context === null ? null : rangeSentence(param, context, units);
  const aside = (
    <MoreLink
      word={say('page.dress.rule', {}, units)}
      name={say('page.dress.rule.what', { what: label }, units)}
      open={ruleShown}
      onChange={setRuleShown}
    />
  );
  return (
    <div className="param" data-param={name}>
      <OneField
        {...props}
        label={label}
        own={at.own}
        value={at.own ?? at.under.value ?? byRule}
        under={under}
        problem={problem}
        aside={aside}
      />
      {ruleShown && (
        <p className="small quiet">
          {at.under.from !== 'rule' &&
            ruleText !== '' &&
            `${say('page.dress.by-rule', { value: ruleText }, units)}. `}
          {range !== null && `${range} `}
          {say('page.dress.rule.source', { source: param.source }, units)}
        </p>
      )}
      <WhereFrom {...props} label={label} under={under} shown={shown} />
    </div>
  );
}

interface OneFieldProps extends ParamFieldProps {
  readonly label: string;
  readonly own: Given | undefined;
  /** What holds now, wherever it comes from; undefined while that is not known. */
  readonly value: Given | undefined;
  readonly under: string;
  readonly problem: string | null;
  readonly aside: ReactNode;
}

function OneField(props: OneFieldProps): ReactNode {
  const { listed, scope, name, param, label, own, value, under, problem, aside } = props;
  const desk = useDesk();
  const { units, session } = desk;
  const write = (given: Given | undefined): void => writeParam(desk, scope, listed, name, given);
  const type = (given: Given | undefined): void => writeParam(desk, scope, listed, name, given, true);
  switch (param.kind) {
    case 'length':
      return (
        <LengthField
          label={label}
          value={typeof own === 'boolean' ? undefined : own}
          units={units}
          byRule={under}
          problem={problem}
          aside={aside}
          onChange={type}
          onDone={session.settle}
        />
      );
    case 'ratio':
    case 'count':
      return (
        <NumberField
          label={label}
          value={own === undefined || Number.isNaN(Number(own)) ? undefined : Number(own)}
          byRule={under}
          notANumber={say('page.order.not-a-number', {}, units)}
          problem={problem}
          aside={aside}
          onChange={type}
          onDone={session.settle}
        />
      );
    case 'choice':
      return (
        <Choice
          label={label}
          value={String(value ?? '')}
          options={param.choices.map((id) => ({ id, text: valueText(listed.step, name, param, id, units) }))}
          problem={problem}
          onChange={write}
        />
      );
    case 'flag':
      return (
        <Choice
          label={label}
          value={value === undefined ? '' : value === true ? 'yes' : 'no'}
          options={(['yes', 'no'] as const).map((id) => ({ id, text: say(`page.dress.${id}`, {}, units) }))}
          problem={problem}
          onChange={(id) => write(id === 'yes')}
        />
      );
    case 'text':
      return param.names === undefined ? (
        <TextField
          label={label}
          value={String(own ?? value ?? '')}
          problem={problem}
          needed={say('page.dress.needed', {}, units)}
          aside={aside}
          onChange={type}
          onDone={session.settle}
        />
      ) : (
        <NamedPlaceField {...props} names={param.names} value={String(value ?? '')} onChange={write} />
      );
  }
}

/** Where the value comes from, and the way back to what lies below it; what this child has of its own. */
function WhereFrom({
  listed,
  scope,
  name,
  param: { kind },
  label,
  under,
  shown,
}: ParamFieldProps & {
  readonly label: string;
  readonly under: string;
  readonly shown: (value: Given | undefined) => string;
}): ReactNode {
  const desk = useDesk();
  const { units, libraryName, childName, child } = desk;
  const at = givenAt(listed, scope, name);
  const { from } = at.under;
  const dress = libraryName;
  const below =
    from === 'library'
      ? say('page.dress.by-library', { dress, value: under }, units)
      : from === 'order'
        ? say('page.dress.by-order', { value: under }, units)
        : under === '' || at.own === undefined
          ? say('page.dress.by-rule.none', {}, units)
          : say('page.dress.by-rule', { value: under }, units);
  const way = from === 'library' ? 'to-library' : from === 'order' ? 'to-order' : 'to-rule';
  // The field itself shows in italics what the rule gives.
  const isSeen = at.own === undefined && from === 'rule' && kind !== 'choice' && kind !== 'flag';
  const ofChild = scope === 'party' ? ownOfChild(desk, listed, name) : undefined;
  return (
    <>
      {!isSeen && (
        <p className="param-from small quiet">
          {scope !== 'party' && at.own !== undefined && (
            <span className="mark">{say('page.dress.step.only', { child: childName }, units)}</span>
          )}
          <span>{below}</span>
          {at.own !== undefined && (
            <button
              type="button"
              className="link small"
              aria-label={say(`page.dress.${way}.what`, { what: label, dress }, units)}
              onClick={() => writeParam(desk, scope, listed, name, undefined)}
            >
              {say(`page.dress.${way}`, {}, units)}
            </button>
          )}
        </p>
      )}
      {ofChild !== undefined && (
        <p className="param-from small">
          <span className="mark">
            {say('page.dress.own-of', { child: childName, value: shown(ofChild) }, units)}
          </span>
          <button
            type="button"
            className="link small"
            aria-label={say('page.dress.to-order.what', { what: label }, units)}
            onClick={() => writeParam(desk, child, listed, name, undefined)}
          >
            {say('page.dress.to-order', {}, units)}
          </button>
        </p>
      )}
    </>
  );
}

/** What the child that is shown has of its own for a number that is changed for everyone. */
const ownOfChild = ({ own, child }: DressDesk, listed: ListedStep, name: string): Given | undefined => {
  const theirs = own.find((other) => sameStep(other, listed));
  return theirs === undefined ? undefined : givenAt(theirs, child, name).own;
};
