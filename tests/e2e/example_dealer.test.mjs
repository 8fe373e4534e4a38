// The example of a dealer's page, from the choice to the sheet.

import assert from 'node:assert/strict';

import { assertAccessible } from './accessibility.mjs';
import { pageUrl } from './chromium.mjs';
import { inTab } from './flow.mjs';
import { inFrame } from './host.mjs';
import { decodedCode, keepPicture } from './paper.mjs';

const example = new URL('example-dealer/', pageUrl).href;

for (const [width, height] of [[390, 844], [1280, 900]]) {
  inTab(`a customer goes through the dealer's page at ${width} px`, { viewport: { width, height }, deviceScaleFactor: 2 }, async (tab, faults) => {
    await tab.goto(example);
    const page = await inFrame(tab, 'iframe[data-ready]');
    await page.part('answer').waitFor();
    assert.match(await page.text('yard-name'), /^Kettle Notch/);
    await page.choose('sorrel-55', 'snow-thrower-60');
    assert.match(await page.text('answer'), /Snow thrower on the Sorrel 55/);
    assert.match(await page.delivered('rear_shaft'), /hp$/);
    await page.openRoute('rear_shaft');
    await page.unfold('cost');
    assert.match(await page.text('cost-rear_shaft'), /CA\$7,380/);
    await assertAccessible(page);
    await keepPicture({ tab }, `example-dealer-${width}`);
    const wide = await tab.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok(wide <= 0, `${wide} px too wide`);
    await page.part('take-home').click();
    await page.part('sheet').waitFor();
    assert.match(await page.text('sheet'), /at the top of the pass/);
    await keepPicture({ tab }, `example-dealer-sheet-${width}`);
    const address = await decodedCode(page);
    assert.equal(address.split('?')[0], pageUrl);
    await tab.goto(address);
    await tab.getByTestId('answer').getByText(/Snow thrower on the Sorrel 55/).waitFor();
    assert.match(await tab.getByTestId('yard-name').innerText(), /^Kettle Notch/);
    assert.deepEqual(faults, []);
  });
}

inTab('the dealer’s page around it is accessible too', {}, async (tab) => {
  await tab.goto(example);
  await inFrame(tab, 'iframe[data-ready]');
  await assertAccessible({ tab });
});
