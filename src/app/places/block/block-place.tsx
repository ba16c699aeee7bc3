import { type ReactNode, useState } from 'react';
import { say } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { useChild, useOrderFile, useSession, useUnits } from '../../session/use-session.ts';
import type { Scope } from '../scope.ts';
import { blockOf, setBlockKind } from './block-of.ts';
import { DraftedBlock } from './drafted-block.tsx';
import { PaperBlock } from './paper-block.tsx';

/** The plain shape under the dress: drafted by a method, or from her own paper; for all children or for one. */
export function BlockPlace(): ReactNode {
  const session = useSession();
  const { index, file: child, work } = useChild();
  const party = useOrderFile((file) => file);
  const units = useUnits();
  const hasOwn = child.block !== undefined || child.paperBlock !== undefined;
  const [alone, setAlone] = useState<number | null>(null);
  const scope: Scope = hasOwn || alone === index ? index : 'party';
  const { kind } = blockOf(party, scope);
  const kinds = [
    ...(scope === 'party' ? [] : (['party'] as const)),
    'drafted' as const,
    'paper' as const,
  ].map((id) => ({ id, text: say(`page.block.kind.${id}`, {}, units) }));
  const who = [
    { id: 'party' as const, text: say('page.block.of-order', {}, units) },
    { id: 'child' as const, text: say('page.block.of-child', { child: work.name }, units) },
  ];
  return (
    <div className="stack">
      <h2>{say('page.place.block', {}, units)}</h2>
      <Choice
        label={say('page.block.for', {}, units)}
        value={scope === 'party' ? 'party' : 'child'}
        options={who}
        onChange={(chosen) => {
          setAlone(chosen === 'child' ? index : null);
          if (chosen === 'party' && hasOwn) setBlockKind(session, index, 'party', work);
        }}
      />
      <Choice
        label={say('page.block.kind', {}, units)}
        value={kind}
        options={kinds}
        onChange={(chosen) => setBlockKind(session, scope, chosen, work)}
      />
      {kind === 'drafted' && <DraftedBlock key={`drafted ${scope}`} scope={scope} />}
      {kind === 'paper' && <PaperBlock key={`paper ${scope}`} scope={scope} />}
    </div>
  );
}
