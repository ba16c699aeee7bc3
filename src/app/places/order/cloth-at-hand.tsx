import { Fragment, type ReactNode } from 'react';
import type { ClothFile } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { LengthField } from '../../parts/length-field.tsx';
import { useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { type OneCloth, putList } from './change-cloth.ts';

type AtHand = NonNullable<ClothFile['atHand']>[number];

/** As a new length and a new leftover stand until she has measured them. */
const NEW_LENGTH = { in: '36', cm: '100' } as const;
const NEW_SIDE = { in: '24', cm: '60' } as const;

/** Lengths of a cloth that she has already, and leftovers by their corners. */
export function ClothAtHand({ cloth, path, change }: OneCloth): ReactNode {
  const units = useUnits();
  const what = say('page.rules.atHand', {}, units);
  const all = cloth.atHand ?? [];
  const put = (list: AtHand[]): void =>
    change('atHand.list', what, (draft) => putList(draft, 'atHand', list));
  const side = NEW_SIDE[units];
  const square = [
    { along: '0', across: '0' },
    { along: side, across: '0' },
    { along: side, across: side },
    { along: '0', across: side },
  ];
  return (
    <fieldset className="uses stack">
      <legend>{what}</legend>
      <p className="quiet small">{say('page.rules.atHand.about', {}, units)}</p>
      {all.map((one, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row of a list is known by its place in it.
        <div key={i} className="stack">
          <p className="small">{say('page.rules.atHand.one', { number: i + 1 }, units)}</p>
          <div className="fields">
            {one.corners === undefined ? (
              <HandField at={i} corner={null} field="length" {...{ cloth, path, change }} />
            ) : (
              one.corners.map((_, k) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a corner is known by its place in the list.
                <Fragment key={k}>
                  <HandField at={i} corner={k} field="along" {...{ cloth, path, change }} />
                  <HandField at={i} corner={k} field="across" {...{ cloth, path, change }} />
                </Fragment>
              ))
            )}
          </div>
          <div className="row row-wrap">
            {one.corners !== undefined && <Corners at={i} corners={one.corners} change={change} />}
            <Button
              name={say('page.rules.atHand.remove', { number: i + 1 }, units)}
              onPress={() => put(all.filter((_, k) => k !== i))}
            >
              {say('page.rules.remove', {}, units)}
            </Button>
          </div>
        </div>
      ))}
      <div className="row row-wrap">
        <Button onPress={() => put([...all, { length: NEW_LENGTH[units] }])}>
          {say('page.rules.atHand.add', {}, units)}
        </Button>
        <Button onPress={() => put([...all, { corners: square }])}>
          {say('page.rules.atHand.add-odd', {}, units)}
        </Button>
      </div>
    </fieldset>
  );
}

function Corners({
  at,
  corners,
  change,
}: Pick<OneCloth, 'change'> & {
  readonly at: number;
  readonly corners: NonNullable<AtHand['corners']>;
}): ReactNode {
  const units = useUnits();
  const what = say('page.rules.atHand', {}, units);
  const put = (list: NonNullable<AtHand['corners']>): void =>
    change('atHand.corners', what, (draft) => {
      const one = draft.atHand?.[at];
      if (one !== undefined) one.corners = list;
    });
  const last = corners.at(-1) ?? { along: '0', across: '0' };
  return (
    <>
      <Button onPress={() => put([...corners, { ...last }])}>
        {say('page.rules.atHand.add-corner', {}, units)}
      </Button>
      {corners.length > 3 && (
        <Button onPress={() => put(corners.slice(0, -1))}>
          {say('page.rules.atHand.remove-corner', {}, units)}
        </Button>
      )}
    </>
  );
}

type HandFieldOf =
  | { readonly corner: null; readonly field: 'length' }
  | { readonly corner: number; readonly field: 'along' | 'across' };

function HandField(props: OneCloth & { readonly at: number } & HandFieldOf): ReactNode {
  const { cloth, path, change, at, corner, field } = props;
  const session = useSession();
  const units = useUnits();
  const below = corner === null ? field : `corners[${corner}].${field}`;
  const problem = useProblemAt(`${path}.atHand[${at}].${below}`);
  const whole = useProblemAt(`${path}.atHand[${at}]`);
  const one = cloth.atHand?.[at];
  const value = corner === null ? one?.length : one?.corners?.[corner]?.[field];
  const label =
    corner === null
      ? say('page.rules.atHand.length', {}, units)
      : say(`page.rules.atHand.${field}`, { number: corner + 1 }, units);
  return (
    <LengthField
      label={label}
      value={value}
      units={units}
      problem={problem ?? whole}
      onDone={session.settle}
      onChange={(text) =>
        change(`atHand[${at}].${below}`, say('page.rules.atHand', {}, units), (draft) => {
          const hand = draft.atHand?.[at];
          if (hand === undefined) return;
          if (corner === null) hand.length = text ?? '';
          else {
            const point = hand.corners?.[corner];
            if (point !== undefined) point[field] = text ?? '';
          }
        })
      }
    />
  );
}
