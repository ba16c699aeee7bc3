import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed } from '../../../tests/dress-of.ts';
import { edgeLength } from '../piece/index.ts';

describe('set-in sleeve: the ease lies between the notches', () => {
  for (const steps of [['set-in-sleeve'], ['yoke', 'set-in-sleeve']]) {
    it(`below the notches cap and armhole are equally long (${steps.join(', ')})`, () => {
      const dress = dressOf({ steps });
      const sleeve = pieceNamed(dress, 'sleeve');
      for (const half of ['front', 'back'] as const) {
        const onCap = sleeve.notches.find((notch) => notch.match === `sleeve-${half}`);
        const capLength = edgeLength(sleeve, `cap-${half}`);
        const capBelow = half === 'front' ? capLength - (onCap?.at ?? 0) : (onCap?.at ?? 0);
        const holes = dress.pieces.filter((p) => p.id === half || p.id === `${half}-yoke`);
        const notched = holes.find((p) => p.notches.some((n) => n.match === `sleeve-${half}`));
        const at = notched?.notches.find((n) => n.match === `sleeve-${half}`)?.at ?? 0;
        const armhole = holes
          .filter((p) => p.edges.some((edge) => edge.name === 'armhole'))
          .reduce((sum, p) => sum + edgeLength(p, 'armhole'), 0);
        const above = (notched?.id.endsWith('-yoke') || holes.length === 1 ? 0 : yokeHole(holes)) + at;
        expect(capBelow).toBeCloseTo(armhole - above, 6);
        // All the ease is above the notch, and it is not nothing.
        expect(capLength - capBelow - above).toBeGreaterThan(1);
      }
    });
  }
});

const yokeHole = (holes: ReturnType<typeof dressOf>['pieces']): number =>
  holes.filter((p) => p.id.endsWith('-yoke')).reduce((sum, p) => sum + edgeLength(p, 'armhole'), 0);
