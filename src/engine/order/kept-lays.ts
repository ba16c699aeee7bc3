import type { KeptPlace } from '../lay/index.ts';
import type { KeptLay } from './order.ts';
import type { LayFile } from './schema.ts';

/** The version of the search. To be raised when equal seeds and tries give other places than before. */
export const LAY_ENGINE = 2;

const TURNS = [0, 45, 90, 135, 180, 225, 270, 315] as const satisfies readonly KeptPlace['turn'][];

/** Lays as the order file has them. A turn that is none is read as upright: the places are judged anyway. */
export const keptLays = (files: readonly LayFile[]): readonly KeptLay[] =>
  files.map(({ cloth, child, engine, seed, evaluations, lengths }) => ({
    cloth,
    child: child ?? null,
    engine,
    seed,
    evaluations,
    lengths: lengths.map(({ at, mark, places }) => ({
      at: at ?? null,
      mark,
      places: places.map(({ turn, mirrored, pinned, ...place }) => ({
        ...place,
        turn: TURNS.find((known) => known === turn) ?? 0,
        mirrored: mirrored ?? false,
        pinned: pinned ?? false,
      })),
    })),
  }));

/** A lay as the order file has it. */
export const layFile = ({ cloth, child, engine, seed, evaluations, lengths }: KeptLay): LayFile => ({
  cloth,
  ...(child === null ? {} : { child }),
  engine,
  seed,
  evaluations,
  lengths: lengths.map(({ at, mark, places }) => ({
    ...(at === null ? {} : { at }),
    mark,
    places: places.map(({ mirrored, pinned, ...place }) => ({
      ...place,
      ...(mirrored ? { mirrored } : {}),
      ...(pinned ? { pinned } : {}),
    })),
  })),
});
