import { type Garment, grainThrough, type Join, type Piece, type Seam } from '../piece/index.ts';
import { armBandPiece } from './arm-band-piece.ts';
import { openArm } from './arm-opening.ts';
import { armEdgeLength, armRing, notchArmEdge, notchStyle } from './armhole-ring.ts';
import { HALVES } from './bodice.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, lengthParam } from './step.ts';

/** Twice as long and a strip is well gathered; three times is the most that is sewn in light cloth (a blog, after D. C. Lo). */
const MOST_GATHERS = 3;

/**
 * A straight strip round the arm, cut in one from underarm to underarm over the shoulder. Its length decides its
 * shape: as long as the edge it is a band, longer a gathered frill.
 */
export const edgeStrip = defineStep({
  id: 'edge-strip',
  stage: 'set-in',
  kind: 'arm-edge',
  params: {
    stripLength: lengthParam(
      ({ garment }) => 1.8 * armRound(garment),
      ({ garment }) => [armRound(garment) - 0.5, MOST_GATHERS * armRound(garment)],
      'gathers in medium cloth 2, in heavy 1.5 (a blog, after D. C. Lo); as long as the edge: a band',
    ),
    depth: lengthParam(
      () => 50,
      ({ body }) => [15, body.values.armLength.mm / 2],
      COMMON_PRACTICE,
    ),
    finish: choiceParam(['hemmed', 'doubled'], 'hemmed', COMMON_PRACTICE),
  },
  words: {
    title: 'Strip on the armhole edge',
    about: 'A straight strip from underarm to underarm over the shoulder: a band, or longer and a frill.',
    stripLength: 'Length of the strip: as long as the edge for a band, longer for a frill',
    depth: 'Finished depth',
    finish: 'Outer edge',
    'finish.hemmed': 'Hemmed',
    'finish.doubled': 'Doubled, its fold outside',
    'no-edge':
      'A strip needs an open armhole or the straight edge of a drop shoulder. Choose the straight edge, or leave the sleeve out.',
    'piece.strip': 'Armhole strip',
    draw: 'Armhole strip',
    'draw.strip': '{piece}: rule a rectangle {length} long and {depth} deep. Cut one for each arm.',
    'draw.band': 'It is as long as the edge round the arm: sew it on flat, its ends joined at the underarm.',
    'draw.frill':
      'Join its ends at the underarm and gather it to the edge round the arm, {edge} in all, evenly over the shoulder.',
  },
  apply: ({ garment, bench }, values) => {
    const name = openArm(garment);
    if (name === null || armRound(garment) === 0) return cannot('edge-strip.no-edge');
    const [front, back] = [armEdgeLength(garment, 'front', name), armEdgeLength(garment, 'back', name)];
    const edge = front + back;
    const wished = bench.rounded(values.stripLength);
    // A strip that is told to be as long as the edge is exactly so, whatever the ruler shows.
    const length = wished <= edge + 1 ? edge : wished;
    const ratio = length / edge;
    const isDoubled = values.finish === 'doubled';
    const depth = bench.rounded(values.depth) * (isDoubled ? 2 : 1);
    const strip: Piece = {
      ...armBandPiece({
        id: 'sleeve-strip',
        title: { key: 'edge-strip.piece.strip', values: {} },
        length,
        overlap: 0,
        depth,
        top: 'cap',
        ends: 'join',
        foot: isDoubled ? 'attach' : 'sleeve-hem',
      }),
      grain: grainThrough({ x: length / 2, y: depth / 2 }, depth * 0.6),
    };
    bench.part({ key: 'edge-strip.draw', values: {} });
    bench.tell(
      'edge-strip.draw.strip',
      { piece: strip.title, length: { mm: length }, depth: { mm: depth } },
      { lines: strip.edges.map((e) => e.path) },
    );
    bench.tell(ratio === 1 ? 'edge-strip.draw.band' : 'edge-strip.draw.frill', { edge: { mm: edge } });
    const join: Join = ratio === 1 ? { kind: 'flat' } : { kind: 'gathered', ratio };
    const on = (part: string, reversed = false) => ({ piece: strip.id, edge: part, times: 2, reversed });
    const seam = (id: string, rest: Pick<Seam, 'name' | 'a' | 'b' | 'join'>): Seam => ({
      id: `sleeve-strip-${id}`,
      ...rest,
      smoothStart: false,
      smoothEnd: false,
    });
    const seams = [
      seam('sewn-on', {
        name: ratio === 1 ? 'band' : 'frill',
        a: armRing(garment, name),
        b: [on('attach')],
        join,
      }),
      seam('ring', {
        name: 'sleeve-underarm',
        a: [on('end')],
        b: [on('start', true)],
        join: { kind: 'flat' },
      }),
      ...(isDoubled
        ? [seam('inside', { name: 'band', a: [on('attach')], b: [on('foot', true)], join: { kind: 'flat' } })]
        : []),
    ];
    // The strip runs from the underarm up the front and down the back; a notch half-way down each.
    let dress = garment;
    for (const half of HALVES) {
      const down = half === 'front' ? front / 2 : back / 2;
      dress = notchArmEdge(dress, half, name, down, `sleeve-strip-${half}`);
    }
    const notches = HALVES.map((half) => ({
      edge: 'attach',
      at: ratio * (half === 'front' ? front / 2 : front + back / 2),
      style: notchStyle(half),
      match: `sleeve-strip-${half}`,
    }));
    return done({
      ...dress,
      pieces: [...dress.pieces, { ...strip, notches }],
      seams: [...dress.seams, ...seams],
    });
  },
});

/** Length of the edge round one arm to which a strip can be sewn, mm; 0 when there is none. */
export function armRound(garment: Garment): number {
  const name = openArm(garment);
  return name === null ? 0 : HALVES.reduce((sum, half) => sum + armEdgeLength(garment, half, name), 0);
}
