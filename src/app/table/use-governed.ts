import { useEffect, useState } from 'react';
import { type Governed, governedPlaces } from './governed-places.ts';
import { type ParamRef, paramKey, type Wish } from './param-now.ts';

/**
 * What a number governs, found when there is time for it: the dress is drawn twice more. While `held` is true (she is
 * dragging) the old answer stands, so that the handle stays under the thumb.
 */
export function useGoverned(wish: Wish | null, ref: ParamRef | null, held: boolean): readonly Governed[] {
  const [found, setFound] = useState<{ readonly key: string; readonly governed: Governed | null } | null>(
    null,
  );
  const key = ref === null ? '' : paramKey(ref);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the parameter.
  useEffect(() => {
    if (wish === null || ref === null || held) return;
    const soon = setTimeout(() => setFound({ key, governed: governedPlaces(wish, ref) }), 0);
    return () => clearTimeout(soon);
  }, [wish, key, held]);
  return found === null || found.key !== key || found.governed === null ? [] : [found.governed];
}
