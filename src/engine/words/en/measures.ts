/** English sentences about measures. */
export const measures = {} as const;
