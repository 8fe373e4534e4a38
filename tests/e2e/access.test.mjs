// Every view, in every look, in both systems of units, by itself and in a frame: no rule is broken.

import assert from 'node:assert/strict';

import { assertAccessible } from './accessibility.mjs';
import { pageUrl } from './chromium.mjs';
import { flow } from './flow.mjs';
import { framed } from './host.mjs';
import { VIEWS } from './views.mjs';

const LOOKS = {
  plain: {},
  'for glare and gloves': { outdoors: true },
  'in colours of the reader’s own': { forcedColors: 'active' },
};

async function look(page, outdoors) {
  if (outdoors) await page.part('outdoors').click();
  for (const open of Object.values(VIEWS)) {
    await open(page);
    await assertAccessible(page);
  }
}

for (const [name, { outdoors, ...options }] of Object.entries(LOOKS)) {
  for (const units of ['metric', 'us']) {
    flow(`${name}, ${units}, by itself: no view breaks a rule`, { ...options, url: `${pageUrl}?units=${units}` }, (page) =>
      look(page, outdoors),
    );
    framed(`${name}, ${units}, in a frame: no view breaks a rule`, { ...options, query: { units } }, async (page, _, faults) => {
      await look(page, outdoors);
      assert.deepEqual(faults, []);
    });
  }
}

flow('nothing on the page moves by itself', {}, async (page) => {
  for (const open of Object.values(VIEWS)) {
    await open(page);
    assert.deepEqual(await page.tab.evaluate(() => document.getAnimations().length), 0);
  }
});
