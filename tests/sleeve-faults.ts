import { makeCutPieces } from '../src/engine/cut/index.ts';
import { tell } from '../src/engine/design/index.ts';
import { outlineSelfCrossings } from '../src/engine/geometry/index.ts';
import { dressOf, type Wish } from './dress-of.ts';
import { checksOf } from './faults-of.ts';

const LABEL = { title: 'Piece', cutting: 'Cut 1', child: 'Child', size: '', date: '' };

const CODES: ReadonlySet<string> = new Set([
  'outline-closed',
  'outline-simple',
  'seam-lengths',
  'corners-run-smooth',
  'notches-meet',
  'gather-ratio',
  'cap-ease',
  'arm-passes',
  'hand-passes',
]);

/** What keeps the sleeves of a dress from fitting, in words: drawing, seams, arm and hand, cutting lines that cross. */
export function sleeveFaults(wish: Wish): readonly string[] {
  const said = checksOf(wish)
    .filter((check) => CODES.has(check.code) && (check.level === 'warn' || check.level === 'stop'))
    .map((check) => `${check.code}: ${tell(check.say, 'cm')}`);
  const crossed = makeCutPieces(dressOf(wish), { label: () => LABEL })
    .filter((cut) => outlineSelfCrossings(cut.cuttingLine).length > 0)
    .map((cut) => `${cut.piece.id}: its cutting line crosses itself`);
  return [...said, ...crossed];
}
