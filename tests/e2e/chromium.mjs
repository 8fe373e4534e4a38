// Starts Chromium, and tells everything that a page gets wrong on its own.

import { readFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';

const required = (name) => {
  const value = process.env[name];
  if (!value) throw new Error(`${name} is not set: run this by \`cargo xtask test\``);
  return value;
};

export const pageUrl = required('FAREND_URL');

// The unit tests in the browser start Chromium with the same options.
const options = new URL('../webdriver.json', import.meta.url);
const { args } = JSON.parse(await readFile(options, 'utf8'))['goog:chromeOptions'];

export const launch = () => chromium.launch({ executablePath: required('CHROMIUM'), args });

/** What goes wrong in `page` from now on, in words. */
export function watch(page) {
  const faults = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) faults.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`uncaught: ${error.message}`));
  page.on('requestfailed', (request) =>
    faults.push(`request failed: ${request.url()} ${request.failure()?.errorText}`),
  );
  page.on('response', (response) => {
    if (response.status() >= 400) faults.push(`answer ${response.status()}: ${response.url()}`);
  });
  return faults;
}
