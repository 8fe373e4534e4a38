// What a host can want of the page, and what is told of what can't be.

import assert from 'node:assert/strict';

import { assertAccessible } from './accessibility.mjs';
import { pageUrl } from './chromium.mjs';
import { flow } from './flow.mjs';
import { framed, framedAddress } from './host.mjs';

const style = (page, name) =>
  page.tab.evaluate((it) => getComputedStyle(document.documentElement).getPropertyValue(it).trim(), name);

const complaints = async (page) => {
  await page.part('for-host').locator('summary').click();
  return page.part('for-host').locator('li').allInnerTexts();
};

/** A link of the page by itself to another pair. */
async function linkTo(page, machine, implement, view = 'pair') {
  const steps = [
    () => page.machine().selectOption(machine),
    () => page.implement().selectOption(implement),
    ...(view === 'pair' ? [] : [() => page.openView(view)]),
  ];
  let link = page.link();
  for (const step of steps) {
    await step();
    link = await page.linkAfter(link);
  }
  return link;
}

flow('a fixed machine has no list, and no link leads to another', {}, async (page) => {
  const link = await linkTo(page, 'wren-18', 'broom-180');
  await page.tab.goto('about:blank');
  await page.open(framedAddress({ machine: 'heron-68' }) + link);
  assert.equal(await page.machine().count(), 0);
  assert.match(await page.text('answer'), /broom on the Heron 68/i);
  await page.linkAfter(link);
  await page.implement().selectOption('tiller-150');
  await page.part('answer').getByText(/tiller on the Heron 68/i).waitFor();
  await page.linkAfter(link);
  // A link that is followed within the frame.
  await page.tab.evaluate((hash) => { location.hash = hash; }, link);
  await page.part('answer').getByText(/broom on the Heron 68/i).waitFor();
  assert.equal(await page.part('view-grid').count(), 0);
  assert.equal(await page.part('view-practice').count(), 0);
  await assertAccessible(page);
});

flow('a fixed pair leaves nothing to choose', { url: framedAddress({ machine: 'heron-68', implement: 'tiller-150' }) }, async (page) => {
  assert.equal(await page.machine().count() + await page.implement().count(), 0);
  assert.match(await page.text('answer'), /tiller on the Heron 68/i);
  assert.equal(await page.part('for-host').count(), 0);
});

flow('only the parts that are wanted are there, with the yard, the answer and the dangers', {
  url: framedAddress({ show: 'routes, choices' }),
}, async (page) => {
  for (const there of ['answer', 'yard-name', 'machine', 'rear_shaft']) {
    assert.ok(await page.part(there).isVisible(), there);
  }
  for (const gone of ['units-us', 'menu', 'save-menu', 'view-pair', 'ledger', 'what-if', 'fit', 'work', 'take-home']) {
    assert.equal(await page.part(gone).count(), 0, gone);
  }
  assert.ok(await page.tab.locator('.cautions').isVisible());
  assert.ok((await page.tab.locator('.brand').boundingBox()).width <= 1);
  await assertAccessible(page);
});

flow('no link opens a view that isn’t wanted', {}, async (page) => {
  const link = await linkTo(page, 'wren-18', 'broom-180', 'yard');
  await page.tab.goto('about:blank');
  await page.open(framedAddress({ show: 'choices,routes' }) + link);
  assert.ok(await page.part('answer').isVisible());
  assert.equal(await page.part('entry').count(), 0);
});

flow('units and currency begin as the host wants them', { url: framedAddress({ units: 'us', currency: 'CAD' }) }, async (page) => {
  assert.ok(await page.part('units-us').isChecked());
  await page.unfold('cost');
  assert.equal(await page.part('currency').inputValue(), 'CAD');
  await page.part('hour').fill('60');
  await page.part('hour').press('Enter');
  // The reader's own units are in the link and count before the host's.
  const before = page.link();
  await page.pick('units-metric');
  await page.linkAfter(before);
  await page.tab.reload();
  await page.heading().waitFor();
  assert.ok(await page.part('units-metric').isChecked());
});

flow('readable colours are taken over, and bars keep theirs', {
  url: framedAddress({ accent: 'rgb(31 90 46)', 'accent-ground': '#e4f0e6', ground: 'white' }),
}, async (page) => {
  assert.deepEqual(
    await Promise.all(['--deep', '--deep-soft', '--paper'].map((it) => style(page, it))),
    ['#1f5a2e', '#e4f0e6', '#ffffff'],
  );
  const bar = await page.route('rear_shaft').locator('.arrives').evaluate((it) => getComputedStyle(it).fill);
  assert.equal(bar, 'rgb(22, 75, 107)');
  assert.equal(await page.part('for-host').count(), 0);
  await assertAccessible(page);
});

flow('colours that can’t be read or aren’t any are told, and the page’s own stay', {
  url: framedAddress({ accent: 'yellow', 'accent-ground': 'rgb(0 0 0 / 50%)', ground: 'var(--ink)' }),
}, async (page) => {
  const told = await complaints(page);
  assert.equal(told.length, 3);
  for (const pattern of [
    /^accent \(#ffff00 on #ffffff: 1\.1 to 1\) must be 4\.5 to 21 to 1/,
    /^accent-ground .* must be a colour/,
    /^ground .* must be a colour/,
  ]) assert.ok(told.some((it) => pattern.test(it)), `${pattern}: ${told}`);
  assert.equal(await style(page, '--deep'), '#164b6b');
  await assertAccessible(page);
});

flow('colours that go with the page’s own but not with each other are told', {
  url: framedAddress({ accent: '#766640', 'accent-ground': '#d8d8d8' }),
}, async (page) => {
  assert.match((await complaints(page)).join(), /^accent \(#766640 on #d8d8d8: 3\.\d to 1\)/);
  assert.deepEqual([await style(page, '--deep'), await style(page, '--deep-soft')], ['#164b6b', '#d8d8d8']);
});

framed('everything that is wrong is told at once, at the foot, and the page works', {
  query: {
    machine: 'rowing-boat',
    units: 'imperial',
    lang: 'tlh',
    currency: 'dollars',
    show: 'choices,routes,prices',
    accent: 'url(x)',
    yard: 'ftp://example.com/yard.json',
    origin: 'https://example.com/',
    machin: 'heron-68',
  },
}, async (page, tab, faults) => {
  const told = await complaints(page);
  const names = told.map((it) => it.split(' ')[0]).sort();
  assert.deepEqual(names, ['accent', 'currency', 'lang', 'machin', 'machine', 'origin', 'show', 'units', 'yard']);
  assert.match(await page.text('for-host'), /9 options can't be used/);
  assert.equal(await page.part('notice').count(), 0);
  await page.choose('heron-68', 'tiller-150');
  assert.match(await page.text('answer'), /tiller on the Heron 68/i);
  await assertAccessible(page);
  assert.deepEqual(faults, []);
});

flow('whoever passes the address on may add to it', { url: `${pageUrl}?from=a-letter` }, async (page) => {
  assert.equal(await page.part('for-host').count(), 0);
});

flow('options aren’t markup', { url: framedAddress({ machine: '<img src=x onerror=alert(1)>', accent: '<b>' }) }, async (page) => {
  assert.match((await complaints(page)).join(), /<img src=x/);
  assert.equal(await page.part('for-host').locator('img, b').count(), 0);
});
