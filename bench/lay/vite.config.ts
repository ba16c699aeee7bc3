import { builtinModules } from 'node:module';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/** Builds the lay benchmarks as they will be shipped, so that no test runner stands between them and the clock. */
export default defineConfig({
  build: {
    target: 'node20',
    outDir: fileURLToPath(new URL('../../dist/bench', import.meta.url)),
    minify: false,
    lib: {
      entry: {
        densities: fileURLToPath(new URL('densities.ts', import.meta.url)),
        party: fileURLToPath(new URL('party.ts', import.meta.url)),
      },
      formats: ['es'],
    },
    rollupOptions: { external: [/^node:/, ...builtinModules, 'valibot', 'clipper2-ts'] },
  },
});
