import { defineConfig } from 'vitest/config';

/** Benchmarks print tables and ratios; they assert nothing about time. Run by `npm run bench`. */
export default defineConfig({
  test: { include: ['bench/**/*.bench.ts'], testTimeout: 600_000, fileParallelism: false },
});
