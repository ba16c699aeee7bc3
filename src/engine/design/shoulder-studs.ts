import type { Garment, Marking, Piece, Seam, SeamEdge } from '../piece/index.ts';
import { edgeLength, pieceOf } from '../piece/index.ts';
import { buttonMark } from './button-mark.ts';
import { COMMON_PRACTICE, cannot, defineStep, done, lengthParam } from './step.ts';
import { stripPiece } from './strip.ts';

/** Studs keep away from neck and shoulder tip by this, and are about so far apart, mm (common practice, no source). */
const FROM_ENDS = 8;
const APART = 30;

/**
 * Both shoulders open and close with press studs: the front laps over a strip that is sewn to the back shoulder.
 * Left and right stay alike, so both shoulders open.
 */
export const shoulderStuds = defineStep({
  id: 'shoulder-studs',
  stage: 'closing',
  kind: 'closing',
  params: {
    overlap: lengthParam(
      () => 20,
      () => [12, 40],
      COMMON_PRACTICE,
    ),
    studDiameter: lengthParam(
      () => 8,
      () => [4, 15],
      'press studs of 7 to 10 mm (common practice, no source)',
    ),
  },
  words: {
    title: 'Press studs at the shoulders',
    about: 'Both shoulders open with press studs, for babies; the front laps over the back.',
    overlap: 'The front laps over by',
    studDiameter: 'Press stud, across',
    'no-shoulder': 'There is no shoulder seam to open. Open the back instead.',
    'too-short': 'A shoulder of {length} has no room for two press studs. Open the back instead.',
    'piece.stand': 'Shoulder strip, back',
    'piece.facing': 'Shoulder facing, front',
    draw: 'Shoulder strips',
    'draw.stand':
      'Back: rule a strip {length} long and {width} wide, folded lengthwise. Sew it to the back shoulder; it lies under the front.',
    'draw.facing':
      'Front: rule a facing {length} long and {width} wide. Sew it to the front shoulder and turn it in.',
    'draw.studs':
      'Mark {count} press studs along the middle of each, {ends} from both ends and evenly between. Baste the lap at the armhole before the armhole is finished.',
  },
  apply: ({ garment, bench }, values) => {
    const shoulder = garment.seams.find((seam) => seam.name === 'shoulder');
    const opened = shoulder === undefined ? null : openSeam(shoulder);
    if (opened === null) return cannot('shoulder-studs.no-shoulder');
    const lengthOf = (side: readonly SeamEdge[]): number =>
      side.reduce((sum, edge) => sum + edgeLength(pieceOf(garment, edge.piece), edge.edge), 0);
    const [front, back] = [lengthOf(opened.closing.a), lengthOf(opened.closing.b)];
    const overlap = bench.rounded(values.overlap);
    const run = Math.min(front, back) - 2 * FROM_ENDS;
    if (run < values.studDiameter + 2)
      return cannot('shoulder-studs.too-short', { length: { mm: Math.min(front, back) } });
    const count = Math.max(2, Math.round(run / APART) + 1);
    const studs = (length: number): readonly Marking[] =>
      Array.from({ length: count }, (_, i) =>
        buttonMark(
          { x: FROM_ENDS + (i * (length - 2 * FROM_ENDS)) / (count - 1), y: overlap / 2 },
          values.studDiameter,
        ),
      );
    const stand = stripPiece({
      id: 'shoulder-strip',
      title: { key: 'shoulder-studs.piece.stand', values: {} },
      length: back,
      width: overlap,
      upper: 'fold',
      lower: 'attach',
      left: 'free',
      right: 'attach',
      cutting: { as: 'fold', copies: 2 },
      grain: 'along',
      cloth: 'main',
      markings: studs(back),
    });
    const facing = stripPiece({
      id: 'shoulder-facing',
      title: { key: 'shoulder-studs.piece.facing', values: {} },
      length: front,
      width: overlap,
      upper: 'attach',
      lower: 'free',
      left: 'free',
      right: 'attach',
      cutting: { as: 'pair', copies: 2 },
      grain: 'along',
      cloth: 'main',
      markings: studs(front),
    });
    const lines = (piece: Piece) => ({ lines: piece.edges.map((edge) => edge.path) });
    bench.part({ key: 'shoulder-studs.draw', values: {} });
    bench.tell(
      'shoulder-studs.draw.stand',
      { length: { mm: back }, width: { mm: 2 * overlap } },
      lines(stand),
    );
    bench.part({ key: 'shoulder-studs.draw', values: {} });
    bench.tell(
      'shoulder-studs.draw.facing',
      { length: { mm: front }, width: { mm: overlap } },
      lines(facing),
    );
    bench.tell(
      'shoulder-studs.draw.studs',
      { count, ends: { mm: FROM_ENDS } },
      { lines: facing.markings.map((mark) => mark.path) },
    );
    const dress: Garment = {
      ...garment,
      pieces: [...garment.pieces, stand, facing],
      seams: [
        ...garment.seams.flatMap((seam) => (seam === shoulder ? [opened.closing, ...opened.rest] : [seam])),
        sewnOn('shoulder-strip', 'placket', opened.closing.b, {
          piece: stand.id,
          edge: 'lower',
          times: 2,
          reversed: true,
        }),
        sewnOn('shoulder-facing', 'facing', opened.closing.a, { piece: facing.id, edge: 'upper', times: 2 }),
      ],
      closing: { kind: 'shoulder-studs', openingLength: Math.min(front, back), count },
      trims: [
        ...garment.trims,
        {
          kind: 'studs',
          place: 'shoulder',
          diameter: values.studDiameter,
          pieces: [stand.id, facing.id],
        },
      ],
    };
    return done(dress);
  },
});

/** Parts a shoulder seam into what opens, from the neck to the shoulder tip, and what stays sewn over the arm. */
function openSeam(seam: Seam): { readonly closing: Seam; readonly rest: readonly Seam[] } | null {
  const opens = (edge: SeamEdge): boolean => edge.edge.startsWith('shoulder');
  const [a, b] = [seam.a.filter(opens), seam.b.filter(opens)];
  if (a.length === 0 || b.length === 0) return null;
  const restA = seam.a.filter((edge) => !opens(edge));
  const restB = seam.b.filter((edge) => !opens(edge));
  const runsOn = restA.length > 0 && restB.length > 0;
  return {
    closing: { ...seam, id: 'shoulder-opening', name: 'closing', a, b, smoothEnd: seam.smoothEnd && !runsOn },
    rest: runsOn ? [{ ...seam, a: restA, b: restB, smoothStart: false }] : [],
  };
}

const sewnOn = (id: string, name: 'placket' | 'facing', a: readonly SeamEdge[], b: SeamEdge): Seam => ({
  id,
  name,
  a,
  b: [b],
  join: { kind: 'flat' },
  smoothStart: false,
  smoothEnd: false,
});
