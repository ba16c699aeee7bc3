import { edgeAt, pieceAt, seamsNamed } from '../piece/index.ts';
import { fellOpening } from './closing-steps.ts';
import { clothKindOf, type SewLook } from './look.ts';
import { type Finish, finishOf, looseEdges } from './loose-edges.ts';
import { makeStep } from './make-step.ts';
import type { EdgeRef, SewStep } from './step.ts';
import { trimSteps } from './trim-steps.ts';
import { edgesOf, piecesOf, tell } from './words-of.ts';

/** The steps that the seams ask for, and those that finish what no seam takes up. */
export function withFinishing(look: SewLook, steps: readonly SewStep[]): readonly SewStep[] {
  const groups = new Map<string, { readonly finish: Grouped; readonly edges: EdgeRef[] }>();
  const withSeam = new Map<string, EdgeRef[]>();
  for (const at of looseEdges(look)) {
    const finish = finishOf(look, at);
    if (finish.as === 'with-seam') {
      withSeam.set(finish.seam, [...(withSeam.get(finish.seam) ?? []), at]);
      continue;
    }
    const key =
      'group' in finish
        ? `${finish.as} ${finish.group}`
        : 'piece' in finish
          ? `${finish.as} ${finish.piece}`
          : finish.as;
    const group = groups.get(key) ?? { finish, edges: [] };
    group.edges.push(at);
    groups.set(key, group);
  }
  const own: SewStep[] = [];
  const caught: EdgeRef[] = [];
  let felled: readonly EdgeRef[] = [];
  for (const { finish, edges } of groups.values()) {
    if (finish.as === 'felled') felled = edges;
    else if (finish.as === 'caught') caught.push(...edges);
    else own.push(finishingStep(look, finish, edges));
  }
  const host = (step: SewStep): SewStep => {
    const more = step.sews.flatMap((seam) => withSeam.get(seam) ?? []);
    return more.length === 0 ? step : { ...step, finishes: [...step.finishes, ...more] };
  };
  return [...closedAlong(look, steps.map(host), felled), ...own, ...trimSteps(look, caught)];
}

/** Loose edges of lining and facing at the opening are felled together with those that have a seam. */
function closedAlong(
  look: SewLook,
  steps: readonly SewStep[],
  loose: readonly EdgeRef[],
): readonly SewStep[] {
  if (loose.length === 0) return steps;
  const has = steps.find(({ id }) => id === 'fell-opening');
  const seams = look.garment.seams.filter(({ id }) => has?.sews.includes(id) === true);
  return [...steps.filter((step) => step !== has), fellOpening(look, seams, loose)];
}

/** Finishes that several edges may share. */
type Grouped = Exclude<Finish, { readonly as: 'with-seam' }>;

/** Finishes that take a step of their own. */
type OwnFinish = Exclude<Grouped, { readonly as: 'felled' } | { readonly as: 'caught' }>;

function finishingStep(look: SewLook, finish: OwnFinish, edges: readonly EdgeRef[]): SewStep {
  const named = { edges: edgesOf(look, edges), pieces: piecesOf(look, edges) };
  switch (finish.as) {
    case 'hem':
      return hem(look, finish.group, edges);
    case 'arm-hem':
      return makeStep(look, {
        id: `hem-${finish.group}`,
        kind: 'narrow-hem',
        finishes: edges,
        say: tell('sew.do.arm-hem', named),
      });
    case 'narrow':
      return makeStep(look, {
        id: `edge-${finish.group}`,
        kind: 'narrow-hem',
        finishes: edges,
        say: tell('sew.do.narrow-hem', named),
      });
    case 'raw':
      return makeStep(look, {
        id: `bind-${finish.group}`,
        kind: 'bind-raw',
        finishes: edges,
        say: tell('sew.do.bind-raw', named),
        reasons: [tell('sew.why.bind-raw')],
      });
    case 'waist-edge':
      return makeStep(look, {
        id: 'hem-waist',
        kind: 'narrow-hem',
        finishes: edges,
        say: tell('sew.do.waist-edge', named),
      });
    case 'own-edge':
      return makeStep(look, {
        id: `turn-${finish.group}`,
        kind: 'turn-edge',
        finishes: edges,
        say: tell('sew.do.turn-edge', named),
      });
    case 'mounted':
      return makeStep(look, {
        id: 'mount-lining',
        kind: 'mount',
        finishes: edges,
        say: tell('sew.do.mount', named),
        reasons: [tell('sew.why.mount')],
      });
    case 'overlap':
      return makeStep(look, {
        id: 'overlap-ends',
        kind: 'turn-edge',
        finishes: edges,
        say: tell(
          edges.some((at) => pieceAt(look, at).layer === 'lining')
            ? 'sew.do.overlap-bagged'
            : 'sew.do.overlap-ends',
          named,
        ),
      });
    case 'made':
      return makeStep(look, {
        id: `make-${finish.group}`,
        kind: 'make-trim',
        finishes: edges,
        say: tell(isDisc(look, edges) ? 'sew.do.make-disc' : 'sew.do.make', named),
      });
    case 'neatened':
      return makeStep(look, {
        id: 'neaten-facings',
        kind: 'neaten',
        finishes: edges,
        say: tell('sew.do.neaten', named),
      });
  }
}

/** A piece with one edge all round is drawn up over a button, not turned. */
const isDisc = (look: SewLook, edges: readonly EdgeRef[]): boolean =>
  edges.every((at) => pieceAt(look, at).edges.length === 1);

/** Net is cut level and left; a curved hem is turned narrowly after hanging; a straight one deep. */
function hem(look: SewLook, ring: string, edges: readonly EdgeRef[]): SewStep {
  const named = { edges: edgesOf(look, edges), pieces: piecesOf(look, edges) };
  const id = `hem-${ring}`;
  if (edges.every((at) => clothKindOf(look, pieceAt(look, at)) === 'net')) {
    return makeStep(look, {
      id,
      kind: 'trim-net',
      station: 'hand',
      finishes: edges,
      say: tell('sew.do.trim-net', named),
      reasons: [tell('sew.why.trim-net')],
    });
  }
  if (edges.some((at) => edgeAt(look, at).kind === 'curved-hem')) {
    return makeStep(look, {
      id,
      kind: 'narrow-hem',
      finishes: edges,
      say: tell('sew.do.curved-hem', named),
      reasons: [tell('sew.why.curved-hem')],
    });
  }
  const pleated = isPleated(look, ring);
  const lining = edges.every((at) => pieceAt(look, at).layer === 'lining');
  return makeStep(look, {
    id,
    kind: 'hem',
    station: lining ? 'machine' : 'hand',
    finishes: edges,
    say: tell(lining ? 'sew.do.hem-lining' : 'sew.do.hem', named),
    reasons: [pleated ? tell('sew.why.hem-first') : lining ? null : tell('sew.why.hem-last')],
  });
}

/** Pleats are pressed to the edge, so the hem must be there before them. */
export const isPleated = (look: SewLook, ring: string): boolean =>
  seamsNamed(look, 'skirt-waist').some(
    (seam) => seam.join.kind === 'pleated' && seam.b.some((at) => look.ringOf(at.piece) === ring),
  );
