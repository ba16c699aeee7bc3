import type { ReactNode } from 'react';
import { MEASURE_IDS, type MeasureId } from '../../../engine/body/index.ts';
import { OWN_FIELDS, type PaperBlockFile } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { LengthField } from '../../parts/length-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { useOrderFile, useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { pathOf, type Scope } from '../scope.ts';
import { fieldsOf } from './block-of.ts';

/** Her own paper, measured: front and back, the allowances on it, and the child whom it fits. */
export function PaperBlock({ scope }: { readonly scope: Scope }): ReactNode {
  const units = useUnits();
  const halves = ['front', 'back'] as const;
  return (
    <div className="stack">
      <p className="quiet small">{say('page.block.paper.about', {}, units)}</p>
      {halves.map((half) => (
        <Half key={half} scope={scope} half={half} />
      ))}
      <div className="fields">
        <PaperLength scope={scope} field="seamIncluded" />
        <PaperLength scope={scope} field="closingIncluded" />
      </div>
      <Fits scope={scope} />
    </div>
  );
}

function Half({ scope, half }: { readonly scope: Scope; readonly half: 'front' | 'back' }): ReactNode {
  const units = useUnits();
  const problem = useProblemAt(`${pathOf(scope)}paperBlock.${half}`);
  return (
    <section className="part">
      <h3>{say(`page.block.paper.${half}`, {}, units)}</h3>
      {problem !== null && <p className="wrong">{problem}</p>}
      <div className="fields">
        {OWN_FIELDS.map((field) => (
          <HalfLength key={field} scope={scope} half={half} field={field} />
        ))}
      </div>
    </section>
  );
}

function usePaper(scope: Scope) {
  const session = useSession();
  const change = (field: string, word: string, recipe: (draft: PaperBlockFile) => void): void => {
    session.change(
      { key: 'page.did.paper-block', values: { what: { word } } },
      (file) => {
        const { paperBlock } = fieldsOf(file, scope);
        if (paperBlock !== undefined) recipe(paperBlock);
      },
      { cause: `${pathOf(scope)}paperBlock.${field}` },
    );
  };
  return { change, settle: session.settle };
}

function HalfLength({
  scope,
  half,
  field,
}: {
  readonly scope: Scope;
  readonly half: 'front' | 'back';
  readonly field: (typeof OWN_FIELDS)[number];
}): ReactNode {
  const units = useUnits();
  const { change, settle } = usePaper(scope);
  const value = useOrderFile((file) => fieldsOf(file, scope).paperBlock?.[half][field]);
  const problem = useProblemAt(`${pathOf(scope)}paperBlock.${half}.${field}`);
  return (
    <LengthField
      label={say(`page.block.paper.${field}`, {}, units)}
      value={value}
      units={units}
      problem={problem}
      onDone={settle}
      onChange={(text) =>
        change(`${half}.${field}`, `page.block.paper.${field}`, (draft) => {
          draft[half][field] = text ?? '';
        })
      }
    />
  );
}

function PaperLength({
  scope,
  field,
}: {
  readonly scope: Scope;
  readonly field: 'seamIncluded' | 'closingIncluded';
}): ReactNode {
  const units = useUnits();
  const { change, settle } = usePaper(scope);
  const value = useOrderFile((file) => fieldsOf(file, scope).paperBlock?.[field]);
  const problem = useProblemAt(`${pathOf(scope)}paperBlock.${field}`);
  return (
    <LengthField
      label={say(`page.block.paper.${field}`, {}, units)}
      value={value}
      units={units}
      byRule="0"
      problem={problem}
      onDone={settle}
      onChange={(text) =>
        change(field, `page.block.paper.${field}`, (draft) => {
          if (text === undefined) delete draft[field];
          else draft[field] = text;
        })
      }
    />
  );
}

/** The measures that tell most about the child whom the paper fits. */
const FITTED: readonly MeasureId[] = MEASURE_IDS.filter((id) =>
  ['height', 'chestGirth', 'waistGirth', 'backNeckToWaist', 'shoulderLength', 'neckBaseGirth'].includes(id),
);

function Fits({ scope }: { readonly scope: Scope }): ReactNode {
  const units = useUnits();
  const { change, settle } = usePaper(scope);
  const fits = useOrderFile((file) => fieldsOf(file, scope).paperBlock?.fits);
  const path = `${pathOf(scope)}paperBlock.fits`;
  const problem = useProblemAt(path);
  const put = (field: string, recipe: (draft: NonNullable<PaperBlockFile['fits']>) => void): void =>
    change(`fits.${field}`, 'page.block.paper.fits', (draft) => {
      const now = { ...draft.fits, measures: { ...draft.fits?.measures } };
      recipe(now);
      const isEmpty = now.ageMonths === undefined && Object.keys(now.measures).length === 0;
      if (isEmpty) delete draft.fits;
      else draft.fits = now;
    });
  return (
    <section className="part">
      <h3>{say('page.block.paper.fits', {}, units)}</h3>
      <p className="quiet small">{say('page.block.paper.fits.about', {}, units)}</p>
      {problem !== null && <p className="wrong">{problem}</p>}
      <div className="fields">
        <NumberField
          label={say('page.block.paper.fits.age', {}, units)}
          value={fits?.ageMonths}
          notANumber={say('page.order.not-a-number', {}, units)}
          onDone={settle}
          onChange={(months) =>
            put('ageMonths', (draft) => {
              if (months === undefined) delete draft.ageMonths;
              else draft.ageMonths = months;
            })
          }
        />
        {FITTED.map((id) => (
          <LengthField
            key={id}
            label={say(`measure.${id}`, {}, units)}
            value={fits?.measures?.[id]}
            units={units}
            onDone={settle}
            onChange={(text) =>
              put(id, (draft) => {
                const measures = { ...draft.measures };
                if (text === undefined) delete measures[id];
                else measures[id] = text;
                draft.measures = measures;
              })
            }
          />
        ))}
      </div>
    </section>
  );
}
