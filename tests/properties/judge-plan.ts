import { type EdgeName, type Garment, type Piece, pieceOf, type Seam } from '../../src/engine/piece/index.ts';
import type { PlannedStep, SewPlan } from '../../src/engine/sew/index.ts';

/**
 * Judges an order of work by sewing it in thought: it knows the garment and the list of steps, and nothing of how the
 * list was made. Gives what is wrong, in words for whoever mends the planner.
 */
export function faultsOfPlan(garment: Garment, plan: SewPlan): readonly string[] {
  const work: Work = { garment, steps: plan.steps, doneAt: doneAt(plan.steps) };
  return [
    ...needsAreDone(work),
    ...everySeamOnce(work),
    ...everyEdgeFinished(work),
    ...nothingAcrossOpenCorners(work),
    ...fullnessHeld(work),
    ...dartsFirst(work),
    ...edgesTurnedWhole(work),
    ...turnedWhileOpen(work),
    ...openingInOrder(work),
    ...partsMadeFirst(work),
    ...closedInsideLast(work),
    ...enclosedByTwoLayers(work),
  ];
}

interface Work {
  readonly garment: Garment;
  readonly steps: readonly PlannedStep[];
  /** The place in the list at which each seam is sewn. */
  readonly doneAt: ReadonlyMap<string, number>;
}

const doneAt = (steps: readonly PlannedStep[]): ReadonlyMap<string, number> =>
  new Map(steps.flatMap((step, i) => step.sews.map((seam) => [seam, i] as const)));

type At = { readonly piece: string; readonly edge: EdgeName };
const name = ({ piece, edge }: At): string => `${piece}.${edge}`;
const usesOf = (seam: Seam): readonly At[] => [...seam.a, ...seam.b];

function needsAreDone({ steps }: Work): readonly string[] {
  const places = new Map(steps.map(({ id }, i) => [id, i]));
  const twice = places.size === steps.length ? [] : ['two steps have one name'];
  const last = steps.at(-1)?.kind === 'press' ? [] : ['the last step is not the last pressing'];
  return [
    ...twice,
    ...last,
    ...steps.flatMap((step, i) =>
      step.needs
        .filter((id) => !((places.get(id) ?? Number.POSITIVE_INFINITY) < i))
        .map((id) => `${step.id} stands before ${id}, which it needs`),
    ),
  ];
}

function everySeamOnce({ garment, steps }: Work): readonly string[] {
  const sewn = steps.flatMap(({ sews }) => sews);
  return [
    ...garment.seams.flatMap(({ id }) => {
      const times = sewn.filter((other) => other === id).length;
      return times === 1 ? [] : [`seam ${id} is sewn ${times} times`];
    }),
    ...sewn
      .filter((id) => garment.seams.every((seam) => seam.id !== id))
      .map((id) => `there is no seam ${id}`),
  ];
}

/** By a seam, or by a step that turns, binds, trims or sews it to its own back; and by one of them only. */
function everyEdgeFinished({ garment, steps }: Work): readonly string[] {
  const finished = steps.flatMap(({ finishes }) => finishes).map(name);
  return garment.pieces.flatMap((piece) =>
    piece.edges
      .filter(({ kind }) => kind !== 'fold')
      .flatMap((edge) => {
        const at = { piece: piece.id, edge: edge.name };
        const seams = garment.seams.filter((seam) => usesOf(seam).some((use) => name(use) === name(at)));
        const times = finished.filter((other) => other === name(at)).length;
        if (seams.length > 0) return times === 0 ? [] : [`${name(at)} is both sewn and turned`];
        if (times === 1 || (times === 0 && isNamedByItsTwin(garment, piece, edge.name))) return [];
        return [`${name(at)} (${edge.kind}) is finished ${times} times`];
      }),
  );
}

/** One gore between two that mirror each other: its left edge is named for both of its sides. */
const isNamedByItsTwin = (garment: Garment, piece: Piece, edge: EdgeName): boolean =>
  piece.cutting.as === 'single' &&
  piece.edges.find((e) => e.name === edge)?.kind === 'join' &&
  garment.seams.some((seam) =>
    [...seam.a, ...seam.b].some((at) => at.piece === piece.id && at.times > piece.cutting.copies),
  );

function beside(garment: Garment, at: At): readonly string[] {
  const { edges } = pieceOf(garment, at.piece);
  const here = edges.findIndex((edge) => edge.name === at.edge);
  return [edges.at(here - 1), edges.at((here + 1) % edges.length)].flatMap((edge) =>
    edge === undefined ? [] : [name({ piece: at.piece, edge: edge.name })],
  );
}

/** Where a side of a seam passes from piece to piece, the two are already sewn together at that corner. */
function nothingAcrossOpenCorners({ garment, steps, doneAt: at }: Work): readonly string[] {
  return garment.seams.flatMap((seam) => {
    const here = at.get(seam.id) ?? -1;
    if (steps[here]?.inParts === true) return [];
    return [seam.a, seam.b].flatMap((side) =>
      side.flatMap((use, i) => {
        const next = side[i + 1];
        if (next === undefined || next.piece === use.piece) return [];
        const [ours, theirs] = [beside(garment, use), beside(garment, next)];
        const joining = garment.seams.filter(
          (other) =>
            other.name !== 'closing' &&
            other.id !== seam.id &&
            // An armhole ends at the side on either hand; it does not run over it.
            !(other.name === 'side' && isArmhole(garment, use)) &&
            ((other.a.some((u) => ours.includes(name(u))) && other.b.some((u) => theirs.includes(name(u)))) ||
              (other.b.some((u) => ours.includes(name(u))) && other.a.some((u) => theirs.includes(name(u))))),
        );
        return joining
          .filter((other) => !((at.get(other.id) ?? Number.POSITIVE_INFINITY) < here))
          .map((other) => `${seam.id} runs over ${other.id}, which is not sewn yet`);
      }),
    );
  });
}

const isArmhole = (garment: Garment, at: At): boolean => {
  const kind = pieceOf(garment, at.piece).edges.find((edge) => edge.name === at.edge)?.kind ?? 'free';
  return ['armhole', 'sleeve-hem', 'curved-sleeve-hem'].includes(kind);
};

function fullnessHeld({ garment, steps, doneAt: at }: Work): readonly string[] {
  return garment.seams.flatMap((seam) => {
    if (seam.join.kind !== 'gathered' && seam.join.kind !== 'pleated') return [];
    const kind = seam.join.kind === 'gathered' ? 'gather' : 'pleats';
    const here = at.get(seam.id) ?? -1;
    const drawn = steps.findIndex(
      (step) =>
        step.kind === kind && seam.b.every((use) => step.sideA.some((shown) => name(shown) === name(use))),
    );
    return drawn >= 0 && drawn < here ? [] : [`${seam.id} is sewn before its ${kind}`];
  });
}

/** A dart ends in an edge that a seam takes up: sewn later, it would have to be folded through that seam. */
function dartsFirst({ garment, doneAt: at }: Work): readonly string[] {
  return garment.seams
    .filter((seam) => seam.name === 'dart')
    .flatMap((dart) => {
      const ends = usesOf(dart).flatMap((use) => beside(garment, use));
      return garment.seams
        .filter(
          (seam) =>
            !['dart', 'own'].includes(seam.name) && usesOf(seam).some((use) => ends.includes(name(use))),
        )
        .filter((seam) => (at.get(seam.id) ?? -1) <= (at.get(dart.id) ?? Number.POSITIVE_INFINITY))
        .map((seam) => `${seam.id} is sewn before ${dart.id}`);
    });
}

/** A hem runs over the joins of its widths and over side and sleeve seams: those are sewn when it is turned. */
function edgesTurnedWhole({ garment, steps, doneAt: at }: Work): readonly string[] {
  return steps.flatMap((step, here) =>
    step.finishes
      .filter((edge) => {
        const kind = pieceOf(garment, edge.piece).edges.find((e) => e.name === edge.edge)?.kind ?? 'free';
        return ['hem', 'curved-hem', 'sleeve-hem', 'curved-sleeve-hem'].includes(kind);
      })
      .flatMap((edge) => {
        const ends = beside(garment, edge);
        return garment.seams
          .filter((seam) => ['skirt-join', 'side', 'sleeve-underarm', 'shoulder'].includes(seam.name))
          .filter((seam) => usesOf(seam).some((use) => ends.includes(name(use))))
          .filter((seam) => !((at.get(seam.id) ?? Number.POSITIVE_INFINITY) < here))
          .map((seam) => `${step.id} comes before ${seam.id}`);
      }),
  );
}

/** The bodice is turned through its shoulders: back and sides are open then, neck and armholes sewn. */
function turnedWhileOpen({ garment, steps, doneAt: at }: Work): readonly string[] {
  const here = steps.findIndex(({ kind }) => kind === 'turn');
  if (here < 0) return [];
  const early = ['side', 'closing', 'waist-lining'];
  const neck = steps.find(({ kind, sews }) => kind === 'layers' && sews.includes('neck-lining'));
  if (neck !== undefined) return ['the armholes are bagged though the neck lies wrong sides together'];
  const through = steps[here]?.say.key === 'sew.do.turn-through';
  return garment.seams.flatMap((seam) => {
    const place = at.get(seam.id) ?? -1;
    const isBodice = usesOf(seam).every((use) => /^(front|back)/.test(use.piece));
    if (!isBodice) return [];
    if (early.includes(seam.name) && place < here)
      return [`${seam.id} is closed before the bodice is turned`];
    if (seam.name === 'armhole-lining' && place > here && steps[place]?.kind === 'armholes')
      return ['the bodice is turned before its armholes'];
    if (seam.name === 'shoulder' && through !== place < here)
      return [`${seam.id} is at the wrong side of turning`];
    return [];
  });
}

/** Waist before the opening, the lining along it after it, fasteners after that. */
function openingInOrder({ garment, steps, doneAt: at }: Work): readonly string[] {
  const shellOf = (seam: Seam): boolean =>
    usesOf(seam).some((use) => pieceOf(garment, use.piece).layer === 'shell');
  const opening = steps.findIndex(({ kind }) => kind === 'zip' || kind === 'opening');
  const fasten = steps.findIndex(({ kind }) => kind === 'fasten');
  if (opening < 0) return [];
  const waists = garment.seams.filter(
    (seam) =>
      seam.name === 'skirt-waist' && seam.a.every((use) => pieceOf(garment, use.piece).layer === 'shell'),
  );
  return [
    ...waists
      .filter((seam) => (at.get(seam.id) ?? opening) >= opening)
      .map(({ id }) => `${id} comes after the opening`),
    ...garment.seams
      .filter((seam) => seam.id === 'centre-back-lining' || seam.name === 'waist-lining')
      .filter((seam) => (at.get(seam.id) ?? -1) < opening)
      .map(({ id }) => `${id} is closed before the opening`),
    ...garment.seams
      .filter(
        (seam) => seam.name === 'closing' && shellOf(seam) && /^(front|back)/.test(seam.a[0]?.piece ?? ''),
      )
      .filter((seam) => (at.get(seam.id) ?? fasten) >= fasten)
      .map(({ id }) => `${id} has its fasteners before it is sewn`),
  ];
}

/** Edges that are turned or sewn to their own back before the piece is sewn to anything. */
function partsMadeFirst({ garment, steps, doneAt: at }: Work): readonly string[] {
  return steps.flatMap((step, here) => {
    if (step.kind !== 'make-trim') return [];
    const made = new Set(step.finishes.map(({ piece }) => piece));
    const seams = garment.seams.filter(
      (seam) =>
        seam.name !== 'own' &&
        usesOf(seam).some((use) => made.has(use.piece)) &&
        usesOf(seam).some((use) => !made.has(use.piece)),
    );
    const early = seams.filter((seam) => (at.get(seam.id) ?? -1) <= here).map(({ id }) => id);
    const sewnOn = steps
      .slice(0, here)
      .filter(
        ({ kind, finishes }) =>
          (kind === 'sew-on' || kind === 'catch-trim') && finishes.some(({ piece }) => made.has(piece)),
      )
      .map(({ id }) => id);
    return [...early, ...sewnOn].map((id) => `${id} comes before ${step.id}`);
  });
}

/** The inside of a cuff is closed when its outside has been sewn to the sleeve. */
function closedInsideLast({ garment, doneAt: at }: Work): readonly string[] {
  return garment.seams
    .filter(({ id }) => id.endsWith('-inside'))
    .flatMap((inside) => {
      const piece = inside.a[0]?.piece;
      return garment.seams
        .filter((seam) => seam.id.endsWith('-sewn-on') && seam.a.some((use) => use.piece === piece))
        .filter((seam) => (at.get(seam.id) ?? Number.POSITIVE_INFINITY) > (at.get(inside.id) ?? -1))
        .map((seam) => `${inside.id} is closed before ${seam.id}`);
    });
}

/** What is said to lie between two layers has a second layer there: lining, facing, or a part folded double. */
function enclosedByTwoLayers({ garment, steps }: Work): readonly string[] {
  const isDouble = (seam: Seam): boolean =>
    ['binding', 'cuff', 'band', 'placket', 'facing', 'collar'].includes(seam.name);
  const covered = (use: At): boolean => {
    const half = use.piece.startsWith('front') ? 'front' : 'back';
    const seams = garment.seams.filter((seam) => usesOf(seam).some((other) => name(other) === name(use)));
    return (
      seams.some((seam) => seam.name.endsWith('-lining')) ||
      garment.pieces.some((piece) => piece.layer === 'lining' && piece.id.startsWith(half))
    );
  };
  return steps.flatMap((step) => {
    if (step.allowances !== 'enclosed') return [];
    const seams = garment.seams.filter(({ id }) => step.sews.includes(id));
    return seams
      .filter((seam) => !isDouble(seam))
      .filter((seam) => usesOf(seam).some((use) => /^(front|back)/.test(use.piece) && !covered(use)))
      .map(({ id }) => `${id} is said to be enclosed, and nothing lies over it`);
  });
}
