/** English sentences about checks of skirts: what is so, and what to do. */
export const skirtChecks = {
  'check.pleat-joins.ok': '{seam}: every join of widths lies under a pleat ({joins} in all).',
  'check.pleat-joins.seen':
    '{seam}: a join of widths lies {off} away from the nearest inner fold and will be seen.',
  'check.pleat-joins.todo': 'Trim the widths, so that each ends where a pleat is folded inside.',

  'check.tiers-match.ok':
    '{seam}: the tier of {below} is gathered {ratio} times, and its side seams meet those above.',
  'check.tiers-match.apart': '{seam}: once gathered, the side seams lie {off} from those of the tier above.',
  'check.tiers-match.todo': 'Give the front and the back of the tier the same fullness.',

  'check.hem-walks.ok': 'The hem of {hem} is wide enough to walk in; {least} is the least at this length.',
  'check.hem-walks.warn': 'The hem of {hem} is narrow to walk in; {least} is the least at this length.',
  'check.hem-walks.stop': 'The hem of {hem} is narrower than the hips of {hip}.',
  'check.hem-walks.todo': 'Make the hem {more} wider, the skirt shorter, or leave a slit.',
} as const;
