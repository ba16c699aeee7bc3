/**
 * How often each writer has written a record: by writer, a count. Two states of an order on two devices can be
 * compared by it without trusting any clock: one that has seen all writes of the other was changed on from it.
 * (A version vector: Parker and others, "Detection of mutual inconsistency in distributed systems", IEEE
 * Transactions on Software Engineering SE-9(3), 1983.)
 */
export type Versions = Readonly<Record<string, number>>;

/** All writes together; grows by one with each. */
export function revisionOf(versions: Versions): number {
  return Object.values(versions).reduce((sum, count) => sum + count, 0);
}

/** One write more by this writer. */
export function written(versions: Versions, writer: string): Versions {
  return { ...versions, [writer]: countOf(versions, writer) + 1 };
}

/** Has seen what both have seen. */
export function merged(a: Versions, b: Versions): Versions {
  const writers = new Set([...Object.keys(a), ...Object.keys(b)]);
  return Object.fromEntries(
    [...writers].map((writer) => [writer, Math.max(countOf(a, writer), countOf(b, writer))]),
  );
}

/** Whether `a` has seen every write that `b` has. */
export function hasSeen(a: Versions, b: Versions): boolean {
  return Object.entries(b).every(([writer, count]) => countOf(a, writer) >= count);
}

function countOf(versions: Versions, writer: string): number {
  return Object.hasOwn(versions, writer) ? (versions[writer] ?? 0) : 0;
}
