import type { ReactNode } from 'react';
import { ToggleButton } from 'react-aria-components';
import { CLOTH_KINDS, CLOTH_ROLES, type ClothFile } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { LengthField } from '../../parts/length-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { toast, toastDone } from '../../parts/toast.tsx';
import { useOrderFile, useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { renameCloth } from '../cloth/renamed.ts';
import { useChangeCloth } from './change-cloth.ts';
import { ClothRules } from './cloth-rules.tsx';

type Role = ClothFile['use'][number];

/** The cloths of the order, and what is cut from each. */
export function ClothCards(): ReactNode {
  const session = useSession();
  const units = useUnits();
  const cloths = useOrderFile((file) => file.cloths);
  const problem = useProblemAt('cloths');
  const free = CLOTH_ROLES.find((role) => cloths.every(({ use }) => !use.includes(role)));
  const add = (): void => {
    if (free === undefined) return;
    const name = freeName(cloths, (number) => say('page.order.cloth.new-name', { number }, units));
    session.change({ key: 'page.did.add-cloth', values: {} }, (file) => {
      file.cloths.push({ name, use: [free], width: units === 'in' ? '45' : '115' });
    });
  };
  return (
    <section className="stack">
      <div className="part-head">
        <h2>{say('page.order.cloths', {}, units)}</h2>
        {free !== undefined && <Button onPress={add}>{say('page.order.cloth.add', {}, units)}</Button>}
      </div>
      <p className="quiet small">{say('page.order.cloth.use.about', {}, units)}</p>
      {problem !== null && <p className="wrong">{problem}</p>}
      {cloths.map((_, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a cloth of an order is known by its place in it.
        <ClothCard key={index} index={index} />
      ))}
    </section>
  );
}

function freeName(cloths: readonly ClothFile[], nameOf: (number: number) => string): string {
  let number = cloths.length + 1;
  while (cloths.some(({ name }) => name.toLowerCase() === nameOf(number).toLowerCase())) number++;
  return nameOf(number);
}

function ClothCard({ index }: { readonly index: number }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const cloth = useOrderFile((file) => file.cloths[index]);
  const path = `cloths[${index}]`;
  const nameProblem = useProblemAt(`${path}.name`);
  const widthProblem = useProblemAt(`${path}.width`);
  const usableProblem = useProblemAt(`${path}.usableWidth`);
  const shrinkageProblem = useProblemAt(`${path}.shrinkage`);
  const change = useChangeCloth(index, cloth?.name ?? '');
  if (cloth === undefined) return null;
  const { name } = cloth;
  const word = {
    name: say('page.order.cloth.name', {}, units),
    kind: say('page.order.cloth.kind', {}, units),
    width: say('page.order.cloth.width', {}, units),
    usable: say('page.order.cloth.usable', {}, units),
    shrinkage: say('page.order.cloth.shrinkage', {}, units),
  };
  const kinds = (['none', ...CLOTH_KINDS] as const).map((id) => ({
    id,
    text: say(`page.order.cloth.kind.${id}`, {}, units),
  }));
  return (
    <div className="part">
      <div className="fields">
        <TextField
          label={word.name}
          value={name}
          problem={nameProblem}
          needed={say('page.order.cloth.name.needed', {}, units)}
          onDone={session.settle}
          onChange={(text) =>
            session.change(
              { key: 'page.did.cloth', values: { cloth: name, what: word.name } },
              (file) => renameCloth(file, index, text),
              { cause: `${path}.name` },
            )
          }
        />
        <Choice
          label={word.kind}
          value={cloth.kind ?? 'none'}
          options={kinds}
          onChange={(kind) =>
            change('kind', word.kind, (draft) => {
              if (kind === 'none') delete draft.kind;
              else draft.kind = kind;
            })
          }
        />
        <LengthField
          label={word.width}
          value={cloth.width}
          units={units}
          problem={widthProblem}
          onDone={session.settle}
          onChange={(text) =>
            change('width', word.width, (draft) => {
              draft.width = text ?? '';
            })
          }
        />
        <LengthField
          label={word.usable}
          value={cloth.usableWidth}
          units={units}
          problem={usableProblem}
          onDone={session.settle}
          onChange={(text) =>
            change('usableWidth', word.usable, (draft) => {
              if (text === undefined) delete draft.usableWidth;
              else draft.usableWidth = text;
            })
          }
        />
        <NumberField
          label={word.shrinkage}
          value={cloth.shrinkage}
          byRule="0"
          problem={shrinkageProblem}
          notANumber={say('page.order.not-a-number', {}, units)}
          onDone={session.settle}
          onChange={(value) =>
            change('shrinkage', word.shrinkage, (draft) => {
              if (value === undefined) delete draft.shrinkage;
              else draft.shrinkage = value;
            })
          }
        />
      </div>
      <Uses index={index} cloth={cloth} />
      <ClothRules cloth={cloth} path={path} change={change} />
      <Remove index={index} cloth={cloth} />
    </div>
  );
}

/** What is cut from this cloth. Every part of the dress has one cloth, so a part taken here is given up by another. */
function Uses({ index, cloth }: { readonly index: number; readonly cloth: ClothFile }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const cloths = useOrderFile((file) => file.cloths);
  const label = say('page.order.cloth.use', {}, units);
  const put = (role: Role, isHere: boolean): void => {
    const giver = cloths.find((other) => other !== cloth && other.use.includes(role));
    const last = isHere ? giver : cloth;
    if (last?.use.length === 1) {
      toast(say('page.order.cloth.use.last', { cloth: last.name }, units));
      return;
    }
    session.change({ key: 'page.did.cloth', values: { cloth: cloth.name, what: label } }, (file) => {
      for (const [i, draft] of file.cloths.entries()) {
        const others = draft.use.filter((other) => other !== role);
        draft.use =
          i === index && isHere ? CLOTH_ROLES.filter((r) => r === role || others.includes(r)) : others;
      }
    });
  };
  return (
    <fieldset className="uses">
      <legend>{label}</legend>
      <div className="choice-row">
        {CLOTH_ROLES.map((role) => (
          <ToggleButton
            key={role}
            className="choice-one"
            isSelected={cloth.use.includes(role)}
            onChange={(isHere) => put(role, isHere)}
          >
            {say(`page.order.cloth.use.${role}`, {}, units)}
          </ToggleButton>
        ))}
      </div>
    </fieldset>
  );
}

function Remove({ index, cloth }: { readonly index: number; readonly cloth: ClothFile }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const isMain = cloth.use.includes('main');
  if (isMain) return null;
  const remove = (): void => {
    const takeBack = session.change(
      { key: 'page.did.remove-cloth', values: { cloth: cloth.name } },
      (file) => {
        file.cloths.splice(index, 1);
      },
    );
    toastDone(say('page.order.cloth.removed', { cloth: cloth.name }, units), takeBack);
  };
  return (
    <div className="row row-end">
      <Button
        look="wrong"
        name={say('page.order.cloth.remove.what', { cloth: cloth.name }, units)}
        onPress={remove}
      >
        {say('page.order.cloth.remove', {}, units)}
      </Button>
    </div>
  );
}
