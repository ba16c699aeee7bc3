/** The address of a place of an order, for a child. */
export const placeAddress = (order: string, child: number, path: string): string =>
  `/o/${order}/${child + 1}/${path}`;
