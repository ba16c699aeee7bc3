import { type ReactNode, useEffect, useState } from 'react';
import { Label, Radio, RadioGroup } from 'react-aria-components';
import { roundUpToUnit } from '../../../engine/lay/index.ts';
import { say } from '../../../engine/words/index.ts';
import { today } from '../../device/today.ts';
import { useOrderFile, useSession, useUnits } from '../../session/use-session.ts';
import { boughtByTable } from '../../work/lay.ts';
import type { ClothLaid } from '../../work/lay-wish.ts';
import { changeDesk, useDesk } from './desk.ts';
import { boughtFor, coveredPercent, reckoning, soldAs } from './length-to-buy.ts';
import { keyOf, type SeenLay } from './seen-lay.ts';
import { useLaid, useOf, useSeenOf } from './use-lay-look.ts';

/** All lays, each with what to buy; the chosen one lies on the table. */
export function WhatToBuy({ shown }: { readonly shown: SeenLay }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const laid = useLaid();
  return (
    <RadioGroup
      className="field"
      value={keyOf(shown)}
      onChange={(key) => {
        session.settle();
        changeDesk({ shown: key, picked: null, said: null });
      }}
    >
      <Label>{say('page.cloth.to-buy', {}, units)}</Label>
      <div className="paper-list">
        {laid.map((one) => (
          <OneToBuy
            key={keyOf(one)}
            one={one}
            named={laid.some((other) => other !== one && other.cloth.name === one.cloth.name)}
          />
        ))}
      </div>
    </RadioGroup>
  );
}

/** `named`: several children have a lay of this cloth. */
function OneToBuy({ one, named }: { readonly one: ClothLaid; readonly named: boolean }): ReactNode {
  const units = useUnits();
  const seen = useSeenOf(one);
  if (seen === null) return null;
  const { cloth, child } = one;
  const name =
    named && child !== null ? say('page.cloth.named', { cloth: cloth.name, child }, units) : cloth.name;
  return (
    <Radio value={keyOf(one)} className="paper-row">
      <span>{name}</span>
      <span className="quiet">{soldAs(boughtFor(seen), seen)}</span>
    </Radio>
  );
}

/** The length to ask for in the shop, large, and how it comes about. */
export function LengthToBuy({ seen }: { readonly seen: SeenLay }): ReactNode {
  const units = useUnits();
  const bought = boughtFor(seen);
  return (
    <div className="stack">
      <div>
        <h3>{seen.cloth.name}</h3>
        <p className="lay-buy">
          {bought === 0
            ? say('page.cloth.buy-none', {}, units)
            : say('page.cloth.buy', { buy: soldAs(bought, seen) }, units)}
        </p>
      </div>
      <details>
        <summary>{say('page.cloth.why', {}, units)}</summary>
        <dl className="pairs">
          {reckoning(seen, units).map(({ what, length }) => (
            <div key={what}>
              <dt>{what}</dt>
              <dd>{length}</dd>
            </div>
          ))}
          <div>
            <dt>{say('page.cloth.why.covered', {}, units)}</dt>
            <dd>{say('page.cloth.percent', { percent: coveredPercent(seen) }, units)}</dd>
          </div>
        </dl>
      </details>
      <Saved seen={seen} bought={bought} />
    </div>
  );
}

/** Against each child alone, and against the width table. */
function Saved({ seen, bought }: { readonly seen: SeenLay; readonly bought: number }): ReactNode {
  const units = useUnits();
  const table = useByTable(seen);
  const byTable = table === null ? null : roundUpToUnit(table, seen.cloth.unit);
  const { alone } = seen;
  const sold = (mm: number): string => soldAs(mm, seen);
  return (
    <>
      {alone !== null && alone > bought && (
        <p className="small">
          {say('page.cloth.saves.alone', { alone: sold(alone), saved: sold(alone - bought) }, units)}
        </p>
      )}
      {byTable !== null && bought > 0 && (
        <p className="small quiet">
          {byTable > bought
            ? say('page.cloth.saves.table', { table: sold(byTable), saved: sold(byTable - bought) }, units)
            : say('page.cloth.saves.table-less', { table: sold(byTable) }, units)}
        </p>
      )}
    </>
  );
}

/** Asked of the worker when nothing else is under way; the table knows nothing of what lies on lengths at hand. */
function useByTable({ cloth, child, lengths }: SeenLay): number | null {
  const file = useOrderFile((order) => order);
  const of = useOf();
  const isBusy = useDesk(({ search, looking }) => search !== null || looking);
  const plan = lengths.length === 1 && lengths[0]?.at === null ? lengths[0].plan : null;
  const [known, setKnown] = useState<{ readonly plan: object; readonly length: number | null } | null>(null);
  const index = child === null ? -1 : file.children.findIndex(({ name }) => name.trim() === child);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the plan is another whenever the pieces are.
  useEffect(() => {
    if (plan === null || isBusy || known?.plan === plan) return;
    let gone = false;
    const whose = of === 'party' && index >= 0 ? index : of;
    void boughtByTable({ file, today: today(), of: whose }, cloth.name).then((end) => {
      if (!gone) setKnown({ plan, length: end.ok ? end.value : null });
    });
    return () => {
      gone = true;
    };
  }, [plan, isBusy]);
  return known !== null && known.plan === plan ? known.length : null;
}
