import { edgeAt, pieceAt, type SeamName } from '../piece/index.ts';
import { crossings } from './crossings.ts';
import { isPleated } from './finish-steps.ts';
import { layerOf, neighboursOf, refsOf, type SewLook, shellOver, usesOf } from './look.ts';
import type { Before, EdgeRef, SewStep, StepKind } from './step.ts';
import { placeOfTrim } from './trim-steps.ts';

/** What must be done before what. Each rule is one reason of the trade; together they make the graph of the plan. */
export function mustComeBefore(look: SewLook, steps: readonly SewStep[]): readonly Before[] {
  const board: Board = { look, steps, bySeam: bySeam(steps) };
  const pairs = RULES.flatMap((rule) => rule(board)).filter(({ earlier, later }) => earlier !== later);
  return [...new Map(pairs.map((pair) => [`${pair.earlier} < ${pair.later}`, pair])).values()];
}

interface Board {
  readonly look: SewLook;
  readonly steps: readonly SewStep[];
  readonly bySeam: ReadonlyMap<string, SewStep>;
}

type Rule = (board: Board) => readonly Before[];

const bySeam = (steps: readonly SewStep[]): ReadonlyMap<string, SewStep> =>
  new Map(steps.flatMap((step) => step.sews.map((seam) => [seam, step] as const)));

const before = (firsts: readonly SewStep[], thens: readonly SewStep[]): readonly Before[] =>
  firsts.flatMap(({ id: earlier }) => thens.map(({ id: later }) => ({ earlier, later })));

const ofKind = ({ steps }: Board, ...kinds: readonly StepKind[]): readonly SewStep[] =>
  steps.filter(({ kind }) => kinds.includes(kind));

const named = ({ steps }: Board, ...ids: readonly string[]): readonly SewStep[] =>
  steps.filter(({ id }) => ids.includes(id));

const edgesOfStep = ({ look }: Board, step: SewStep): readonly EdgeRef[] => [
  ...look.garment.seams.filter(({ id }) => step.sews.includes(id)).flatMap(usesOf),
  ...step.finishes,
];

/** Steps that work along an edge of this kind. */
const along = (board: Board, ...kinds: readonly string[]): readonly SewStep[] =>
  board.steps.filter((step) =>
    edgesOfStep(board, step).some((at) => kinds.includes(edgeAt(board.look, at).kind)),
  );

const sewing = (board: Board, at: EdgeRef): readonly SewStep[] =>
  board.look.seamsAt(at).flatMap(({ id }) => board.bySeam.get(id) ?? []);

/** A seam that runs over a corner where two pieces meet needs the seam that joins them there. */
const runsAcross: Rule = ({ look, steps, bySeam: at }) =>
  steps
    .filter(({ inParts }) => inParts !== true)
    .flatMap((step) =>
      crossings(look, step).flatMap((seam) => {
        const joining = at.get(seam.id);
        return joining === undefined ? [] : [{ earlier: joining.id, later: step.id }];
      }),
    );

/**
 * In which order several seams take up one edge: what is laid on it, what is set to it, what closes over it. Linings
 * under a binding or a facing are laid on first; felled ones come last.
 */
const STACK: Readonly<Record<SeamName, number>> = {
  own: 0,
  dart: 0,
  trim: 1,
  collar: 1,
  frill: 1,
  strap: 1,
  waist: 1,
  placket: 1,
  'sleeve-cap': 2,
  'skirt-waist': 2,
  'overskirt-waist': 2,
  tier: 2,
  'neck-lining': 3,
  'armhole-lining': 3,
  facing: 4,
  binding: 4,
  band: 4,
  cuff: 4,
  closing: 5,
  'waist-lining': 6,
  shoulder: 0,
  side: 0,
  yoke: 0,
  'skirt-join': 0,
  'sleeve-underarm': 0,
  princess: 0,
};

const oneOnAnother: Rule = ({ look, bySeam: at }) =>
  look.garment.pieces.flatMap((piece) =>
    piece.edges.flatMap(({ name }) => {
      const seams = look
        .seamsAt({ piece: piece.id, edge: name })
        .toSorted((a, b) => STACK[a.name] - STACK[b.name]);
      return seams.flatMap((seam, i) => {
        const [first, second] = [at.get(seams[i - 1]?.id ?? ''), at.get(seam.id)];
        const lower = seams[i - 1];
        if (first === undefined || second === undefined || lower === undefined) return [];
        return STACK[lower.name] < STACK[seam.name] ? [{ earlier: first.id, later: second.id }] : [];
      });
    }),
  );

/** Gathers and pleats before the seam that holds them; widths and tucks before both. */
const fullnessFirst: Rule = (board) => {
  const pairs = ofKind(board, 'gather', 'pleats').flatMap((step) =>
    before([step], named(board, step.id.replace(/^(gather|pleats)-/, ''))),
  );
  const lengthwise = ofKind(board, 'widths', 'tuck').flatMap((step) => {
    const ring = step.id.replace(/^(widths|tucks)-/, '');
    const inRing = (at: EdgeRef): boolean => board.look.ringOf(at.piece) === ring;
    const later: readonly StepKind[] =
      step.kind === 'widths'
        ? ['tuck', 'gather', 'pleats', 'tier', 'waist', 'net-waist', 'trim-edge']
        : ['gather', 'pleats', 'tier', 'waist', 'net-waist'];
    return before(
      [step],
      ofKind(board, ...later).filter(
        (other) => !other.id.endsWith(`-${step.id}`) && [...other.sideA, ...other.sideB].some(inRing),
      ),
    );
  });
  return [...pairs, ...lengthwise];
};

/** Darts, folds of her own and elastic are sewn before the seams that run over their ends. */
const flatFirst: Rule = (board) => [
  ...ofKind(board, 'dart').flatMap((step) => {
    // Where she has cut through a dart, its parts are joined before it is sewn.
    const parts = crossings(board.look, step).flatMap(({ id }) => board.bySeam.get(id) ?? []);
    return edgesOfStep(board, step)
      .flatMap((at) => neighboursOf(board.look, at))
      .flatMap((at) => [...sewing(board, at), ...finishing(board, at)])
      .filter((other) => !parts.includes(other))
      .flatMap((other) => before([step], [other]));
  }),
  ...before(ofKind(board, 'elastic'), ofKind(board, 'sleeve-seam')),
  ...ofKind(board, 'staystitch').flatMap((step) =>
    step.sideA.flatMap((at) => before([step], [...sewing(board, at), ...finishing(board, at)])),
  ),
];

const finishing = ({ steps }: Board, { piece, edge }: EdgeRef): readonly SewStep[] =>
  steps.filter(({ finishes }) => finishes.some((at) => at.piece === piece && at.edge === edge));

/** Seams that end at an edge are sewn before the edge is turned, except where pleats want the hem first. */
const ENDS_AT: readonly SeamName[] = [
  'side',
  'shoulder',
  'skirt-join',
  'sleeve-underarm',
  'princess',
  'yoke',
  'own',
  'dart',
  'facing',
  'closing',
];

const turnedAfter: Rule = (board) =>
  ofKind(board, 'hem', 'narrow-hem', 'trim-net', 'bind-raw', 'neaten', 'turn-edge', 'make-trim').flatMap(
    (step) =>
      step.finishes.flatMap((at) => {
        const pleated = isPleated(board.look, board.look.ringOf(at.piece));
        return neighboursOf(board.look, at)
          .flatMap((next) => board.look.seamsAt(next))
          .filter(({ name }) => ENDS_AT.includes(name) && !(name === 'closing' && pleated))
          .filter((seam) => !['turn-edge', 'make-trim'].includes(step.kind) || seam.name === 'own')
          .filter((seam) => seam.name !== 'closing' || !isOfBodice(board, step))
          .flatMap(({ id }) =>
            before(
              board.bySeam.get(id) === undefined ? [] : board.steps.filter(({ sews }) => sews.includes(id)),
              [step],
            ),
          );
      }),
  );

const isOfBodice = ({ look }: Board, step: SewStep): boolean =>
  step.finishes.every((at) =>
    ['neck', 'armhole', 'sleeve-hem', 'curved-sleeve-hem', 'waist', 'free'].includes(edgeAt(look, at).kind),
  );

/** Small parts are made before they are sewn on. */
const partsFirst: Rule = (board) =>
  board.steps
    .filter(
      ({ finishes, kind }) => finishes.length > 0 && ['make-trim', 'narrow-hem', 'neaten'].includes(kind),
    )
    .flatMap((step) => {
      const pieces = new Set(
        step.finishes.filter((at) => edgeAt(board.look, at).kind === 'free').map(({ piece }) => piece),
      );
      const seams = board.look.garment.seams.filter((seam) => {
        const at = seam.name === 'own' ? [] : usesOf(seam);
        return at.some(({ piece }) => pieces.has(piece)) && at.some(({ piece }) => !pieces.has(piece));
      });
      const sewn = seams.flatMap(({ id }) => board.bySeam.get(id) ?? []);
      const alone = board.steps.filter(
        (other) =>
          other !== step &&
          other.finishes.some(({ piece }) => pieces.has(piece)) &&
          ['sew-on', 'catch-trim', 'placket'].includes(other.kind),
      );
      const disc = [...pieces].some((piece) => piece.startsWith('button-cover'));
      return before([step], [...sewn, ...alone, ...(disc ? ofKind(board, 'fasten') : [])]);
    });

/** Caught trims lie in their place before the seam that catches them. */
const caughtFirst: Rule = (board) =>
  board.steps
    .filter(({ id, kind }) => kind === 'catch-trim' || id === 'catch-placket')
    .flatMap((step) => caughtIn(board, step));

function caughtIn(board: Board, step: SewStep): readonly Before[] {
  switch (placeOfTrim(board.look, step.finishes[0]?.piece ?? '')) {
    case 'side':
      return before(
        [step],
        ofKind(board, 'side', 'sides-in-one').filter((other) => isShell(board, other)),
      );
    case 'opening':
      return before([step], ofKind(board, 'opening'));
    case 'keyhole':
      return before([step], named(board, 'keyhole-binding'));
    case 'slit':
      return [
        ...before(named(board, 'close-below'), [step]),
        ...before(
          [step],
          ofKind(board, 'waist').filter((other) => isShell(board, other)),
        ),
      ];
    case 'by-hand':
      return [];
  }
}

const isShell = ({ look }: Board, step: SewStep): boolean =>
  look.garment.seams.some((seam) => step.sews.includes(seam.id) && layerOf(look, seam) === 'shell');

/** Neck and armholes, then turning, then what must stay open for it. */
const turnedInTime: Rule = (board) => {
  const turn = ofKind(board, 'turn');
  const neck = ofKind(board, 'neck', 'face', 'bind', 'layers').filter((step) => isAlong(board, step, 'neck'));
  return [
    ...before(ofKind(board, 'neck', 'armholes'), turn),
    ...before(turn, ofKind(board, 'sides-in-one', 'side', 'shoulders-last')),
    ...board.steps
      .filter(({ kind }) => kind === 'understitch')
      .flatMap((step) =>
        before(
          board.steps.filter(({ id }) => `understitch-${id}` === step.id),
          [step],
        ),
      ),
    ...before(ofKind(board, 'understitch'), [...turn, ...ofKind(board, 'zip', 'opening', 'studs', 'wrap')]),
    ...before(neck, ofKind(board, 'zip', 'opening', 'studs', 'wrap')),
    ...before(named(board, 'overlap-ends'), ofKind(board, 'wrap')),
  ];
};

const isAlong = (board: Board, step: SewStep, kind: string): boolean =>
  edgesOfStep(board, step).some((at) => edgeAt(board.look, at).kind === kind);

/** What goes round the arm wants a closed ring: sides and sleeve seams first, shoulders that lap laid over each other. */
const roundTheArm: Rule = (board) => {
  const ring = along(board, 'armhole', 'cap').filter(({ kind }) =>
    ['set-sleeve', 'bind', 'face', 'frill', 'layers', 'fell', 'bind-raw'].includes(kind),
  );
  const cuffs = ofKind(board, 'cuff');
  const inside = cuffs.filter(({ station }) => station === 'hand');
  return [
    // The inner layer of a cuff is closed over the seam that holds the outer one.
    ...inside.flatMap((step) =>
      before(
        cuffs.filter((other) => other.station !== 'hand' && sharesPiece(board, step, other)),
        [step],
      ),
    ),
    ...before(ofKind(board, 'side'), ring),
    ...before(ofKind(board, 'sleeve-seam'), [...ofKind(board, 'set-sleeve'), ...cuffs]),
    ...before(
      ofKind(board, 'sleeve-seam').filter((step) => step.id.startsWith('sleeve-strip')),
      ring.filter(({ kind }) => kind === 'frill'),
    ),
    ...before(ofKind(board, 'studs'), ring),
    ...before(
      ofKind(board, 'placket').filter((step) => step.id.startsWith('sleeve')),
      cuffs,
    ),
    ...before(
      ofKind(board, 'placket', 'face').filter((step) => step.id.startsWith('shoulder')),
      ofKind(board, 'studs'),
    ),
    // The ring of a binding, a facing or a strip is closed before it is laid round the arm.
    ...board.steps
      .filter(({ kind, sews }) => kind === 'seam' && sews.length === 1)
      .flatMap((step) =>
        before(
          [step],
          ring.filter((other) => sharesPiece(board, step, other)),
        ),
      ),
  ];
};

const sharesPiece = (board: Board, a: SewStep, b: SewStep): boolean => {
  const pieces = new Set(edgesOfStep(board, a).map(({ piece }) => piece));
  return edgesOfStep(board, b).some(({ piece }) => pieces.has(piece));
};

/** The opening: neck and waist first, then zip or edges, then the lining along it, fasteners at the very end. */
const openingLast: Rule = (board) => {
  const kind = board.look.garment.closing?.kind;
  const opening = ofKind(board, 'zip', 'opening');
  const below = named(board, 'close-below');
  const waists = ofKind(board, 'waist', 'net-waist').filter((step) => isShell(board, step));
  const felled = ofKind(board, 'fell').filter(({ id }) => id === 'fell-opening' || id === 'waist-lining');
  const fasten = ofKind(board, 'fasten');
  return [
    ...before(waists, opening),
    ...(kind === 'concealed-zip' ? before(opening, below) : before(below, opening)),
    ...before([...opening, ...ofKind(board, 'studs')], felled),
    ...before([...opening, ...felled, ...ofKind(board, 'studs', 'bind')], fasten),
  ];
};

/** A dress is levelled when it hangs from its waist; linings are turned up flat, pleats pressed over their hem. */
const levelled: Rule = (board) => [
  ...ofKind(board, 'hem', 'narrow-hem', 'trim-net')
    .filter(({ finishes }) => finishes.every((at) => isOuterHem(board, at)))
    .flatMap((step) => {
      const rings = new Set(step.finishes.map(({ piece }) => board.look.ringOf(piece)));
      const pleated = [...rings].some((ring) => isPleated(board.look, ring));
      const hung = ofKind(board, 'waist', 'net-waist', 'tier').filter((other) =>
        other.sideB.some(({ piece }) => rings.has(board.look.ringOf(piece))),
      );
      const pleats = ofKind(board, 'pleats').filter((other) =>
        other.sideA.some(({ piece }) => rings.has(board.look.ringOf(piece))),
      );
      return pleated ? before([step], pleats) : before(hung, [step]);
    }),
];

const isOuterHem = ({ look }: Board, at: EdgeRef): boolean =>
  ['hem', 'curved-hem'].includes(edgeAt(look, at).kind) && pieceAt(look, at).layer === 'shell';

/** A lining that has no seam of its own somewhere is laid under the shell before the shell is sewn there. */
const mountedFirst: Rule = (board) =>
  ofKind(board, 'mount').flatMap((step) => [
    ...refsOf(step.finishes).flatMap((at) => {
      const over = shellOver(board.look, at);
      return over === null ? [] : before([step], sewing(board, over));
    }),
    ...before(
      ofKind(board, 'dart').filter((dart) => sharesPiece(board, dart, step)),
      [step],
    ),
  ]);

/** Pressing and counting the pins is the last thing of all. */
const finishedLast: Rule = (board) => before(board.steps, ofKind(board, 'press'));

const RULES: readonly Rule[] = [
  runsAcross,
  oneOnAnother,
  fullnessFirst,
  flatFirst,
  turnedAfter,
  partsFirst,
  caughtFirst,
  turnedInTime,
  roundTheArm,
  openingLast,
  levelled,
  mountedFirst,
  finishedLast,
];
