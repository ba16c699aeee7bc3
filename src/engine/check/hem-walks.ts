import { pathBounds } from '../geometry/index.ts';
import { skirtDepth } from '../piece/index.ts';
import { naturalWaist } from './body-level.ts';
import { type Level, tell } from './check.ts';
import { bodiceOf, edgesOfKind, girthOf, type Look, placeOf, type Rule } from './look.ts';
import { SLACK } from './tolerance.ts';

/** At knee length a child walks in a hem of 1.2 to 1.5 times the hips (common practice, no source). */
const AT_KNEE = 1.2;
/**
 * At floor length 140 to 160 cm from 4 to 8 years, which is about 2.3 times the hips (common practice, no source);
 * a long gown wants the most at the hem.
 */
const AT_FLOOR = 2.3;
/** The hips lie about this share of the way from the waist down to the knee (our own measure of it). */
const HIP_DOWN = 0.4;

/**
 * The hem of the skirt is wide enough to walk in. What is needed grows from the hips themselves to 1.2 times at the
 * knee and on to the floor; between these levels straight (our own rule).
 */
export const hemWalks: Rule = (look) => {
  const skirt = look.garment.pieces.filter((piece) => piece.layer === 'shell' && piece.cloth === 'skirt');
  const hems = edgesOfKind(skirt, 'hem', 'curved-hem');
  const height = hemHeight(look);
  if (hems.length === 0 || height === null) return [];
  const hip = look.body.values.hipGirth.mm;
  const hem = girthOf(look, hems);
  const least = hip * timesHips(look, height);
  const variant = hem >= least - SLACK ? 'ok' : hem >= hip - SLACK ? 'warn' : 'stop';
  const values = {
    hem: { mm: hem },
    hip: { mm: hip },
    least: { mm: least },
    more: { mm: Math.max(0, least - hem) },
  };
  return [
    {
      code: 'hem-walks',
      level: variant satisfies Level,
      measured: { mm: hem },
      allowed: { from: { mm: least } },
      where: placeOf(hems),
      say: tell(`check.hem-walks.${variant}`, values),
      todo: variant === 'ok' ? null : tell('check.hem-walks.todo', values),
    },
  ];
};

/** Height of the hem above the floor, mm; null where there is no skirt or no waist seam. */
function hemHeight(look: Look): number | null {
  const waist = edgesOfKind(bodiceOf(look), 'waist');
  const depth = skirtDepth(look.garment);
  if (waist.length === 0 || depth === null) return null;
  const seam = Math.max(...waist.map(({ edge }) => pathBounds(edge.path).maxY));
  return look.body.values.waistHeight.mm + naturalWaist(look.body) - seam - depth;
}

/** How many times the hips a hem must measure that hangs this high above the floor. */
function timesHips({ body: { values } }: Look, height: number): number {
  const knee = values.kneeHeight.mm;
  if (height <= knee) return AT_KNEE + (AT_FLOOR - AT_KNEE) * Math.min(1, (knee - height) / knee);
  const hips = values.waistHeight.mm - HIP_DOWN * (values.waistHeight.mm - knee);
  return 1 + (AT_KNEE - 1) * Math.max(0, Math.min(1, (hips - height) / (hips - knee)));
}
