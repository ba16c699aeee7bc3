import type { Bounds, Path, Point } from '../../geometry/index.ts';
import type { ChildPart, ChildView } from './child-drawing.ts';
import { childUpright } from './child-front.ts';
import { childFromSide } from './child-side.ts';
import { LANDMARKS } from './landmarks.ts';
import { LANDMARK_PLACES, type Marked, TAPE_PLACES, type TakenId } from './tape-places.ts';

/** What a line of a picture is; the writer gives it its look. Fields are filled, all others are lines. */
export type PictureLook = ChildPart['kind'] | 'beside' | 'tape' | 'behind';

/** A drawing of a child with the tape, mm on the child; cut off at `window`. */
export interface MeasurePicture {
  readonly view: ChildView;
  readonly window: Bounds;
  readonly parts: readonly { readonly look: PictureLook; readonly path: Path }[];
  /** A landmark's place, and where the middle of its letter stands from there, in sizes of the letter. */
  readonly letters: readonly { readonly letter: string; readonly at: Point; readonly aside: Point }[];
}

/** Where the tape runs for one measure. */
export function measurePicture(id: TakenId): MeasurePicture {
  const { view, window, tape, behind, beside, landmarks } = TAPE_PLACES[id];
  const looking = (look: PictureLook) => (path: Path) => ({ look, path });
  return {
    view,
    window,
    parts: [
      ...childParts(view),
      ...beside.map(looking('beside')),
      ...behind.map(looking('behind')),
      ...tape.map(looking('tape')),
    ],
    letters: landmarks.map(lettered),
  };
}

/** The landmarks of one side of the child, all together. */
export function landmarkPicture(view: ChildView): MeasurePicture {
  const half = view === 'side' ? 182 : 310;
  return {
    view,
    window: { minX: -half, minY: -20, maxX: half, maxY: 1180 },
    parts: childParts(view),
    letters: LANDMARK_PLACES[view].map(lettered),
  };
}

const childParts = (view: ChildView): MeasurePicture['parts'] =>
  (view === 'side' ? childFromSide() : childUpright(view)).map((part) =>
    'path' in part ? { look: part.kind, path: part.path } : { look: part.kind, path: part.outline },
  );

const lettered = ({ id, at, aside }: Marked): MeasurePicture['letters'][number] => ({
  letter: LANDMARKS[id],
  at,
  aside,
});
