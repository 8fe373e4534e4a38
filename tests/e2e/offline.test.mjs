// The page without network, on its way to a next version, and on hosts and in browsers that refuse.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { after, before, test } from 'node:test';

import { assertAccessible } from './accessibility.mjs';
import { launch, required, tellViolations, watch } from './chromium.mjs';
import { host } from './own_host.mjs';
import { FarendPage } from './page.mjs';

const dist = required('FAREND_DIST');
const next = required('FAREND_NEXT');

let browser;
before(async () => {
  browser = await launch();
});
after(() => browser?.close());

/** Runs `body` with a host of its own, and with what opens a page there. */
function hosted(name, options, body) {
  test(name, async () => {
    const { script, mayFail, ...contextOptions } = options;
    const its = await host(dist);
    const context = await browser.newContext(contextOptions);
    context.setDefaultTimeout(10_000);
    await tellViolations(context);
    if (script) await context.addInitScript(script);
    const faults = [];
    const open = async (hash = '') => {
      const tab = await context.newPage();
      faults.push(watch(tab));
      const page = new FarendPage(tab);
      await page.open(its.url + hash);
      return page;
    };
    try {
      await body(its, open, context);
      if (!mayFail) assert.deepEqual(faults.flat(), []);
    } finally {
      await context.close();
      await its.close();
    }
  });
}

const version = async (folder) =>
  /name="page-version" content="(\w+)"/.exec(await readFile(join(folder, 'index.html'), 'utf8'))[1];

/** The files that a version's worker keeps. */
const list = async (folder) => {
  const worker = await readFile(join(folder, 'sw.js'), 'utf8');
  return JSON.parse(/= (\{.*\});/.exec(worker)[1]).files.map(({ path }) => path.replace('./', ''));
};

/** The files that the page has loaded since it was opened. */
const loaded = (page) =>
  page.tab.evaluate(() =>
    performance.getEntriesByType('resource').map(({ name }) => new URL(name).pathname.slice(1)),
  );

const assertWhollyOf = async (page, folder) => {
  assert.ok((await page.text('version')).includes(`(${await version(folder)})`));
  const files = await list(folder);
  const names = await loaded(page);
  assert.ok(names.length > 4, names.join());
  for (const name of names) assert.ok(files.includes(name), `${name} isn't of the version`);
};

const reload = async (page) => {
  await page.tab.reload();
  await page.heading().waitFor();
};

const caches = (page) => page.tab.evaluate(() => caches.keys());

/** Looks for a next version, and waits for what becomes of it. */
const update = (page) =>
  page.tab.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    const ended = new Promise((end) => {
      registration.addEventListener('updatefound', () => {
        const incoming = registration.installing;
        incoming.addEventListener('statechange', () => end(incoming.state), { once: true });
      });
    });
    await registration.update();
    return ended;
  });

/** Opens the whole yard, and waits until the page's own worker has reckoned it. */
const reckon = async (page) => {
  await page.openView('grid');
  await page.reckoned();
  assert.equal(page.tab.workers().length, 1);
};

hosted('after one visit the page opens without any host, with its worker', {}, async (its, open) => {
  const page = await open();
  await page.keptForOffline();
  const link = page.link();
  await its.close();
  await reload(page);
  assert.equal(page.link(), link);
  await reckon(page);
  const again = await open('index.html?from=elsewhere');
  assert.ok(await again.part('answer').isVisible());
  await assertAccessible(page);
  const opened = page.tab.context().waitForEvent('page');
  await page.part('notices').click();
  const notices = await (await opened).locator('body').innerText();
  assert.match(notices, /^.?Farend is licensed under MIT OR Apache-2\.0[^]*made by wasm-bindgen[^]*==== /);
});

hosted('the version stands at the foot and on the sheet', {}, async (its, open) => {
  const page = await open();
  const told = `(${await version(dist)})`;
  assert.ok((await page.text('version')).includes(told));
  await page.part('take-home').click();
  assert.ok((await page.text('sheet')).includes(told));
});

hosted('two tabs go over to a next version when each says so, with nothing lost or mixed', {}, async (its, open) => {
  const [one, two] = [await open(), await open()];
  await one.keptForOffline();
  await reload(one);
  await reload(two);
  its.folder = next;
  assert.equal(await update(one), 'installed');
  for (const page of [one, two]) {
    await page.part('newer').waitFor();
    await assertWhollyOf(page, dist);
  }
  // A reload alone changes nothing, and it's offered again.
  await reload(two);
  await two.part('newer').waitFor();
  await assertWhollyOf(two, dist);
  await assertAccessible(two);
  await one.part('reload-later').click();
  await one.part('newer').waitFor({ state: 'detached' });

  // Neither the choice nor the change has come to rest.
  await two.openRoute('mid_shaft');
  await two.openEditor();
  await two.openEntry('Curlew 46');
  await two.enter('engine.net_kw', '41');
  const start = two.tab.waitForEvent('load');
  await two.part('reload-now').click();
  await start;
  await two.heading().waitFor();
  await assertWhollyOf(two, next);
  await two.openEntry('Curlew 46');
  assert.equal(await two.field('engine.net_kw').inputValue(), '41');
  await two.openView('pair');
  assert.equal(await two.openedRoute(), 'mid_shaft');
  assert.equal(await two.part('newer').count(), 0);

  // The other tab still runs the version before, and starts what it needs of it.
  assert.equal(await one.part('newer').count(), 0);
  await reckon(one);
  await assertWhollyOf(one, dist);
  await reload(one);
  await assertWhollyOf(one, next);
  await one.tab.close();
  // With no page of it left, the version before is forgotten.
  await reload(two);
  await two.until(async () => (await caches.keys()).length === 1);
  assert.match((await caches(two))[0], new RegExp(`${await version(next)}$`));
});

hosted('the offer can be taken after another tab has taken it', {}, async (its, open) => {
  const [one, two] = [await open(), await open()];
  await one.keptForOffline();
  its.folder = next;
  assert.equal(await update(one), 'installed');
  for (const page of [one, two]) {
    await page.part('newer').waitFor();
    const start = page.tab.waitForEvent('load');
    await page.part('reload-now').click();
    await start;
    await page.heading().waitFor();
    await assertWhollyOf(page, next);
  }
});

hosted('who wouldn’t keep the changes is told before reloading', {
  script: () => {
    Object.defineProperty(window, 'localStorage', { get: () => null });
  },
}, async (its, open) => {
  const page = await open();
  await page.keptForOffline();
  await page.openEditor();
  await page.openEntry('Curlew 46');
  await page.enter('engine.net_kw', '41');
  its.folder = next;
  await update(page);
  await page.part('reload-now').click();
  await page.part('newer').filter({ hasText: 'would lose' }).waitFor();
  const file = await page.saveBy('save-before');
  assert.equal(JSON.parse(file.bytes).machines[2].engine.net_kw, 41);
  await assertWhollyOf(page, dist);
  await page.part('reload-later').click();
  assert.equal(await page.field('engine.net_kw').inputValue(), '41');
});

for (const [what, damage] of [['a fault of the host', 500], ['a damaged file', 'not the page']]) {
  hosted(`${what} while a next version comes in leaves the one before in charge`, {}, async (its, open) => {
    const page = await open();
    await page.keptForOffline();
    its.folder = next;
    its.instead.set('/index.html', damage);
    assert.equal(await update(page), 'redundant');
    assert.equal(await page.part('newer').count(), 0);
    await reload(page);
    await assertWhollyOf(page, dist);
    its.instead.clear();
    assert.equal(await update(page), 'installed');
    await page.part('newer').waitFor();
  });
}

hosted('the worker that takes its place is rid of it', {}, async (its, open) => {
  const page = await open();
  await page.keptForOffline();
  await page.tab.evaluate(() => caches.open('of another page'));
  its.instead.set('/sw.js', await readFile(join(dist, 'sw-off.js'), 'utf8'));
  await page.tab.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
  await page.until(async () => !(await navigator.serviceWorker.getRegistration()));
  assert.deepEqual(await caches(page), ['of another page']);
  // Who is in the middle of something stays there.
  await page.openRoute('mid_shaft');
  assert.equal(await page.openedRoute(), 'mid_shaft');
  its.folder = next;
  its.asked.length = 0;
  const again = await open();
  assert.ok(its.asked.includes('/index.html'));
  await assertWhollyOf(again, next);
  assert.equal(await again.part('page-kept').innerText(), '');
});

hosted('what isn’t the page’s own goes to the host', { mayFail: true }, async (its, open) => {
  const page = await open();
  await page.keptForOffline();
  its.instead.set('/prices.html', 'Own prices');
  its.instead.set('/data.json', '{"own":"host"}');
  assert.equal(await page.tab.evaluate(async () => (await (await fetch('data.json')).json()).own), 'host');
  const response = await page.tab.goto(`${its.url}prices.html`);
  assert.equal(response.fromServiceWorker(), false);
  assert.equal(await page.tab.innerText('body'), 'Own prices');
});

const denied = () => {
  navigator.serviceWorker.register = () => Promise.reject(new DOMException('no', 'SecurityError'));
};
const absent = () => Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined });

for (const [what, script] of [['refuses to keep the page', denied], ['can’t keep the page', absent]]) {
  hosted(`a browser that ${what} shows it all the same, and says so at the foot`, { script }, async (its, open) => {
    const page = await open();
    await page.part('page-kept').filter({ hasText: 'takes a network' }).waitFor();
    assert.ok(await page.part('answer').isVisible());
    assert.equal(await page.part('notice').count(), 0);
  });
}

hosted('a host that can’t give all the files is known at the foot', { mayFail: true }, async (its, open) => {
  its.instead.set('/manifest.webmanifest', 404);
  const page = await open();
  await page.part('page-kept').filter({ hasText: 'takes a network' }).waitFor();
});

hosted('in a frame nothing is kept', {}, async (its, open, context) => {
  its.instead.set('/around.html', '<!doctype html><title>Around</title><iframe src="./"></iframe>');
  const tab = await context.newPage();
  await tab.goto(`${its.url}around.html`);
  await tab.frameLocator('iframe').getByTestId('foot').waitFor();
  assert.equal(await tab.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length), 0);
});

for (const [what, name] of [
  ['program', /^farend-app.*wasm$/],
  ['script', /^farend-app.*js$/],
  ['start script', /^start.*js$/],
  ['part of the program', /^split_details.*wasm$/],
]) {
  hosted(`a damaged ${what} doesn’t run`, { mayFail: true }, async (its, open, context) => {
    const damaged = (await list(dist)).find((it) => name.test(it));
    its.instead.set(`/${damaged}`, `${await readFile(join(dist, damaged), 'latin1')}\n`);
    const tab = await context.newPage();
    const refused = tab.waitForEvent('console', (message) => message.text().includes("'integrity'"));
    await tab.goto(its.url);
    assert.ok((await refused).text().includes(damaged));
  });
}
