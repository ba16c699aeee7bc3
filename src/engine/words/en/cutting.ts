/** English sentences about cutting. */
export const cutting = {
  'cutting.on-fold': 'Cut {copies} in {cloth} on the fold',
  'cutting.one-pair': 'Cut 2 in {cloth}, 1 pair',
  'cutting.pairs': 'Cut {copies} in {cloth}, {pairs} pairs',
  'cutting.single': 'Cut {copies} in {cloth}',
} as const;
