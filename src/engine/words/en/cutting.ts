/** English sentences about cutting. */
export const cutting = {} as const;
