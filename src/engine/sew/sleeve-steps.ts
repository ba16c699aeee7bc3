import { type Seam, seamsNamed } from '../piece/index.ts';
import { refsOf, type SewLook, usesOf } from './look.ts';
import { makeStep } from './make-step.ts';
import type { SewStep } from './step.ts';
import { edgesOf, piecesOf, tell } from './words-of.ts';

/** Sleeves from the slit to the armhole: plackets, seams, cuffs and bands, setting in. */
export function sleeveSteps(look: SewLook): readonly SewStep[] {
  return [
    ...seamsNamed(look, 'placket').map((seam) => placket(look, seam)),
    ...seamsNamed(look, 'sleeve-underarm').map((seam) => sleeveSeam(look, seam)),
    ...seamsNamed(look, 'cuff', 'band').flatMap((seam) => cuff(look, seam)),
    ...setting(look),
  ];
}

const placket = (look: SewLook, seam: Seam): SewStep =>
  makeStep(look, {
    id: seam.id,
    kind: 'placket',
    seams: [seam],
    allowances: 'enclosed',
    say: isFolded(seam)
      ? tell('sew.do.slit', { piece: piecesOf(look, seam.b) })
      : tell('sew.do.placket', { piece: piecesOf(look, seam.b), edges: edgesOf(look, refsOf(seam.a)) }),
  });

/** A strip that is sewn to itself only: folded over the edge of a slit or a seam. */
const isFolded = (seam: Seam): boolean => new Set(usesOf(seam).map(({ piece }) => piece)).size === 1;

const sleeveSeam = (look: SewLook, seam: Seam): SewStep =>
  makeStep(look, {
    id: seam.id,
    kind: 'sleeve-seam',
    seams: [seam],
    say: tell('sew.do.sleeve-seam', { pieces: piecesOf(look, usesOf(seam)) }),
  });

/** The outer layer is sewn on, gathered where the sleeve is fuller; then the inner one is closed over the seam. */
function cuff(look: SewLook, seam: Seam): readonly SewStep[] {
  const inside = isFolded(seam);
  return [
    makeStep(look, {
      id: seam.id,
      kind: 'cuff',
      station: inside ? 'hand' : 'machine',
      seams: [seam],
      allowances: 'enclosed',
      say: inside
        ? tell('sew.do.cuff-inside', { piece: piecesOf(look, seam.a) })
        : tell('sew.do.cuff', { edges: edgesOf(look, usesOf(seam)) }),
    }),
  ];
}

/** Front and back of a cap are two seams and one movement. */
function setting(look: SewLook): readonly SewStep[] {
  const seams = seamsNamed(look, 'sleeve-cap');
  if (seams.length === 0) return [];
  // A lining that ends below a yoke leaves the seam open to the inside there.
  const lined = seams
    .flatMap((seam) => seam.a)
    .every((at) => look.seamsAt(at).some(({ name }) => name === 'armhole-lining'));
  return [
    makeStep(look, {
      id: 'set-sleeves',
      kind: 'set-sleeve',
      seams,
      allowances: lined ? 'enclosed' : 'neatened',
      say: tell('sew.do.set-sleeve', {
        pieces: piecesOf(
          look,
          seams.flatMap((seam) => seam.b),
        ),
      }),
      reasons: [tell('sew.why.set-sleeve')],
    }),
  ];
}
