import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const path = (to: string): string => fileURLToPath(new URL(to, import.meta.url));

/** Builds the page into `dist/app`: static files that any host can serve from any folder, and offline after one visit. */
export default defineConfig({
  root: path('src/app'),
  publicDir: path('assets/page'),
  base: './',
  build: {
    target: 'es2022',
    outDir: path('dist/app'),
    emptyOutDir: true,
    // An inlined picture would need a hole in the content security policy.
    assetsInlineLimit: 0,
    // Loading a file of the engine does nothing by itself, so the first load takes only the files that it needs.
    rolldownOptions: {
      treeshake: { moduleSideEffects: (id) => !/\/src\/(engine|store)\//.test(id) },
    },
  },
  worker: { format: 'es' },
  plugins: [
    react(),
    VitePWA({
      // A new version waits until she says so: a silent reload in the middle of an order loses work.
      registerType: 'prompt',
      injectRegister: null,
      manifest: {
        name: 'Frockwright',
        short_name: 'Frockwright',
        description: "Children's occasion dresses, drafted to measure.",
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#f7f3ea',
        theme_color: '#f7f3ea',
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,ttf,png,svg,json}'],
        maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
        cleanupOutdatedCaches: true,
      },
    }),
  ],
});
