// Starts Chromium, and tells everything that a page gets wrong on its own.

import { readFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';

export const required = (name) => {
  const value = process.env[name];
  if (!value) throw new Error(`${name} is not set: run this by \`cargo xtask test\``);
  return value;
};

export const pageUrl = required('FAREND_URL');

// The unit tests in the browser start Chromium with the same options.
const options = new URL('../webdriver.json', import.meta.url);
const { args } = JSON.parse(await readFile(options, 'utf8'))['goog:chromeOptions'];

export const launch = (more = []) =>
  chromium.launch({ executablePath: required('CHROMIUM'), args: [...args, ...more] });

/** What goes wrong in `page` from now on, in words. */
export function watch(page) {
  const faults = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) faults.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`uncaught: ${error.message}`));
  // What is given up because the page was left for another is no fault. Another asks for its document
  // first; an empty one asks for nothing, and is there afterwards.
  let documents = 0;
  const askedIn = new WeakMap();
  const givenUp = new Set();
  page.on('request', (request) => {
    if (request.isNavigationRequest()) documents += 1;
    askedIn.set(request, documents);
  });
  page.on('domcontentloaded', () => {
    for (const fault of givenUp) faults.splice(faults.indexOf(fault), 1);
    givenUp.clear();
  });
  page.on('requestfailed', (request) => {
    const why = request.failure()?.errorText;
    const isGivenUp = why === 'net::ERR_ABORTED';
    if (isGivenUp && askedIn.get(request) < documents) return;
    const fault = `request failed: ${request.url()} ${why}`;
    if (isGivenUp) givenUp.add(fault);
    faults.push(fault);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) faults.push(`answer ${response.status()}: ${response.url()}`);
  });
  return faults;
}

/** What pages of `context` violate of their policy goes to their consoles, from its next page on. */
export const tellViolations = (context) =>
  context.addInitScript(() => {
    addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sample }) =>
      console.error(`policy: ${effectiveDirective} keeps out ${blockedURI} ${sample}`),
    );
  });

/**
 * What pages of `context` ask a server for from now on. What the service worker answers isn't asked
 * for, nor is a page by whoever opens it; and what the worker itself asks for, its script and the
 * files of its list, the driver doesn't tell.
 */
export function strayRequests(context) {
  const stray = [];
  const asked = new Set();
  context.on('request', (request) => {
    const isOpened = request.isNavigationRequest() && !request.frame().parentFrame();
    if (/^https?:/.test(request.url()) && !isOpened) asked.add(request);
  });
  context.on('response', (response) => {
    const isStray = asked.has(response.request()) && !response.fromServiceWorker();
    if (isStray) stray.push(`asked for: ${response.url()}`);
  });
  return stray;
}
