/** English sentences about checks. */
export const checks = {} as const;
