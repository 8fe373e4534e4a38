// A flow is a test with a fresh browser profile; it fails on any fault of the page, asked for or not:
// a console message, a breach of its policy, a request after it has loaded. With FAREND_OFFLINE=1 it
// runs without network, after one visit.

import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { launch, pageUrl, strayRequests, tellViolations, watch } from './chromium.mjs';
import { FarendPage } from './page.mjs';

let browser;
before(async () => {
  browser = await launch();
});
after(() => browser?.close());

/**
 * Runs `body` with a tab of a fresh profile, and with all that goes wrong in it.
 * `options` go to the browser context; `options.before` is run in each page before anything of it.
 */
export function inTab(name, options, body) {
  test(name, async () => {
    const { before: script, ...contextOptions } = options;
    const context = await browser.newContext(contextOptions);
    // What is not there after this long, on a busy machine too, will not come.
    context.setDefaultTimeout(10_000);
    await tellViolations(context);
    if (script) await context.addInitScript(script);
    try {
      const tab = await context.newPage();
      await body(tab, watch(tab));
    } finally {
      await context.close();
    }
  });
}

/**
 * Runs `body` with the page opened and ready; `options.url` is another address than the usual one.
 */
export function flow(name, { url = pageUrl, ...options }, body) {
  inTab(name, options, async (tab, faults) => {
    const page = new FarendPage(tab);
    await page.open(url);
    await page.keptForOffline();
    if (process.env.FAREND_OFFLINE) {
      await tab.context().setOffline(true);
      await page.open(url);
    }
    const stray = strayRequests(tab.context());
    await body(page);
    assert.deepEqual([...faults, ...stray], []);
  });
}
