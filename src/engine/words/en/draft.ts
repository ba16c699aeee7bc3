/** English sentences about draft. */
export const draft = {} as const;
