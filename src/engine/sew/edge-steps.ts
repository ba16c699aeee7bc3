import { edgeAt, type Seam, seamsNamed } from '../piece/index.ts';
import { isClosedOver, layerOf, refsOf, type SewLook, usesOf } from './look.ts';
import { makeStep } from './make-step.ts';
import type { SewStep, StepKind } from './step.ts';
import { edgesOf, piecesOf, tell } from './words-of.ts';

/** Necks and armholes: what is sewn round them, how the lining, a facing or a binding closes them, turning. */
export function edgeSteps(look: SewLook): readonly SewStep[] {
  return [
    ...roundEdges(look, 'collar', 'collar'),
    ...roundEdges(look, 'frill', 'frill'),
    ...roundEdges(look, 'trim', 'trim-edge'),
    ...roundEdges(look, 'strap', 'trim-edge'),
    ...neckLinings(look),
    ...armholeLinings(look),
    ...facings(look),
    ...bindings(look),
  ];
}

/** Ends of a strip joined to themselves first, then its long edge sewn on, gathered where it is fuller. */
function roundEdges(
  look: SewLook,
  name: 'collar' | 'frill' | 'trim' | 'strap',
  kind: StepKind,
): readonly SewStep[] {
  return seamsNamed(look, name).flatMap((seam) => {
    const at = usesOf(seam);
    if (new Set(at.map(({ piece }) => piece)).size === 1) return [joinOfStrip(look, seam)];
    return [
      makeStep(look, {
        id: seam.id,
        kind,
        seams: [seam],
        say: tell('sew.do.round-edge', {
          piece: piecesOf(look, seam.b),
          edges: edgesOf(look, refsOf(seam.a)),
        }),
        reasons: [name === 'collar' ? tell('sew.why.collar') : null],
      }),
    ];
  });
}

export const joinOfStrip = (look: SewLook, seam: Seam): SewStep =>
  makeStep(look, {
    id: seam.id,
    kind: 'seam',
    seams: [seam],
    say: tell('sew.do.strip-join', { piece: piecesOf(look, usesOf(seam)) }),
  });

function neckLinings(look: SewLook): readonly SewStep[] {
  return seamsNamed(look, 'neck-lining').flatMap((seam) => {
    if (isClosedOver(look, seam)) return [layers(look, seam)];
    const apart = look.armholes === 'shoulders-last';
    return [
      makeStep(look, {
        id: seam.id,
        kind: 'neck',
        seams: [seam],
        inParts: apart,
        allowances: 'enclosed',
        say: tell(apart ? 'sew.do.neck-apart' : 'sew.do.neck', { edges: edgesOf(look, seam.a) }),
        reasons: [tell('sew.why.neck')],
      }),
      understitch(look, seam),
    ];
  });
}

const layers = (look: SewLook, seam: Seam): SewStep =>
  makeStep(look, {
    id: seam.id,
    kind: 'layers',
    seams: [seam],
    allowances: 'enclosed',
    say: tell('sew.do.layers', { edges: edgesOf(look, seam.a) }),
    reasons: [tell('sew.why.layers')],
  });

const understitch = (look: SewLook, seam: Seam): SewStep =>
  makeStep(look, {
    id: `understitch-${seam.id}`,
    kind: 'understitch',
    sideA: refsOf(seam.b),
    say: tell('sew.do.understitch', { edges: edgesOf(look, seam.b) }),
    reasons: [tell('sew.why.understitch')],
  });

function armholeLinings(look: SewLook): readonly SewStep[] {
  const steps = seamsNamed(look, 'armhole-lining').flatMap((seam) => {
    if (isClosedOver(look, seam)) return [layers(look, seam)];
    if (look.armholes === 'by-hand') {
      const bare = seam.a.every((at) => look.seamsAt(at).length === 1);
      return [
        makeStep(look, {
          id: seam.id,
          kind: 'fell',
          station: 'hand',
          seams: [seam],
          allowances: 'enclosed',
          say: tell('sew.do.fell-armhole', { edges: edgesOf(look, seam.a) }),
          reasons: [tell(bare ? 'sew.why.fell-bare' : 'sew.why.fell-sleeve')],
        }),
      ];
    }
    const apart = look.armholes === 'shoulders-last';
    return [
      makeStep(look, {
        id: seam.id,
        kind: 'armholes',
        seams: [seam],
        inParts: apart,
        allowances: 'enclosed',
        say: tell(apart ? 'sew.do.armholes-apart' : 'sew.do.armholes', { edges: edgesOf(look, seam.a) }),
        reasons: [tell('sew.why.armholes')],
      }),
    ];
  });
  return steps.some(({ kind }) => kind === 'armholes') ? [...steps, turning(look)] : steps;
}

/** The bagged bodice is turned to its right side. */
function turning(look: SewLook): SewStep {
  const seams = seamsNamed(look, 'shoulder').filter((seam) => layerOf(look, seam) === 'shell');
  const through = look.armholes === 'through-shoulder';
  const edges = refsOf(seams.flatMap(usesOf));
  return makeStep(look, {
    id: 'turn',
    kind: 'turn',
    station: 'hand',
    sideA: edges,
    say: tell(through ? 'sew.do.turn-through' : 'sew.do.turn-apart'),
    reasons: [through ? tell('sew.why.turn-through') : null],
  });
}

/** A facing is joined to itself first; then it is sewn on, turned and understitched. */
function facings(look: SewLook): readonly SewStep[] {
  return seamsNamed(look, 'facing').flatMap((seam) => {
    const pieces = (side: Seam['a']): Set<string> => new Set(side.map(({ piece }) => piece));
    const doubled = [...pieces(seam.a)].every((piece) => pieces(seam.b).has(piece));
    const inner = usesOf(seam).every((at) => at.piece.includes('facing'));
    if (inner) return [joinOfStrip(look, seam)];
    return [
      makeStep(look, {
        id: seam.id,
        kind: 'face',
        seams: [seam],
        allowances: 'enclosed',
        say: doubled
          ? tell('sew.do.face-itself', { piece: piecesOf(look, seam.a), edges: edgesOf(look, seam.a) })
          : tell('sew.do.face', { facing: piecesOf(look, seam.b), edges: edgesOf(look, seam.a) }),
      }),
      ...(doubled || !seam.a.some((at) => edgeAt(look, at).kind === 'neck') ? [] : [understitch(look, seam)]),
    ];
  });
}

function bindings(look: SewLook): readonly SewStep[] {
  return seamsNamed(look, 'binding').map((seam) => {
    if (new Set(usesOf(seam).map(({ piece }) => piece)).size === 1) return joinOfStrip(look, seam);
    return makeStep(look, {
      id: seam.id,
      kind: 'bind',
      seams: [seam],
      allowances: 'enclosed',
      say: tell('sew.do.bind', { binding: piecesOf(look, seam.b), edges: edgesOf(look, seam.a) }),
    });
  });
}
