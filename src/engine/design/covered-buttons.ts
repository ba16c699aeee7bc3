import type { Piece, Trim } from '../piece/index.ts';
import { grainThrough } from '../piece/index.ts';
import { circlePath } from './circle-path.ts';
import { freshId } from './long-strip.ts';
import { COMMON_PRACTICE, countParam, defineStep, done, lengthParam, type StepContext } from './step.ts';

const backButtons = ({ garment }: StepContext) =>
  garment.closing?.kind === 'buttons' ? garment.closing : null;

/** Discs of cloth to cover buttons with. */
export const coveredButtons = defineStep({
  id: 'covered-buttons',
  stage: 'trim',
  kind: null,
  params: {
    buttonCount: countParam(
      (c) => backButtons(c)?.count ?? 3,
      [1, 60],
      'as many as close the back; else three for show (common practice, no source)',
    ),
    diameter: lengthParam(
      (c) => backButtons(c)?.diameter ?? 12,
      () => [4, 50],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'Covered buttons',
    about: 'Discs of cloth, twice as wide as the buttons that they cover.',
    buttonCount: 'Buttons',
    diameter: 'Button, across',
    'piece.disc': 'Button cover',
    draw: 'Covered buttons',
    'draw.disc':
      'Draw a circle {disc} across, twice the button of {button}; nothing is added to it. Cut {count}, gather the edge and draw it up behind the button.',
  },
  apply: ({ garment, bench }, values) => {
    const diameter = bench.rounded(values.diameter);
    const disc = discPiece(freshId(garment, 'button-cover'), diameter, values.buttonCount);
    bench.part({ key: 'covered-buttons.draw', values: {} });
    bench.tell(
      'covered-buttons.draw.disc',
      { disc: { mm: 2 * diameter }, button: { mm: diameter }, count: values.buttonCount },
      { lines: disc.edges.map((edge) => edge.path) },
    );
    // Buttons that close the back are told of by the closing.
    const forShow: readonly Trim[] =
      garment.closing?.kind === 'buttons'
        ? []
        : [{ kind: 'buttons', place: 'chest', diameter, pieces: [disc.id] }];
    return done({
      ...garment,
      pieces: [...garment.pieces, disc],
      trims: [...garment.trims, ...forShow],
    });
  },
});

/** A cloth disc of twice the button's diameter is its cut size (common practice, no source). */
const discPiece = (id: string, diameter: number, copies: number): Piece => ({
  id,
  title: { key: 'covered-buttons.piece.disc', values: {} },
  edges: [{ name: 'rim', kind: 'free', path: circlePath({ x: 0, y: 0 }, diameter), allowance: 0 }],
  cloth: 'trim',
  layer: 'shell',
  cutting: { as: 'single', copies },
  grain: grainThrough({ x: 0, y: 0 }, diameter),
  notches: [],
  markings: [],
});
