import type { ClothRole } from '../piece/index.ts';
import type { ChosenStep } from './design-dress.ts';

/** A complete dress to begin with; its name and a line about it stand in the catalogue under `dress.<id>`. */
export interface LibraryDress {
  readonly id: string;
  readonly steps: readonly ChosenStep[];
  /** Parts that are meant to be of net, so that a new order has such a cloth. */
  readonly inNet: readonly ClothRole[];
}

const step = (name: string, given: ChosenStep['given'] = {}): ChosenStep => ({ step: name, given });

const IN_NET: Readonly<Record<string, readonly ClothRole[]>> = { clover: ['yoke'], snowdrop: ['net'] };

const dress = (id: string, ...steps: readonly ChosenStep[]): LibraryDress => ({
  id,
  steps,
  inNet: IN_NET[id] ?? [],
});

/** Dresses of our own invention. Numbers that are not here follow the rules of the steps, so each fits every child. */
export const LIBRARY: readonly LibraryDress[] = [
  dress(
    'clover',
    step('neckline'),
    step('drop-shoulder', { finish: 'cap-rounded' }),
    step('yoke', { line: 'curved' }),
    step('back-zip'),
    step('pleated-skirt', { style: 'box' }),
    step('lining', { cut: 'whole' }),
  ),
  dress(
    'minnow',
    step('neckline', { shape: 'scoop' }),
    step('drop-shoulder', { finish: 'short' }),
    step('back-zip'),
    step('gathered-skirt', { ratio: 2.5 }),
    step('lining'),
    step('sewn-bow', { place: 'waist-back' }),
  ),
  dress(
    'lantern',
    step('neckline', { shape: 'square' }),
    step('puff-sleeve', { places: 'both' }),
    step('back-zip'),
    step('circle-skirt', { part: 'half' }),
    step('lining'),
  ),
  dress(
    'paper-kite',
    step('neckline', { shape: 'v' }),
    step('drop-shoulder', { finish: 'cap-pointed' }),
    step('back-zip', { way: 'centred' }),
    step('pleated-skirt', { style: 'inverted' }),
    step('lining'),
  ),
  dress(
    'thimble',
    step('waist-level'),
    step('neckline'),
    step('back-buttons'),
    step('gathered-skirt'),
    step('neck-binding'),
    step('armhole-binding'),
  ),
  dress(
    'skylark',
    step('neckline', { shape: 'boat' }),
    step('back-zip'),
    step('a-line-skirt'),
    step('lining'),
    step('belt'),
  ),
  dress(
    'hazel',
    step('neckline'),
    step('back-buttons'),
    step('bishop-sleeve'),
    step('gathered-skirt', { ratio: 2 }),
    step('lining'),
    step('flat-collar', { shape: 'rounded' }),
  ),
  dress(
    'brook',
    step('neckline', { shape: 'scoop' }),
    step('back-zip'),
    step('tiered-skirt', { tiers: 3 }),
    step('lining'),
    step('sash'),
  ),
  dress(
    'bluebell',
    step('neckline', { shape: 'sweetheart' }),
    step('back-zip'),
    step('gored-skirt'),
    step('lining'),
  ),
  dress(
    'heron',
    step('neckline'),
    step('drop-shoulder', { finish: 'straight' }),
    step('back-zip'),
    step('circle-skirt', { part: 'full' }),
    step('high-low-hem'),
    step('sewn-bow', { place: 'waist-back' }),
  ),
  dress(
    'marigold',
    step('dropped-waist'),
    step('neckline', { shape: 'round' }),
    step('set-in-sleeve'),
    step('back-zip'),
    step('pleated-skirt', { style: 'knife' }),
    step('lining'),
  ),
  dress(
    'snowdrop',
    step('neckline'),
    step('puff-sleeve', { places: 'both' }),
    step('back-zip'),
    step('tiered-skirt', { tiers: 3 }),
    step('net-overskirt'),
    step('lining'),
    step('flat-collar', { shape: 'rounded' }),
  ),
];

export const findDress = (id: string): LibraryDress | undefined => LIBRARY.find((dress) => dress.id === id);
