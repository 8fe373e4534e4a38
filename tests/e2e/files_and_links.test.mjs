// A yard of one's own, a broken one, and broken links.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';

import { pageUrl } from './chromium.mjs';
import { flow } from './flow.mjs';

const ownYard = await readFile(new URL('../yards/hand-written.json', import.meta.url), 'utf8');

flow('a yard file written by hand shows its own machine’s six routes', {}, async (page) => {
  const yard = JSON.parse(ownYard.replace(/^\uFEFF/, ''));
  await page.openFile('hand-written.json', ownYard);
  assert.match(await page.text('notice'), /hand-written\.json is open/);
  assert.ok((await page.text('yard-name')).startsWith(yard.name));
  await page.choose(yard.machines[0].id, yard.implements[0].id);
  assert.equal(await page.tab.locator('label.row').count(), 6);
  assert.ok((await page.text('answer')).includes(yard.machines[0].name.split(',')[0]));
});

flow('a broken yard file lists every fault and leaves the open yard as it was', {}, async (page) => {
  await page.choose('heron-68', 'tiller-150');
  const before = await page.shown();
  const yard = JSON.parse(ownYard.replace(/^\uFEFF/, ''));
  yard.machines[0].engine.net_kw = 9000;
  yard.machines[0].engine.rated_rpm = '2,400';
  delete yard.implements[0].name;
  yard.kits[0].ruotes = yard.kits[0].routes;
  await page.openFile('broken.json', JSON.stringify(yard));
  const notice = await page.text('notice');
  for (const fault of [
    /broken\.json can't be used/,
    /machines\[0\]\.engine\.net_kw \(9000\) must be 3 to 600.kW/,
    /machines\[0\]\.engine\.rated_rpm .* decimal point/,
    /implements\[0\]\.name is missing/,
    /kits\[0\]\.ruotes .*Did you mean routes\?/,
  ]) assert.match(notice, fault);
  assert.deepEqual(await page.shown(), before);
  await page.part('close-notice').click();
  await page.part('notice').waitFor({ state: 'detached' });
});

flow('what isn’t JSON is refused with the place of the fault', {}, async (page) => {
  await page.openFile('notes.txt', 'machines:\n  - tractor');
  assert.match(await page.text('notice'), /line 1, column 1/);
});

flow('the same file can be picked again after it was mended', {}, async (page) => {
  await page.openFile('yard.json', '{}');
  assert.match(await page.text('notice'), /faults/);
  await page.openFile('yard.json', ownYard);
  await page.tab.getByText('yard.json is open').waitFor();
});

flow('the demo yard can be saved as a pattern, and opens again', {}, async (page) => {
  await page.openMenu();
  const saved = page.tab.waitForEvent('download');
  await page.part('save-demo').click();
  const text = await readFile(await (await saved).path(), 'utf8');
  await page.openFile('pattern.json', text);
  assert.match(await page.text('notice'), /pattern\.json is open/);
});

for (const [what, link] of [
  ['cut off', (good) => good.slice(0, -6)],
  ['with a letter changed', (good) => good.slice(0, 12) + (good[12] === 'A' ? 'B' : 'A') + good.slice(13)],
  ['of another kind', () => '#section-3'],
]) {
  flow(`a link ${what} opens the start of the yard and says so`, {}, async (page) => {
    const start = await page.shown();
    const first = page.link();
    await page.choose('heron-68', 'tiller-150');
    const good = await page.linkAfter(first);
    await page.tab.goto('about:blank');
    await page.open(pageUrl + link(good));
    assert.match(await page.text('notice'), /link is damaged/);
    assert.deepEqual(await page.shown(), start);
  });
}

flow('a link followed within the page changes what it shows', {}, async (page) => {
  const start = await page.shown();
  const first = page.link();
  await page.choose('gannet-90', 'broom-180');
  await page.linkAfter(first);
  await page.tab.evaluate((hash) => { location.hash = hash; }, first);
  await page.until(
    (answer) => document.querySelector('[data-testid="answer"]').innerText === answer,
    start.answer,
  );
  assert.deepEqual(await page.shown(), start);
});

flow('a link to equipment that this yard lacks names it and shows the rest', {}, async (page) => {
  const ofDemo = page.link();
  await page.openFile('hand-written.json', ownYard);
  const yard = JSON.parse(ownYard.replace(/^\uFEFF/, ''));
  const link = await page.linkAfter(ofDemo);
  await page.openEditor();
  await page.part('to-demo').click();
  await page.part('demo-yes').click();
  await page.kept('yard === null');
  await page.tab.goto('about:blank');
  await page.open(pageUrl + link);
  assert.match(await page.text('notice'), new RegExp(`doesn't have.*: .*${yard.implements[0].id}`));
  assert.equal(await page.part('open-demo').count(), 0);
  assert.ok(await page.part('answer').isVisible());
});

flow('a link of the demo opens the demo where another yard is kept', {}, async (page) => {
  const first = page.link();
  await page.choose('heron-68', 'tiller-150');
  const link = await page.linkAfter(first);
  const meant = await page.shown();
  await page.openFile('hand-written.json', ownYard);
  await page.kept('yard !== null');
  await page.tab.goto('about:blank');
  await page.open(pageUrl + link);
  assert.match(await page.text('notice'), /The demo yard has it/);
  await page.part('open-demo').click();
  await page.part('notice').waitFor({ state: 'detached' });
  assert.deepEqual(await page.shown(), meant);
  // Their own yard isn't lost by that, neither here nor where the browser keeps it.
  await page.part('keeping').getByText(/The demo yard is open/).waitFor();
  await page.kept('yard !== null');
  await page.openEditor();
  await page.part('undo').click();
  await page.part('keeping').waitFor({ state: 'detached' });
  const yard = JSON.parse(ownYard.replace(/^\uFEFF/, ''));
  await page.tab.getByRole('heading', { level: 3 }).or(page.entries().first()).first().waitFor();
  assert.ok((await page.text('yard-name')).startsWith(yard.name));
});

flow('a yard that was opened by file opens again with the page', {}, async (page) => {
  const yard = JSON.parse(ownYard.replace(/^\uFEFF/, ''));
  await page.openFile('hand-written.json', ownYard);
  await page.tab.reload();
  await page.heading().waitFor();
  assert.ok((await page.text('yard-name')).startsWith(yard.name));
});

flow('the link can be copied', { permissions: ['clipboard-read', 'clipboard-write'] }, async (page) => {
  await page.choose('wren-18', 'broom-180');
  await page.openMenu();
  await page.part('copy-link').click();
  await page.tab.getByText('Copied.').waitFor();
  const copied = await page.tab.evaluate(() => navigator.clipboard.readText());
  assert.equal(new URL(copied).hash, page.link());
});

flow('nothing is asked of any server once the page stands', {}, async (page) => {
  const asked = [];
  page.tab.on('request', (request) => asked.push(request.url()));
  await page.choose('curlew-46', 'flail-mulcher-140');
  await page.openRoute('pump_pack');
  await page.control('packflow').drag(0.8);
  await page.openFile('hand-written.json', ownYard);
  assert.deepEqual(asked, []);
});
