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

flow('what is heard has a space where the eye sees one, and the unit too', {}, async (page) => {
  const stages = page.tab.locator('.stages');
  await stages.getByRole('cell', { name: /^[\d.]+.kW [\d,]+.rpm, [\d,]+.N·m$/ }).first().waitFor();
  await page.openView('grid');
  await page.reckoned();
  await page.tab.getByRole('gridcell', { name: /^Ample [\d.]+ Mid shaft, ask first$/ }).first().waitFor();
  await page.openEditor();
  const power = page.tab.getByRole('textbox', { name: 'Net power', exact: true });
  const described = await power.evaluate((it) =>
    it.getAttribute('aria-describedby').split(' ').map((id) => document.getElementById(id)?.innerText),
  );
  assert.equal(described[0], 'kW');
  await page.tab.getByRole('textbox', { name: 'Rated speed needed', exact: true }).waitFor();
});

flow('nothing without words is among what is read', {}, async (page) => {
  const empty = () => [...document.querySelectorAll('[role="alert"]')].filter((it) => it.checkVisibility() && !it.innerText.trim()).length;
  for (const open of Object.values(VIEWS)) {
    await open(page);
    assert.equal(await page.tab.evaluate(empty), 0);
  }
});
