import { type ReactNode, useMemo } from 'react';
import { GRAIN_RULES } from '../../../engine/lay/index.ts';
import { CLOTH_ROLES, type ClothFile } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { useOrderFile, useSessionState, useUnits } from '../../session/use-session.ts';
import { type OneCloth, putList } from './change-cloth.ts';

/** Pieces that may lie otherwise than along the cloth. */
export function ClothGrain({ cloth, change }: OneCloth): ReactNode {
  const units = useUnits();
  const pieces = usePiecesFrom(cloth);
  const what = say('page.rules.grain', {}, units);
  const grain = cloth.grain ?? [];
  const free = [...pieces].find(([id]) => grain.every(({ piece }) => piece.trim() !== id))?.[0];
  return (
    <fieldset className="uses stack">
      <legend>{what}</legend>
      <p className="quiet small">{say('page.rules.grain.about', {}, units)}</p>
      {grain.map(({ piece, lies }, i) => {
        const id = piece.trim();
        const isKnown = pieces.has(id);
        const title = pieces.get(id) ?? piece;
        const taken = grain.map((other) => other.piece.trim());
        const options = [...pieces].flatMap(([other, text]) =>
          other === id || !taken.includes(other) ? [{ id: other, text }] : [],
        );
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row of a list is known by its place in it.
          <div key={i} className="fields">
            <Choice
              label={say('page.rules.grain.piece', {}, units)}
              value={id}
              options={isKnown ? options : [{ id, text: title }, ...options]}
              problem={isKnown || pieces.size === 0 ? null : say('page.rules.grain.unknown', {}, units)}
              onChange={(chosen) =>
                change(`grain[${i}].piece`, what, (draft) => {
                  const row = draft.grain?.[i];
                  if (row !== undefined) row.piece = chosen;
                })
              }
            />
            <Choice
              label={say('page.rules.grain.lies', {}, units)}
              value={lies}
              options={GRAIN_RULES.map((rule) => ({
                id: rule,
                text: say(`page.rules.grain.lies.${rule}`, {}, units),
              }))}
              onChange={(chosen) =>
                change(`grain[${i}].lies`, what, (draft) => {
                  const row = draft.grain?.[i];
                  if (row !== undefined) row.lies = chosen;
                })
              }
            />
            <Button
              name={say('page.rules.grain.remove', { piece: title }, units)}
              onPress={() =>
                change(`grain.out`, what, (draft) =>
                  putList(
                    draft,
                    'grain',
                    grain.filter((_, k) => k !== i),
                  ),
                )
              }
            >
              {say('page.rules.remove', {}, units)}
            </Button>
          </div>
        );
      })}
      {free !== undefined && (
        <div className="row row-wrap">
          <Button
            onPress={() =>
              change('grain.in', what, (draft) =>
                putList(draft, 'grain', [...grain, { piece: free, lies: 'cross-allowed' }]),
              )
            }
          >
            {say('page.rules.grain.add', {}, units)}
          </Button>
        </div>
      )}
    </fieldset>
  );
}

/** What is cut from a cloth in any of the dresses, as far as they are drawn: titles by piece id. */
function usePiecesFrom(cloth: ClothFile): ReadonlyMap<string, string> {
  const children = useSessionState(({ work }) => work.children);
  const cloths = useOrderFile((file) => file.cloths);
  return useMemo(() => {
    const taken = new Set(cloths.flatMap(({ use }) => use));
    const isMain = cloth.use.includes('main');
    const roles = CLOTH_ROLES.filter((role) => cloth.use.includes(role) || (isMain && !taken.has(role)));
    const all = children.flatMap(({ drawing }) => drawing?.pieces ?? []);
    return new Map(
      all.flatMap(({ piece, label }): [string, string][] =>
        roles.includes(piece.cloth) ? [[piece.id, label.title]] : [],
      ),
    );
  }, [children, cloths, cloth]);
}
