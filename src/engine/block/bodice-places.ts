import type { Place } from '../construct/index.ts';

export type Half = 'front' | 'back';

/** The places that fix one half of a bodice; what lies between them is drawn the same way by every method. */
export interface BodicePlaces {
  readonly neckCentre: Place;
  readonly neckPoint: Place;
  readonly shoulderTip: Place;
  /** The armhole runs through here, about half-way down. */
  readonly armholeMiddle: Place;
  readonly underarm: Place;
  readonly waistSide: Place;
  readonly waistCentre: Place;
}
