/**
 * How the browser tests run: against servers that `support/browser-lanes.mjs` starts
 * on copies of a fresh demo scenario, in each one test at a time, because they share that scenario. A
 * test tagged @tablet or @phone runs on that screen as well, one tagged @narrow on those alone.
 *
 * By hand, against a server of one's own:
 * `ANATHECA_URL=http://localhost:3000 npx playwright test --config tests/playwright.config.ts`
 */
import path from "node:path";
import { defineConfig, type ReporterDescription } from "@playwright/test";

const { ANATHECA_URL, ANATHECA_BROWSER_RESULTS, ANATHECA_BROWSER_OUTPUT, CHROMIUM_PATH } = process.env;

/** Root may not use the browser's sandbox; a test browser asks nobody outside for anything. */
const browserFlags = [
  ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

const reporters: ReporterDescription[] = [["list"]];
if (ANATHECA_BROWSER_RESULTS) reporters.push(["json", { outputFile: ANATHECA_BROWSER_RESULTS }]);

export default defineConfig({
  testDir: path.join(import.meta.dirname, "browser"),
  testMatch: "**/*.test.ts",
  outputDir: ANATHECA_BROWSER_OUTPUT ?? path.join(import.meta.dirname, "../test-results"),
  reporter: reporters,
  workers: 1,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  use: {
    baseURL: ANATHECA_URL ?? "http://localhost:3000",
    browserName: "chromium",
    locale: "en-GB",
    timezoneId: "Europe/Vienna",
    screenshot: "only-on-failure",
    trace: "retain-on-failure",
    launchOptions: { args: browserFlags, ...(CHROMIUM_PATH ? { executablePath: CHROMIUM_PATH } : {}) },
  },
  projects: [
    { name: "desktop", grepInvert: /@narrow/, use: { viewport: { width: 1440, height: 900 } } },
    { name: "tablet", grep: /@tablet/, use: { viewport: { width: 1024, height: 768 }, hasTouch: true } },
    {
      name: "phone",
      grep: /@phone/,
      use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    },
  ],
});
