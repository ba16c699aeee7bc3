import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { Switch } from '../../parts/switch.tsx';
import {
  fieldSentence,
  useChild,
  useOrderFile,
  useSession,
  useTell,
  useUnits,
} from '../../session/use-session.ts';
import { ByHandPart } from './by-hand-part.tsx';
import { changeDesk, useDesk } from './desk.ts';
import { LayState } from './lay-state.tsx';
import { OffcutsPart } from './offcuts-part.tsx';
import { keyOf } from './seen-lay.ts';
import { useLayLook, useOf, useSeen } from './use-lay-look.ts';
import { LengthToBuy, WhatToBuy } from './what-to-buy.tsx';
import '../../look/paper.css';
import '../../look/cloth.css';

/** How the pieces lie on the cloth: what to buy of each, a shorter lay to look for, pieces to be put elsewhere by hand. */
export function ClothPlace(): ReactNode {
  useLayLook();
  const units = useUnits();
  const seen = useSeen();
  return (
    <div className="stack">
      <h2>{say('page.cloth.title', {}, units)}</h2>
      <ForWhom />
      <Refused />
      {seen !== null && (
        <>
          <section className="part">
            <WhatToBuy shown={seen} />
            <LengthToBuy key={keyOf(seen)} seen={seen} />
            <LayState key={`state ${keyOf(seen)}`} seen={seen} />
          </section>
          <ByHandPart seen={seen} />
          <OffcutsPart key={`offcuts ${keyOf(seen)}`} seen={seen} />
        </>
      )}
    </div>
  );
}

function ForWhom(): ReactNode {
  const session = useSession();
  const units = useUnits();
  const { work } = useChild();
  const of = useOf();
  const children = useOrderFile((file) => file.children.length);
  const together = useOrderFile((file) => file.layTogether !== 'child');
  const isBusy = useDesk((desk) => desk.search !== null);
  if (children < 2 || isBusy) return null;
  return (
    <section className="part">
      <Choice
        label={say('page.cloth.for', {}, units)}
        value={of === 'party' ? 'party' : 'child'}
        options={[
          { id: 'party', text: say('page.cloth.for.party', {}, units) },
          { id: 'child', text: work.name },
        ]}
        onChange={(forWhom) => changeDesk({ forWhom, picked: null, said: null })}
      />
      {of === 'party' && (
        <Switch
          label={say('page.cloth.together', {}, units)}
          value={together}
          onChange={(isTogether) =>
            void session.change({ key: 'page.did.lay-together', values: {} }, (file) => {
              file.layTogether = isTogether ? 'party' : 'child';
            })
          }
        />
      )}
    </section>
  );
}

/** Why something can't be laid, and what is being done meanwhile. */
function Refused(): ReactNode {
  const units = useUnits();
  const tell = useTell();
  const of = useOf();
  const look = useDesk((desk) => (desk.of === of ? desk.look : null));
  const looking = useDesk((desk) => desk.looking);
  if (look === null || look.ok) {
    const sentences = look?.refused ?? [];
    const isEmpty = look?.laid.length === 0 && sentences.length === 0;
    return (
      <>
        {looking && (
          <p className="quiet" role="status">
            {say((look?.laid.length ?? 0) > 0 ? 'page.cloth.shortening' : 'page.cloth.looking', {}, units)}
          </p>
        )}
        {isEmpty && !looking && <p>{say('page.cloth.nothing', {}, units)}</p>}
        {sentences.map((sentence) => (
          <p key={sentence} className="wrong">
            {sentence}
          </p>
        ))}
      </>
    );
  }
  return look.problems.slice(0, 3).map((problem) => (
    <p key={problem.path} className="wrong">
      {problem.child === null ? '' : `${problem.child}: `}
      {fieldSentence(problem, tell)}
    </p>
  ));
}
