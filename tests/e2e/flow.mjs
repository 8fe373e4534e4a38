// A flow is a test with a fresh browser profile; it fails on any fault of the page, asked for or not.

import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { launch, pageUrl, watch } from './chromium.mjs';
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
 * Runs `body` with the page opened and ready.
 * `options.url` opens another address than the usual one, and `options.tolerates` matches the faults that
 * the flow brings about itself.
 */
export function flow(name, { url = pageUrl, tolerates, ...options }, body) {
  inTab(name, options, async (tab, faults) => {
    const page = new FarendPage(tab);
    await page.open(url);
    await body(page);
    assert.deepEqual(faults.filter((it) => !tolerates?.test(it)), []);
  });
}
