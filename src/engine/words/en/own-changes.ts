/** English sentences that all changes of the maker's own share. */
export const ownChanges = {
  'own.no-piece': 'There is no piece "{piece}" in this dress. Its pieces are: {known}.',
  'own.no-edge': '{piece} has no edge "{edge}". Its edges are: {known}.',
  'own.beyond-edge':
    'The place lies {at} along "{edge}" of {piece}, which is only {length} long. Place it nearer.',
  'own.on-fold':
    'The "{edge}" of {piece} lies on the fold, which has to stay where it is. Choose another edge.',
  'own.leaves-fold':
    'The fold of {piece} would no longer be straight. Move the place along the fold only, or open the piece out first.',
  'own.spoils-outline':
    'The outline of {piece} would cross itself or shrink to nothing. Make the change smaller.',
  'own.line-too-short':
    'The line across {piece} has to lead from one edge to another, with room for its allowances. Place its ends further apart.',
  'own.line-leaves':
    'The line would not lie on {piece} all the way. Place its ends elsewhere, or curve it less.',
} as const;
