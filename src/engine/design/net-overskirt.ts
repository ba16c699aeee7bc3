import { skirtDepth } from '../piece/index.ts';
import { gatheredPanels, type SkirtParts } from './gathered-panels.ts';
import { netLayers } from './net-layers.ts';
import { skirtLength } from './skirt-params.ts';
import {
  COMMON_PRACTICE,
  cannot,
  choiceParam,
  countParam,
  defineStep,
  done,
  lengthParam,
  ratioParam,
} from './step.ts';
import { tellPanels } from './tell-panels.ts';
import { matchWaist } from './waist-notches.ts';
import { closingBelowWaist, waistRing } from './waist-ring.ts';

/** Shortest layer that is made, mm; a shorter one would be a frill. */
const LEAST_LENGTH = 50;

/** Layers of gathered net over the skirt, sewn in its waist seam. */
export const netOverskirt = defineStep({
  id: 'net-overskirt',
  stage: 'over-skirt',
  kind: 'overskirt',
  params: {
    layers: countParam(() => 2, [1, 8], COMMON_PRACTICE),
    ratio: ratioParam(() => 3, [1.2, 4], 'light net 3-4 (Lo, Pattern Cutting, as reported); stiff net 2-3'),
    length: lengthParam(
      (c) => skirtDepth(c.garment) ?? skirtLength.rule(c),
      skirtLength.range,
      'as long as the skirt beneath (common practice, no source)',
    ),
    differ: lengthParam(
      () => 0,
      () => [0, 150],
      COMMON_PRACTICE,
    ),
    way: choiceParam(['shorter', 'longer'], 'shorter', COMMON_PRACTICE),
  },
  words: {
    title: 'Overskirt of net',
    about: 'Layers of gathered net over the skirt, sewn in its waist seam.',
    layers: 'Layers',
    ratio: 'Times the waist',
    length: 'Length of the layer next to the skirt, from the waist seam',
    differ: 'Each layer over it differs by',
    way: 'Outer layers are',
    'way.shorter': 'shorter',
    'way.longer': 'longer',
    'no-waist': 'The bodice has no waist seam to sew an overskirt to.',
    'too-short':
      'The outermost layer would be only {length} long. Let the layers differ by {most} at most, or take fewer.',
    'piece.front': 'Overskirt front',
    'piece.back': 'Overskirt back',
    'piece.layer-front': 'Overskirt front, layer {layer}',
    'piece.layer-back': 'Overskirt back, layer {layer}',
    draw: 'Overskirt of net',
    'draw.layers':
      'Cut for {layers} layers in all. Gather the layers in groups, and sew them to the waist in another pass than the skirt.',
    'draw.opening':
      'The opening edges of the net get no allowance: they meet at the closing and are not folded into its seam.',
    'draw.fire':
      'Light net burns fast: keep it away from candles and open fire, and follow your local rules.',
  },
  apply: ({ garment, bench, clothWidth }, values) => {
    const ring = waistRing(garment);
    if (ring === null) return cannot('net-overskirt.no-waist');
    const [length, differ] = [bench.rounded(values.length), bench.rounded(values.differ)];
    const step = values.way === 'shorter' ? -differ : differ;
    const last = length + step * (values.layers - 1);
    if (last < LEAST_LENGTH) {
      return cannot('net-overskirt.too-short', {
        length: { mm: Math.max(0, last) },
        most: { mm: Math.max(0, (length - LEAST_LENGTH) / (values.layers - 1)) },
      });
    }
    // Layers of one length share a pattern; others have each their own.
    const alike = step === 0 || values.layers === 1;
    const patterns = Array.from({ length: alike ? 1 : values.layers }, (_, i): SkirtParts => {
      const title = (half: 'front' | 'back') =>
        alike
          ? { key: `net-overskirt.piece.${half}`, values: {} }
          : { key: `net-overskirt.piece.layer-${half}`, values: { layer: i + 1 } };
      const parts = gatheredPanels({
        ring,
        ratio: values.ratio,
        length: length + step * i,
        usableWidth: clothWidth.net,
        cloth: 'net',
        layer: 'shell',
        prefix: `overskirt-${i + 1}`,
        titles: { front: title('front'), back: title('back') },
        closingBelow: closingBelowWaist(garment),
        seamName: 'overskirt-waist',
      });
      return netLayers(parts, alike ? values.layers : 1);
    });
    const pieces = patterns.flatMap((parts) => parts.pieces);
    tellPanels(bench, { key: 'net-overskirt.draw', values: {} }, pieces);
    bench.tell('net-overskirt.draw.layers', { layers: values.layers });
    if (pieces.some((piece) => piece.edges.some((edge) => edge.kind === 'closing')))
      bench.tell('net-overskirt.draw.opening', {});
    bench.tell('net-overskirt.draw.fire', {});
    const sewn = patterns.reduce((dress, parts, i) => {
      const matched = matchWaist(dress, ring, `overskirt-${i + 1}`, parts.pieces);
      return {
        ...matched.garment,
        pieces: [...matched.garment.pieces, ...matched.pieces],
        seams: [...matched.garment.seams, ...parts.seams],
      };
    }, garment);
    return done(sewn);
  },
});
