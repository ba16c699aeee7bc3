/** How the dress opens to let the child in. Lengths in mm. */
export type Closing = ZipClosing | ButtonClosing | LacingClosing | TieClosing | StudClosing | KeyholeClosing;

interface Opening {
  /** From the finished neck edge: down the centre back, or along each shoulder that opens. */
  readonly openingLength: number;
  /** The opening runs on through the hem of the skirt, so that the whole back parts. */
  readonly toHem?: true;
}

export interface ZipClosing extends Opening {
  readonly kind: 'centred-zip' | 'concealed-zip' | 'lapped-zip';
  /** Named length of the zip to buy. */
  readonly zipLength: number;
}

interface ButtonClosing extends Opening {
  readonly kind: 'buttons';
  readonly count: number;
  readonly diameter: number;
  readonly holeLength: number;
  /** How far each half of the back runs past the centre line. */
  readonly stand: number;
}

interface LacingClosing extends Opening {
  readonly kind: 'lacing';
  /** On each of the two edges. */
  readonly loops: number;
  /** Length of cord to buy. */
  readonly cordLength: number;
}

interface TieClosing extends Opening {
  readonly kind: 'ties';
  readonly pairs: number;
}

interface StudClosing extends Opening {
  readonly kind: 'shoulder-studs';
  /** On each of the two shoulders. */
  readonly count: number;
}

/** One button and a loop at the neck, over an opening in the back that is otherwise closed. */
interface KeyholeClosing extends Opening {
  readonly kind: 'keyhole';
  readonly diameter: number;
}

/** Whether the centre back opens from the neck down; shoulders that open and a keyhole leave it closed. */
export const opensBack = (
  closing: Closing | null,
): closing is Exclude<Closing, StudClosing | KeyholeClosing> =>
  closing !== null && closing.kind !== 'shoulder-studs' && closing.kind !== 'keyhole';

/** Whether the neck parts at the centre back, so that what is sewn round it must part there too. */
export const partsNeckAtBack = (closing: Closing | null): boolean =>
  closing !== null && closing.kind !== 'shoulder-studs';

/** Cloth that lies double once the dress is closed, round the whole body: pieces are wider by it than the dress. */
export const closingOverlap = (closing: Closing | null): number =>
  closing !== null && closing.kind === 'buttons' ? 2 * closing.stand : 0;
