/** Where something stands in an order file: `['children', 2, 'measures', 'chestGirth']`. */
export type OrderPath = readonly (string | number)[];

/** `children[2].measures.chestGirth` */
export function pathText(path: OrderPath): string {
  return path
    .map((part, i) => (typeof part === 'number' ? `[${part}]` : i === 0 ? part : `.${part}`))
    .join('');
}
