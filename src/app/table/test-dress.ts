import { completeBody } from '../../engine/body/index.ts';
import { type CutPiece, makeCutPieces } from '../../engine/cut/index.ts';
import { designDress, findDress, tell } from '../../engine/design/index.ts';
import type { Garment } from '../../engine/piece/index.ts';
import type { Wish } from './param-now.ts';
import type { TableDress } from './table-types.ts';

/** For tests: a dress of the library for the middle girl of an age; `skirt` are numbers of its skirt. */
export function libraryWish(id: string, skirt: Wish['steps'][number]['given'] = {}, ageMonths = 60): Wish {
  const completed = completeBody({ ageMonths, measured: {} });
  const dress = findDress(id);
  if (!completed.ok || dress === undefined) throw new Error(`No dress ${id}.`);
  const width = 1400;
  return {
    body: completed.body,
    block: { kind: 'drafted', given: {} },
    steps: dress.steps.map((step) =>
      step.step.endsWith('skirt') ? { ...step, given: { ...step.given, ...skirt } } : step,
    ),
    clothWidth: { main: width, yoke: width, skirt: width, lining: width, net: width, trim: width },
    units: 'cm',
    ruler: null,
  };
}

export function tableDressOf(wish: Wish): TableDress {
  const dress = designDress(wish);
  if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
  return { name: 'Ada', garment: dress.garment, pieces: cutsOf(dress.garment), draft: dress.draft };
}

export const libraryDress = (id: string, skirt: Wish['steps'][number]['given'] = {}): Garment =>
  tableDressOf(libraryWish(id, skirt)).garment;

export const cutsOf = (garment: Garment): readonly CutPiece[] =>
  makeCutPieces(garment, {
    own: {},
    label: (piece) => ({ title: tell(piece.title, 'cm'), cutting: '', child: 'Ada', size: '', date: '' }),
  });
