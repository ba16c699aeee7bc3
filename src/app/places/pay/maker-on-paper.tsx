import type { ReactNode } from 'react';
import { PAPER_KINDS, type WorkroomFile } from '../../../engine/order/index.ts';
import { say, type WordKey } from '../../../engine/words/index.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { useUnits } from '../../session/use-session.ts';
import { useChangeWorkroom, useWorkroom } from './use-pay.ts';

type Maker = NonNullable<WorkroomFile['maker']>;

/** Lines of an address and of how she is paid that have a field. */
const LINES = [0, 1, 2, 3];
const PAY_LINES = [0, 1];

/** Who she is on quotes and bills, and her own words for them. */
export function MakerOnPaper(): ReactNode {
  const units = useUnits();
  const { maker = {} } = useWorkroom();
  const change = useChangeWorkroom();
  const write = <K extends keyof Maker>(field: K, value: Maker[K] | undefined): void => {
    const next = { ...maker };
    delete next[field];
    if (value !== undefined) next[field] = value;
    change('maker', next);
  };
  const filled = (text: string): string | undefined => (text.trim() === '' ? undefined : text);
  const lineField = (field: 'lines' | 'payTo', word: WordKey, at: number): ReactNode => (
    <TextField
      key={`${field} ${at}`}
      label={say(word, { number: at + 1 }, units)}
      value={maker[field]?.[at] ?? ''}
      onChange={(text) => {
        const lines = Array.from({ length: Math.max(at + 1, maker[field]?.length ?? 0) }, (_, i) =>
          i === at ? text : (maker[field]?.[i] ?? ''),
        );
        write(field, lines);
      }}
    />
  );
  return (
    <details className="part">
      <summary>{say('page.bill.maker', {}, units)}</summary>
      <div className="fields">
        <TextField
          label={say('page.bill.maker.name', {}, units)}
          value={maker.name ?? ''}
          onChange={(text) => write('name', filled(text))}
        />
        {LINES.map((at) => lineField('lines', 'page.bill.maker.line', at))}
        {PAY_LINES.map((at) => lineField('payTo', 'page.bill.maker.pay-to', at))}
        <TextField
          label={say('page.bill.maker.tax-number', {}, units)}
          value={maker.taxNumber ?? ''}
          onChange={(text) => write('taxNumber', filled(text))}
        />
        {(['quoteDays', 'payDays'] as const).map((field) => (
          <NumberField
            key={field}
            label={say(
              field === 'quoteDays' ? 'page.bill.maker.quote-days' : 'page.bill.maker.pay-days',
              {},
              units,
            )}
            value={maker[field]}
            notANumber={say('page.pay.not-a-number', {}, units)}
            onChange={(days) => write(field, days)}
          />
        ))}
        {PAPER_KINDS.flatMap((kind) =>
          (['titles', 'closing'] as const).map((field) => (
            <TextField
              key={`${kind} ${field}`}
              label={say(
                field === 'titles' ? 'page.bill.maker.title' : 'page.bill.maker.closing',
                { kind: say(`paper.${kind}.name`, {}, units).toLowerCase() },
                units,
              )}
              value={maker[field]?.[kind] ?? ''}
              onChange={(text) => write(field, { ...maker[field], [kind]: text })}
            />
          )),
        )}
      </div>
    </details>
  );
}
