// For glare and gloves: large, strong, and the screen stays on while something is shown.

import assert from 'node:assert/strict';

import { assertStrong } from './accessibility.mjs';
import { flow } from './flow.mjs';
import { VIEWS } from './views.mjs';

const turnOn = (page) => page.part('outdoors').click();

/** What can be pressed and is smaller than a thumb in a glove, and text that is smaller than 18 px. */
const tooSmall = (page) =>
  page.tab.evaluate(() => {
    const seen = (element) => element.checkVisibility({ visibilityProperty: true });
    const found = [];
    const pressed = 'button, select, summary, input:not([type="file"]), .button';
    for (const element of document.querySelectorAll(pressed)) {
      // A choice takes the press of its whole label.
      const target = element.closest('label') ?? element;
      const { width, height } = target.getBoundingClientRect();
      if (seen(element) && width > 1 && (height < 63.5 || width < 63.5)) {
        found.push(`${element.dataset.testid ?? element.className}: ${width} x ${height}`);
      }
    }
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const { parentElement: parent, data } = walker.currentNode;
      const isDrawn = parent.closest('svg, .hidden, script, style');
      if (!data.trim() || isDrawn || !seen(parent)) continue;
      const size = parseFloat(getComputedStyle(parent).fontSize);
      if (size < 18) found.push(`${data.trim().slice(0, 40)}: ${size} px`);
    }
    return [...new Set(found)];
  });

flow('the choice stays with the browser, and goes again', {}, async (page) => {
  await turnOn(page);
  assert.equal(await page.part('outdoors').getAttribute('aria-pressed'), 'true');
  await page.tab.reload();
  await page.heading().waitFor();
  assert.equal(await page.part('outdoors').getAttribute('aria-pressed'), 'true');
  await turnOn(page);
  assert.equal(await page.part('outdoors').getAttribute('aria-pressed'), 'false');
  assert.equal(await page.tab.locator('html').getAttribute('data-outdoors'), null);
});

for (const [width, height] of [[768, 1024], [1024, 768], [390, 844], [844, 390]]) {
  flow(`all is large and in reach at ${width} x ${height}`, { viewport: { width, height } }, async (page) => {
    await turnOn(page);
    for (const [view, open] of Object.entries(VIEWS)) {
      await open(page);
      assert.deepEqual(await tooSmall(page), [], view);
      const over = await page.tab.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      assert.ok(over <= 0, `${view}: ${over} px lie beside the screen`);
    }
  });
}

flow('text keeps 7:1 in every view', { viewport: { width: 1024, height: 768 } }, async (page) => {
  await turnOn(page);
  for (const open of Object.values(VIEWS)) {
    await open(page);
    await assertStrong(page);
  }
});

const withLock = () => {
  const told = (globalThis.lockTold = []);
  const lock = {
    request: async () => {
      told.push('held');
      return { release: async () => void told.push('let go') };
    },
  };
  Object.defineProperty(navigator, 'wakeLock', { value: lock });
};
const told = (page) => page.tab.evaluate(() => lockTold.join());

flow('the screen stays on while practice is there', { before: withLock }, async (page) => {
  assert.equal(await told(page), '');
  await page.part('view-practice').click();
  await page.part('practice-walk').waitFor();
  await page.until(() => lockTold.join() === 'held');
  await page.part('view-pair').click();
  await page.part('answer').waitFor();
  await page.until(() => lockTold.join() === 'held,let go');
});
