import { defineConfig, devices } from '@playwright/test';
import { launchOptions } from './programs.ts';

export default defineConfig({
  testDir: '.',
  globalSetup: './global-setup.ts',
  outputDir: '../../test-results',
  // Every test starts a hub and browsers of its own.
  workers: 2,
  fullyParallel: true,
  retries: 0,
  timeout: 600_000,
  // Generous, for a machine that is busy with other work: nothing is judged by the clock.
  expect: { timeout: 60_000 },
  use: {
    serviceWorkers: 'allow',
    // A trace costs a fifth of the time; it is there for whoever looks for a fault.
    trace: process.env['PAIRLOG_TRACE'] ? 'retain-on-failure' : 'off',
    locale: 'en-GB',
    actionTimeout: 60_000,
  },
  projects: [
    {
      name: 'phone',
      testIgnore: /desk|print/,
      use: { ...devices['Pixel 7'], viewport: { width: 360, height: 760 }, launchOptions },
    },
    {
      name: 'desktop',
      testMatch: /desk|print/,
      use: { ...devices['Desktop Chrome'], launchOptions },
    },
  ],
});
