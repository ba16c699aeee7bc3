import { defineConfig } from '@playwright/test';

/** Another port for another run at the same time: `FROCKWRIGHT_PORT=4700 npx playwright test`. */
const PORT = process.env.FROCKWRIGHT_PORT ?? '4620';

/** `npm test` tries the way in and what is private; `npm run test:page` tries everything at both sizes. */
const SHORT = process.env.FROCKWRIGHT_PAGE === 'short';
const ON_PHONE = SHORT ? /first-visit\.spec/ : /\.spec\./;
const ON_LAPTOP = SHORT ? /(first-visit|private)\.spec/ : /\.spec\./;

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 };
const LAPTOP = { viewport: { width: 1280, height: 800 } };

/** The page in a real browser, built as it is served. The browser is the system's own; none is fetched. */
export default defineConfig({
  testDir: 'tests/app',
  workers: 1,
  timeout: 120_000,
  expect: { timeout: 20_000 },
  reporter: [['list']],
  outputDir: 'dist/browser-tests',
  use: {
    baseURL: `http://127.0.0.1:${PORT}/`,
    screenshot: 'only-on-failure',
    launchOptions: {
      executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--no-first-run',
      ],
    },
  },
  projects: [
    { name: 'phone', use: PHONE, testMatch: ON_PHONE },
    { name: 'laptop', use: LAPTOP, testMatch: ON_LAPTOP },
  ],
  webServer: {
    command: `node tools/start.mjs --no-browser --port=${PORT}`,
    url: `http://127.0.0.1:${PORT}/`,
    timeout: 180_000,
  },
});
