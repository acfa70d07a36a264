import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { playwright } from '@vitest/browser-playwright'
import { defineConfig } from 'vitest/config'
import { builtWorkers } from './test/browser/built-workers.ts'
import { CHROMIUM_ARGS, findChromium } from './test/browser/chromium.mjs'

const chromium = await findChromium()

/** In a real browser: a machine that is busy elsewhere may leave it without a turn for seconds. A second try is told as such. */
const patience = {
  testTimeout: 150_000,
  hookTimeout: 60_000,
  expect: { poll: { timeout: 20_000 } },
  retry: 1,
  // What is printed then is what failed, and what was tried twice.
  slowTestThreshold: 60_000,
}

/** Bundled before the first test asks for them: one met on the way would reload its page. */
const optimizeDeps = {
  include: [
    'react',
    'react-dom/client',
    'react/jsx-dev-runtime',
    'dexie',
    'dexie-react-hooks',
    'zustand',
    'date-fns',
    'recharts',
    'vitest-browser-react',
    'axe-core',
    'comlink',
    'culori/fn',
    'd3-array',
    'fflate',
    'ml-matrix',
    'papaparse',
    'pure-rand/distribution/uniformFloat64',
    'pure-rand/distribution/uniformInt',
    'pure-rand/generator/xoroshiro128plus',
    'wouter',
    'wouter/use-hash-location',
    'zod/mini',
    '@stdlib/math-base-special-betainc',
    '@stdlib/math-base-special-betaincinv',
    '@stdlib/math-base-special-erfcx',
    '@stdlib/math-base-special-gammainc',
    '@stdlib/math-base-special-gammaln',
    '@stdlib/stats-base-dists-binomial-quantile',
    '@stdlib/stats-base-dists-f-quantile',
    '@stdlib/stats-base-dists-normal-quantile',
    '@stdlib/stats-base-dists-t-cdf',
    '@stdlib/stats-base-dists-t-quantile',
  ],
}

const inBrowser = () => ({
  enabled: true,
  headless: true,
  screenshotFailures: false,
  provider: playwright({
    launchOptions: {
      ...(chromium ? { executablePath: chromium.path } : {}),
      args: CHROMIUM_ARGS,
    },
  }),
  instances: [{ browser: 'chromium' as const }],
})

const alias = { '@': fileURLToPath(new URL('./src', import.meta.url)) }

export default defineConfig({
  plugins: [react(), builtWorkers()],
  resolve: { alias },
  define: { __APP_VERSION__: JSON.stringify('of the tests') },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          testTimeout: 60_000,
          hookTimeout: 60_000,
          environment: 'node',
          // One process loads the core once for all files, not anew for each: a test leaves nothing behind.
          isolate: false,
          maxWorkers: 1,
          include: ['test/**/*.test.{ts,tsx}'],
          exclude: ['**/*.{browser,apart}.test.*', 'test/journeys/**'],
        },
      },
      {
        extends: true,
        optimizeDeps,
        test: {
          name: 'browser',
          ...patience,
          include: ['test/**/*.browser.test.{ts,tsx}'],
          // One page for all files: a page for each fetched the whole app anew, a third of the time.
          browser: { ...inBrowser(), isolate: false },
          setupFiles: ['./test/browser/clean-page.ts'],
        },
      },
      {
        extends: true,
        optimizeDeps,
        test: {
          name: 'apart',
          ...patience,
          // What puts other modules in the place of the app's needs a page of its own.
          include: ['test/**/*.apart.test.{ts,tsx}'],
          browser: inBrowser(),
        },
      },
      {
        extends: true,
        test: {
          name: 'journeys',
          environment: 'node',
          include: ['test/journeys/**/*.test.ts'],
          globalSetup: ['./test/journeys/server.ts'],
          ...patience,
          isolate: false,
          maxWorkers: 2,
        },
      },
    ],
  },
})
