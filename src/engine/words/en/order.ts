/** English sentences about order. */
export const order = {} as const;
