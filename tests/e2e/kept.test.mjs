// What the browser keeps of a yard, and all that can come between.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';

import { assertAccessible } from './accessibility.mjs';
import { pageUrl } from './chromium.mjs';
import { flow } from './flow.mjs';
import { FarendPage } from './page.mjs';

const KEY = 'farend-yard';

const change = async (page, power) => {
  await page.openEditor();
  await page.openEntry('Curlew 46');
  await page.enter('engine.net_kw', power);
};

const power = async (page) => {
  await page.openEditor();
  await page.openEntry('Curlew 46');
  return page.field('engine.net_kw').inputValue();
};

const reload = async (page) => {
  await page.tab.reload();
  await page.heading().waitFor();
};

const told = (page, pattern) => page.part('keeping').filter({ hasText: pattern }).waitFor();

const item = (page, key) => page.tab.evaluate((it) => localStorage.getItem(it), key);

/** The file that a button of the message offers. */
const offered = async (page, id) => {
  const download = page.tab.waitForEvent('download');
  await page.part(id).click();
  return readFile(await (await download).path(), 'utf8');
};

flow('changes outlast a reload, what is faulty too', {}, async (page) => {
  await change(page, '9000');
  await page.part('add-entry').click();
  await page.enter('name', 'Half of a machine');
  await page.kept('yard?.machines?.length === 7 && yard?.machines[6].name === expected', 'Half of a machine');
  await reload(page);
  assert.equal(await power(page), '9000');
  assert.equal(await page.entries().filter({ hasText: 'Half of a machine' }).count(), 1);
});

flow('whoever leaves at once loses nothing', {}, async (page) => {
  await change(page, '41');
  await reload(page);
  assert.equal(await power(page), '41');
});

flow('nothing is kept of the demo as it is', {}, async (page) => {
  await change(page, '41');
  await page.kept('yard !== null');
  await page.part('undo').click();
  await page.kept('yard === null');
});

const denied = () => {
  Object.defineProperty(window, 'localStorage', {
    get() {
      throw new DOMException('no', 'SecurityError');
    },
  });
};
const absent = () => Object.defineProperty(window, 'localStorage', { get: () => null });

for (const [what, before] of [['refuses to keep anything', denied], ['has no room at all', absent]]) {
  flow(`a browser that ${what} is told of once, with the yard as a file`, { before }, async (page) => {
    assert.equal(await page.part('keeping').count(), 0);
    await change(page, '41');
    await told(page, /doesn't let the page keep anything/);
    assert.match(await page.text('kept'), /doesn't keep changes/);
    assert.equal(JSON.parse(await offered(page, 'save-own')).machines[2].engine.net_kw, 41);
    await page.part('close-keeping').click();
    await page.enter('engine.net_kw', '42');
    await page.openView('pair');
    await page.linkAfter('');
    assert.equal(await page.part('keeping').count(), 0);
  });
}

flow('a full browser is told of at once and keeps the last good yard', {}, async (page) => {
  await change(page, '41');
  await page.kept('yard?.machines[2].engine.net_kw === 41');
  await page.tab.evaluate(() => {
    // Halves, until nothing more goes in.
    for (let size = 4_000_000, place = 0; size >= 1; place += 1) {
      try {
        localStorage.setItem(`filler-${place}`, 'x'.repeat(size));
      } catch {
        size = Math.floor(size / 2);
      }
    }
  });
  await page.enter('name', 'Curlew 46 '.padEnd(80, 'x'));
  await told(page, /room that this browser gives is used up/);
  assert.equal(JSON.parse(await item(page, KEY)).yard.machines[2].engine.net_kw, 41);
  assert.match(JSON.parse(await offered(page, 'save-own')).machines[2].name, /xxx/);
  await assertAccessible(page);
  // As soon as there is room again it is kept.
  await page.tab.evaluate(() => {
    for (const key of Object.keys(localStorage)) if (key.startsWith('filler')) localStorage.removeItem(key);
  });
  await page.enter('engine.net_kw', '43');
  await page.kept('yard?.machines[2].engine.net_kw === 43');
  await page.part('keeping').waitFor({ state: 'detached' });
});

const keep = (text) => `localStorage.getItem('${KEY}') ?? localStorage.setItem('${KEY}', ${JSON.stringify(text)})`;

flow('a damaged yard is set aside, and the demo opens', { before: keep('{"format":"farend-edit') }, async (page) => {
  await told(page, /damaged and can't be read. It was set aside/);
  assert.equal(await item(page, `${KEY}-set-aside-1`), '{"format":"farend-edit');
  assert.equal(await offered(page, 'save-kept'), '{"format":"farend-edit');
  assert.ok(await page.part('answer').isVisible());
  await page.part('close-keeping').click();
  await change(page, '41');
  await page.kept('yard?.machines[2].engine.net_kw === 41');
  assert.equal(await item(page, `${KEY}-set-aside-1`), '{"format":"farend-edit');
});

const newer = JSON.stringify({ format: 'farend-edited-yard', format_version: 99, yard: { of: 'tomorrow' } });

flow('what a newer version keeps is never overwritten unasked', { before: keep(newer) }, async (page) => {
  await told(page, /can't read, probably from a newer one/);
  await change(page, '41');
  assert.match(await page.text('kept'), /aren't kept until/);
  await reload(page);
  await told(page, /can't read/);
  assert.equal(await item(page, KEY), newer);
  assert.equal(await offered(page, 'save-kept'), newer);
  await change(page, '42');
  await page.part('keep-own').click();
  await page.kept('yard?.machines[2].engine.net_kw === 42');
  await page.part('keeping').waitFor({ state: 'detached' });
});

/** A second tab of the same browser. */
const second = async (page) => {
  const other = new FarendPage(await page.tab.context().newPage());
  await other.open(pageUrl);
  return other;
};

flow('another tab’s change is told and can be taken over, as a step', {}, async (page) => {
  await change(page, '41');
  await page.kept('yard?.machines[2].engine.net_kw === 41');
  const other = await second(page);
  assert.equal(await power(other), '41');
  await change(other, '52');
  await told(page, /changed in another tab/);
  await assertAccessible(page);
  await page.part('take-other').click();
  assert.equal(await power(page), '52');
  assert.equal(await page.part('keeping').count(), 0);
  assert.match(await page.text('undo'), /taking over/);
  await page.part('undo').click();
  await page.openEntry('Curlew 46');
  assert.equal(await page.field('engine.net_kw').inputValue(), '41');
});

flow('one’s own yard can be kept, and the other tab is told', {}, async (page) => {
  const other = await second(page);
  await change(other, '52');
  await told(page, /changed in another tab/);
  // Nothing is written before the answer.
  await change(page, '41');
  assert.match(await page.text('kept'), /aren't kept until/);
  await page.tab.evaluate(() => dispatchEvent(new Event('pagehide')));
  await page.kept('yard?.machines[2].engine.net_kw === 52');
  await page.part('keep-own').click();
  await page.kept('yard?.machines[2].engine.net_kw === 41');
  await told(other, /changed in another tab/);
});

flow('of two tabs that change at once neither overwrites the other', {}, async (page) => {
  const other = await second(page);
  await page.openEditor();
  await page.openEntry('Curlew 46');
  // This tab hears nothing of what the other one keeps.
  await page.tab.evaluate(() => {
    window.addEventListener('storage', (event) => event.stopImmediatePropagation(), { capture: true });
  });
  await change(other, '52');
  await other.kept('yard?.machines[2].engine.net_kw === 52');
  await page.enter('engine.net_kw', '41');
  await told(page, /changed in another tab/);
  await page.kept('yard?.machines[2].engine.net_kw === 52');
});

flow('a tab hears when the other goes back to the demo', {}, async (page) => {
  await change(page, '41');
  await page.kept('yard !== null');
  const other = await second(page);
  await other.openEditor();
  await other.part('to-demo').click();
  await other.part('demo-yes').click();
  await told(page, /went back to the demo yard/);
  await page.part('keep-own').click();
  await page.kept('yard?.machines[2].engine.net_kw === 41');
});

flow('a yard of 500 machines and 200 implements is loaded, edited, kept, reloaded and saved', {}, async (page) => {
  await page.part('open-file').setInputFiles(process.env.FAREND_LARGE_YARD);
  await page.tab.getByText('large-yard.json is open').waitFor();
  await page.openEditor();
  await page.part('search').fill('321');
  await page.openEntry('Machine 321');
  await page.enter('engine.net_kw', '77');
  await page.kept('yard?.machines?.length === 500 && yard.machines[320].engine.net_kw === 77');
  await reload(page);
  await page.openEditor();
  await page.part('search').fill('321');
  await page.openEntry('Machine 321');
  assert.equal(await page.field('engine.net_kw').inputValue(), '77');
  const saved = JSON.parse(await offered(page, 'save-yard'));
  assert.equal(saved.machines.length, 500);
  assert.equal(saved.implements.length, 200);
  assert.equal(saved.machines[320].engine.net_kw, 77);
});
