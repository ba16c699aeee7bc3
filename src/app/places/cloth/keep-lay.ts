import type { Draft } from 'immer';
import { keptPlaces, layMark } from '../../../engine/lay/index.ts';
import {
  type KeptLay,
  type KeptLength,
  LAY_ENGINE,
  type LayFile,
  layFile,
  type OrderFile,
} from '../../../engine/order/index.ts';
import { isPinned, layKey, type SeenLay } from './seen-lay.ts';

/** A lay as it is to be kept. `by`: the search that found it; left out where she has moved something by hand. */
export function asKeptLay(
  { cloth, child, lengths, kept }: Omit<SeenLay, 'isOld' | 'alone'>,
  by: { readonly seed: number; readonly evaluations: number } = { seed: kept?.seed ?? 1, evaluations: 0 },
): KeptLay {
  return {
    cloth: cloth.name,
    child,
    engine: LAY_ENGINE,
    ...by,
    lengths: lengths.map(
      (length): KeptLength => ({
        at: length.at,
        mark: layMark(length.plan),
        places: keptPlaces(length.plan, length.placed, (stretch, item) => isPinned(length, stretch, item)),
      }),
    ),
  };
}

/** So few places that are changed are put in one by one, so that the step that undoes it stays small. */
const FEW = 8;

/** Puts a lay into the file, in the place of the one that was kept before. */
export function putLay(file: Draft<OrderFile>, lay: KeptLay): void {
  const lays = file.lays ?? [];
  const key = layKey(lay);
  const index = lays.findIndex((other) => layKey(other) === key);
  const before = lays[index];
  const after = layFile(lay);
  if (before === undefined) file.lays = [...lays, after];
  else if (!putPlaces(before, after)) lays[index] = after;
}

function putPlaces(before: Draft<LayFile>, after: LayFile): boolean {
  const pairs = after.lengths.map((length, i) => ({ was: before.lengths[i], length }));
  const isAlike = pairs.every(
    ({ was, length }) => was?.at === length.at && was?.places.length === length.places.length,
  );
  if (!isAlike || before.lengths.length !== pairs.length) return false;
  const changed = pairs.flatMap(({ was, length }) =>
    length.places.flatMap((place, i) =>
      was === undefined || JSON.stringify(was.places[i]) === JSON.stringify(place) ? [] : [{ was, place, i }],
    ),
  );
  if (changed.length > FEW) return false;
  for (const { was, place, i } of changed) was.places[i] = place;
  for (const { was, length } of pairs) if (was !== undefined) was.mark = length.mark;
  Object.assign(before, { engine: after.engine, seed: after.seed, evaluations: after.evaluations });
  return true;
}

/** Takes a lay out of the file. */
export function dropLay(file: Draft<OrderFile>, key: string): void {
  const rest = (file.lays ?? []).filter((lay) => layKey(lay) !== key);
  if (rest.length > 0) file.lays = rest;
  else delete file.lays;
}
