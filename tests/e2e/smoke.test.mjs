import assert from 'node:assert/strict';

import { assertAccessible } from './accessibility.mjs';
import { pageUrl } from './chromium.mjs';
import { flow } from './flow.mjs';

const subFolder = new URL(`.${process.env.FAREND_SUB_FOLDER}/`, pageUrl).href;

flow('the page opens and shows its heading', {}, async (page) => {
  assert.equal(await page.heading().innerText(), 'Farend');
});

flow('the page works from any folder of a host', { url: subFolder }, async (page) => {
  assert.ok(await page.heading().isVisible());
});

flow('the page breaks no accessibility rule', {}, assertAccessible);
