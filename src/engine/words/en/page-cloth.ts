/** English words of the place of cloth on the page. */
export const pageCloth = {
  'page.cloth.title': 'Lay the cloth',
  'page.cloth.for': 'For whom',
  'page.cloth.for.party': 'All children',
  'page.cloth.time': 'How long to search',
  'page.cloth.time.10': '10 seconds',
  'page.cloth.time.60': '1 minute',
  'page.cloth.time.300': '5 minutes',
  'page.cloth.lay': 'Lay the pieces',
  'page.cloth.first': 'Looking for a first lay',
  'page.cloth.searching': '{cloth}: {length} so far',
  'page.cloth.enough': 'Stop and show the best',
  'page.cloth.failed': 'The cloth could not be laid: {why}.',
  'page.cloth.buy': '{cloth}: buy {buy}',
  'page.cloth.takes': 'The lay takes {length}; {percent} % of it is pieces.',
  'page.cloth.saves': 'One lay for all saves {saves}.',
  'page.cloth.changed': 'The order has changed since this lay was found. Lay the pieces again.',
  'page.cloth.not-kept':
    'This lay is not kept. The papers of the order are laid by a short search of their own; write down what you want to use.',
} as const;
