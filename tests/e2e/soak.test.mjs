// Whatever is pressed, turned and typed, in whatever order: nothing fails, nothing piles up, and the same
// actions lead to the same state. FAREND_SOAK_ACTIONS and FAREND_SOAK_SEED make other runs of it.

import assert from 'node:assert/strict';

import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

import { pageUrl } from './chromium.mjs';
import { inTab } from './flow.mjs';
import { FarendPage } from './page.mjs';

const ACTIONS = Number(process.env.FAREND_SOAK_ACTIONS ?? 300);
const SEED = Number(process.env.FAREND_SOAK_SEED ?? 20261126);
/** The longest that anything on the page waits for changes to rest, and more. */
const REST = 1_000;
/** When the memory is looked at first, as a part of all actions, and how much more it may be at the end. */
const EARLY = 0.25;
const MEGABYTES = 4;

/** Before anything of the page: nothing leaves it, and nothing is left to chance. */
function confine() {
  globalThis.print = () => {};
  globalThis.open = () => globalThis;
  HTMLAnchorElement.prototype.click = () => {};
  Object.defineProperty(navigator, 'clipboard', { value: { writeText: async () => {} } });
  let drawn = 1;
  Math.random = () => (drawn = (drawn * 48271) % 2147483647) / 2147483647;
  globalThis.underway = 0;
  const real = fetch;
  globalThis.fetch = (...asked) => {
    globalThis.underway += 1;
    // Whoever waits for the answer goes on before it counts as come.
    return real(...asked).finally(() => setTimeout(() => (globalThis.underway -= 1)));
  };
}

/** Does something to one of what can be used: which, and what, by two numbers. Tells what it did. */
function act([which, what]) {
  const typed = ['', '0', '1', '12', '-3', '2,5', '540', '1e9', 'much', '99.75', '<b>', 'Ω'];
  const usable = [...document.querySelectorAll('button, summary, select, input:not([type="file"])')].filter(
    (it) => !it.disabled && it.checkVisibility({ visibilityProperty: true }),
  );
  const it = usable[which % usable.length];
  const named = it.closest('[data-testid], [id]');
  const told = `${it.tagName} ${it.dataset.testid ?? ''} in ${named?.dataset.testid ?? named?.id} of ${usable.length}`;
  const say = (event) => it.dispatchEvent(new Event(event, { bubbles: true }));
  if (it.tagName === 'SELECT') {
    it.selectedIndex = what % it.options.length;
    say('change');
  } else if (it.type === 'range') {
    it.value = Number(it.min) + ((Number(it.max) - Number(it.min)) * (what % 101)) / 100;
    say('input');
  } else if (['text', 'search'].includes(it.type)) {
    it.value = typed[what % typed.length];
    say('input');
    say('change');
  } else {
    it.click();
  }
  return told;
}

/** Everything that is left of what was done. */
const state = (tab) =>
  tab.evaluate(() => ({
    link: location.hash,
    kept: Object.entries(localStorage).toSorted(),
    shown: document.body.innerText,
  }));

async function used(tab, session) {
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize, backingStorageSize } = await session.send('Runtime.getHeapUsage');
  return (usedSize + backingStorageSize) / 1e6;
}

async function soak(tab, faults) {
  await tab.clock.install();
  const page = new FarendPage(tab);
  await page.open(pageUrl);
  await page.keptForOffline();
  await tab.clock.pauseAt(Date.now() + REST);
  const session = await tab.context().newCDPSession(tab);
  const busy = () =>
    globalThis.underway > 0 || document.querySelector('[data-testid="grid-progress"][data-done="false"]') !== null;
  const random = xoroshiro128plus(SEED);
  const draw = () => uniformInt(random, 0, 0x7fff_ffff);
  const done = [];
  const megabytes = [];
  for (let action = 0; action < ACTIONS; action += 1) {
    done.push(await tab.evaluate(act, [draw(), draw()]));
    do await tab.clock.runFor(REST);
    while (await tab.evaluate(busy));
    assert.deepEqual(faults, [], `after ${done.length}: ${done.slice(-8).join(', ')}`);
    if (action === Math.floor(ACTIONS * EARLY)) megabytes.push(await used(tab, session));
  }
  megabytes.push(await used(tab, session));
  return { done, megabytes, state: await state(tab) };
}

const runs = [];
for (const time of ['first', 'second']) {
  inTab(`${ACTIONS} actions by chance, the ${time} time`, { before: confine }, async (tab, faults) => {
    const run = await soak(tab, faults);
    const [early, late] = run.megabytes;
    console.log(`${early.toFixed(1)} MB after ${EARLY * ACTIONS} actions, ${late.toFixed(1)} MB after ${ACTIONS}`);
    assert.ok(late - early < MEGABYTES, `${late - early} MB more`);
    runs.push(run);
    if (time === 'second') {
      const [first, second] = runs;
      assert.deepEqual(second.done, first.done);
      assert.deepEqual(second.state, first.state);
    }
  });
}
