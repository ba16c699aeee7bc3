import { builtinModules } from 'node:module';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/** Builds the command line program: one file for Node 20, packages left outside. */
export default defineConfig({
  build: {
    target: 'node20',
    outDir: 'dist',
    // The page lies in a folder beside it.
    emptyOutDir: false,
    minify: false,
    lib: {
      entry: fileURLToPath(new URL('src/cli/main.ts', import.meta.url)),
      formats: ['es'],
      fileName: () => 'frockwright.js',
    },
    rollupOptions: { external: [/^node:/, ...builtinModules, 'commander', 'pdfkit', 'valibot'] },
  },
});
