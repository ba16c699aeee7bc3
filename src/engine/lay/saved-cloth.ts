import type { Lay } from './read-lay.ts';
import { lengthByTable } from './width-table.ts';

/** What one lay for all saves, as bought, mm. */
export interface SavedCloth {
  readonly together: number;
  /** Each child laid alone, every length rounded up to the shop's unit. */
  readonly alone: number;
  readonly saved: number;
}

/** One lay of a party against the same pieces child by child on the same cloth. */
export function savedCloth(party: Lay, alone: readonly Lay[]): SavedCloth {
  const together = party.toBuy.bought;
  const sum = alone.reduce((total, lay) => total + lay.toBuy.bought, 0);
  return { together, alone: sum, saved: sum - together };
}

/**
 * A lay against the width table: the same pieces were laid on cloth of another width, and the table says what that
 * comes to on this cloth. Widths with selvedges, mm; null where the table has no such width or length.
 */
export function savedAgainstTable(
  lay: Lay,
  width: number,
  other: Lay,
  otherWidth: number,
): { readonly byTable: number; readonly saved: number } | null {
  const byTable = lengthByTable(other.toBuy.bought, otherWidth, width);
  return byTable === null ? null : { byTable, saved: byTable - lay.toBuy.bought };
}
