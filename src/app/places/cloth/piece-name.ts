import type { UnitSystem } from '../../../engine/units/index.ts';
import { say } from '../../../engine/words/index.ts';
import type { ItemAt, SeenLay } from './seen-lay.ts';

/** What a placing is called: its title, with the child where several lie on the cloth, with its copy where there are more. */
export function pieceName(seen: SeenLay, { length, stretch, item }: ItemAt, units: UnitSystem): string {
  const laid = seen.lengths[length]?.lay.stretches[stretch]?.pieces[item];
  if (laid === undefined) return '';
  const alike = seen.lengths.flatMap(({ lay }) =>
    lay.stretches.flatMap(({ pieces }) => pieces.filter(({ piece }) => piece === laid.piece)),
  );
  const number = alike.indexOf(laid) + 1;
  const title = alike.length > 1 ? `${laid.title} ${number}` : laid.title;
  return seen.child === null ? say('page.cloth.piece.of', { title, child: laid.child }, units) : title;
}

/** All placings of a lay in their order along the cloth. */
export const itemsOf = (seen: SeenLay): readonly ItemAt[] =>
  seen.lengths.flatMap(({ lay }, length) =>
    lay.stretches.flatMap(({ pieces }, stretch) =>
      pieces
        .map((piece, item) => ({ piece, at: { length, stretch, item } }))
        .toSorted((a, b) => a.piece.at.x - b.piece.at.x)
        .map(({ at }) => at),
    ),
  );

export const sameItem = (a: ItemAt | null, b: ItemAt): boolean =>
  a !== null && a.length === b.length && a.stretch === b.stretch && a.item === b.item;
