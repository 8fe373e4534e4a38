// The frame tells its height, to the one that was named and to nobody else.

import assert from 'node:assert/strict';

import { pageUrl } from './chromium.mjs';
import { inTab } from './flow.mjs';
import { frameTag, framedAddress, havePage, inFrame, openHost, other, own } from './host.mjs';

/** Notes all messages that come; sets the frame's height to exactly what it is told. */
const OBEDIENT = `<script>
  const heard = [];
  addEventListener('message', ({ origin, data }) => {
    heard.push({ origin, data });
    if (data.height) document.querySelector('iframe').style.height = data.height + 'px';
  });
</script>`;

/** A frame whose edge counts as part of its height, so that there is always less room than was told. */
const NARROW = '<style>iframe { box-sizing: border-box !important; border: 3px solid !important }</style>';

const heard = (tab) => tab.evaluate('heard');
const heights = async (tab) => (await heard(tab)).filter(({ data }) => data.height).map(({ data }) => data.height);

/** Lets so many pictures be drawn. */
const frames = (tab, count) =>
  tab.evaluate(
    (left) => new Promise((done) => {
      const next = () => ((left -= 1) > 0 ? requestAnimationFrame(next) : done());
      next();
    }),
    count,
  );

/** Whether all that is in the frame has room there. */
const hasRoom = (page) =>
  page.tab.waitForFunction(() => document.body.getBoundingClientRect().height <= innerHeight + 1);

const open = async (tab, origin, query, more = '', sandbox = undefined) => {
  await openHost(tab, origin, OBEDIENT + more + frameTag(framedAddress(query), { sandbox }));
  const page = await inFrame(tab);
  // The last part of the page: what has yet to come would change its height.
  await page.tab.locator('.foot').waitFor();
  return page;
};

for (const [where, origin, sandbox] of [
  ['the same origin', () => own],
  ['another origin', other],
  ['another origin, to a frame without one,', other, 'allow-scripts'],
]) {
  inTab(`a host at ${where} hears what it needs`, {}, async (tab, faults) => {
    const from = origin();
    const page = await open(tab, from, { origin: from }, '', sandbox);
    await hasRoom(page);
    const all = await heard(tab);
    for (const { origin, data } of all) {
      assert.equal(origin, sandbox ? 'null' : own);
      assert.equal(data.farend, 1);
      assert.equal(Object.keys(data).length, 2);
    }
    assert.equal(all.filter(({ data }) => data.ready === true).length, 1);
    // More in it, and less again.
    const before = (await heights(tab)).at(-1);
    await page.unfold('fit');
    await hasRoom(page);
    const unfolded = (await heights(tab)).at(-1);
    assert.ok(unfolded > before + 50, `${unfolded} after ${before}`);
    await page.part('fit').locator('summary').first().click();
    await tab.waitForFunction((height) => heard.at(-1).data.height === height, before);
    assert.deepEqual(faults, []);
  });
}

for (const [what, more] of [['exactly what it is told', ''], ['a little less than it is told', NARROW]]) {
  inTab(`a host that gives ${what} is told no more than a few times`, { viewport: { width: 800, height: 600 } }, async (tab, faults) => {
    const page = await open(tab, other(), { origin: other() }, more);
    await page.tab.waitForFunction(() => document.querySelector('.curve canvas')?.width > 0);
    // About three seconds of a screen.
    await frames(tab, 180);
    for (const view of ['grid', 'yard', 'practice', 'pair']) {
      await page.openView(view);
      await frames(tab, 30);
    }
    const told = await heights(tab);
    assert.ok(told.length >= 5 && told.length <= 30, told.join());
    const last = told.length;
    await frames(tab, 60);
    assert.equal((await heights(tab)).length, last);
    assert.deepEqual(faults, []);
  });
}

for (const [what, query] of [['nobody', {}], ['another host', { origin: 'https://www.example.com' }]]) {
  inTab(`where ${what} is named, no host is told`, {}, async (tab) => {
    const page = await open(tab, other(), query);
    await page.unfold('fit');
    await frames(tab, 30);
    assert.deepEqual(await heard(tab), []);
  });
}

inTab('a page by itself tells nothing', {}, async (tab, faults) => {
  await tab.addInitScript('globalThis.heard = []; addEventListener("message", ({ data }) => heard.push(data))');
  await tab.goto(`${pageUrl}?origin=${own}`);
  await tab.getByTestId('answer').waitFor();
  await frames(tab, 30);
  assert.deepEqual(await heard(tab), []);
  assert.deepEqual(faults, []);
});

const PLACE = `<div data-farend data-farend-units="us" data-farend-machine="heron-68"><p>No script</p></div>
  <script src="${pageUrl}embed.js"></script>`;

inTab('the script makes the frame, and gives it the height that it tells', {}, async (tab, faults) => {
  await openHost(tab, other(), PLACE);
  const page = await inFrame(tab, 'iframe[data-ready]');
  await hasRoom(page);
  assert.match(await page.text('answer'), /Heron 68/);
  const frame = tab.locator('iframe');
  assert.equal(await frame.getAttribute('title'), 'What really drives the implement');
  assert.match(await frame.getAttribute('sandbox'), /allow-scripts/);
  assert.equal(await frame.getAttribute('allow'), 'clipboard-write');
  assert.equal(await tab.getByText('No script').count(), 0);
  const { searchParams } = new URL(await frame.getAttribute('src'));
  assert.deepEqual(Object.fromEntries(searchParams), { units: 'us', machine: 'heron-68', origin: other() });
  assert.deepEqual(faults, []);
});

inTab('the script believes nobody but its own frame', {}, async (tab, faults) => {
  const liar = (origin) => `<iframe title="Another" src="${origin}/liar.html" style="display: none"></iframe>`;
  for (const origin of [own, other()]) await havePage(tab, origin, '/liar.html', '');
  const count = '<script>globalThis.lies = 0; addEventListener("message", ({ data }) => { lies += data.lie === true })</script>';
  await openHost(tab, other(), PLACE + liar(own) + liar(other()) + count);
  const page = await inFrame(tab, 'iframe[data-ready]');
  await hasRoom(page);
  const frame = tab.locator('iframe[data-ready]');
  const height = await frame.evaluate((it) => it.clientHeight);
  // From a frame of Farend's own origin, from one of the host's, and from the host itself.
  const liars = tab.frames().filter((it) => it.url().endsWith('/liar.html'));
  assert.equal(liars.length, 2);
  for (const it of [...liars, tab]) {
    await it.evaluate(() => parent.postMessage({ farend: 1, height: 777, lie: true }, '*'));
  }
  await tab.waitForFunction('lies === 3');
  assert.equal(await frame.evaluate((it) => it.clientHeight), height);
  // Its own frame, led to a page of another origin.
  await frame.evaluate((it, address) => { it.src = address; }, `${other()}/liar.html`);
  const led = await (await frame.elementHandle()).contentFrame();
  await led.waitForURL(/liar/);
  await led.evaluate(() => parent.postMessage({ farend: 1, height: 777, lie: true }, '*'));
  await tab.waitForFunction('lies === 4');
  assert.equal(await frame.evaluate((it) => it.clientHeight), height);
  // Chromium warns of the sandbox around the host's own page, which only this flow puts there.
  assert.deepEqual(faults.filter((it) => !/can escape its sandboxing/.test(it)), []);
});
