import type { ReactNode, Ref } from 'react';
import {
  type PayWork,
  USUAL_CURRENCY,
  USUAL_TIMES,
  WORK_KINDS,
  type WorkroomFile,
} from '../../../engine/order/index.ts';
import { say, type WordKey } from '../../../engine/words/index.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { Switch } from '../../parts/switch.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { useUnits } from '../../session/use-session.ts';
import { AmountField } from './pay-parts.tsx';
import { useChangeWorkroom, usePayProblem, useWorkroom } from './use-pay.ts';

type Rates = NonNullable<WorkroomFile['rates']>;
type Percent = 'overhead' | 'profit' | 'sundries' | 'breaks' | 'deposit';

const PERCENTS = [
  ['overhead', 'page.bill.overhead', '10'],
  ['profit', 'page.bill.profit', '0'],
  ['sundries', 'page.bill.sundries', '0'],
  ['breaks', 'page.bill.breaks', '0'],
  ['deposit', 'page.bill.deposit', '50'],
] as const satisfies readonly (readonly [Percent, WordKey, string])[];

/** What she asks for her time, and her own times beside the sewing. `rate` stands round the field of her hour. */
export function RateFields({
  work,
  rate,
}: {
  readonly work: PayWork | null;
  readonly rate: Ref<HTMLDivElement>;
}): ReactNode {
  const units = useUnits();
  const { rates = {} } = useWorkroom();
  const change = useChangeWorkroom();
  const write = <K extends keyof Rates>(field: K, value: Rates[K]): void => {
    const next = { ...rates };
    delete next[field];
    if (value !== undefined) next[field] = value;
    change('rates', next);
  };
  const filled = (text: string): string | undefined => (text.trim() === '' ? undefined : text);
  return (
    <section className="part">
      <h3>{say('page.bill.rates', {}, units)}</h3>
      <div className="fields">
        <OwnCurrency work={work} />
        <div ref={rate}>
          <AmountField
            label={say('page.bill.per-hour', {}, units)}
            value={rates.perHour}
            unit={work?.currency ?? ''}
            problem={usePayProblem(work, 'rates.perHour')}
            onChange={(text) => write('perHour', text)}
          />
        </div>
        {PERCENTS.map(([field, word, usual]) => (
          <PercentField
            key={field}
            word={word}
            path={`rates.${field}`}
            usual={usual}
            value={rates[field]}
            work={work}
            onChange={(value) => write(field, value)}
          />
        ))}
        <TextField
          label={say('page.bill.tax-name', {}, units)}
          value={rates.taxName ?? ''}
          onChange={(text) => write('taxName', filled(text))}
        />
        <PercentField
          word="page.bill.tax-percent"
          path="rates.taxPercent"
          usual="0"
          value={rates.taxPercent}
          work={work}
          onChange={(value) => write('taxPercent', value)}
        />
      </div>
      <Switch
        label={say('page.bill.materials-first', {}, units)}
        value={rates.materialsFirst ?? false}
        onChange={(on) => write('materialsFirst', on)}
      />
      <h3>{say('page.bill.times', {}, units)}</h3>
      <p className="quiet small">{say('page.bill.times.about', {}, units)}</p>
      <UsualTimes work={work} />
    </section>
  );
}

/** Her currency, where no order says another. */
export function OwnCurrency({ work }: { readonly work: PayWork | null }): ReactNode {
  const units = useUnits();
  const { rates = {} } = useWorkroom();
  const change = useChangeWorkroom();
  return (
    <TextField
      label={say('page.bill.currency.own', {}, units)}
      value={rates.currency ?? ''}
      byRule={USUAL_CURRENCY}
      about={say('page.bill.currency.code', {}, units)}
      problem={usePayProblem(work, 'rates.currency')}
      onChange={(text) => {
        const { currency: _, ...rest } = rates;
        change('rates', text.trim() === '' ? rest : { ...rest, currency: text });
      }}
    />
  );
}

function PercentField({
  word,
  path,
  usual,
  value,
  work,
  onChange,
}: {
  readonly word: WordKey;
  readonly path: string;
  readonly usual: string;
  readonly value: number | undefined;
  readonly work: PayWork | null;
  readonly onChange: (value: number | undefined) => void;
}): ReactNode {
  const units = useUnits();
  return (
    <NumberField
      label={say(word, {}, units)}
      value={value}
      byRule={usual}
      unit="%"
      problem={usePayProblem(work, path)}
      notANumber={say('page.pay.not-a-number', {}, units)}
      onChange={onChange}
    />
  );
}

function UsualTimes({ work }: { readonly work: PayWork | null }): ReactNode {
  const units = useUnits();
  const { times = {} } = useWorkroom();
  const change = useChangeWorkroom();
  return (
    <div className="fields">
      {WORK_KINDS.map((kind) => (
        <NumberField
          key={kind}
          label={say(`work.${kind}`, {}, units)}
          value={times[kind]}
          byRule={String(USUAL_TIMES[kind])}
          unit={kind === 'sew' ? '%' : 'min'}
          problem={
            work?.problems.some(({ path }) => path === `times.${kind}`)
              ? say('page.pay.not-a-number', {}, units)
              : null
          }
          notANumber={say('page.pay.not-a-number', {}, units)}
          onChange={(value) => {
            const next = { ...times };
            delete next[kind];
            if (value !== undefined) next[kind] = value;
            change('times', next);
          }}
        />
      ))}
    </div>
  );
}
