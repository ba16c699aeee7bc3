/** English sentences about paper. */
export const paper = {} as const;
