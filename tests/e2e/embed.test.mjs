// The page in a frame of another: with all rights, with few, and with next to none.

import assert from 'node:assert/strict';

import { assertAccessible } from './accessibility.mjs';
import { pageUrl } from './chromium.mjs';
import { table } from './csv.mjs';
import { framed } from './host.mjs';
import { decodedCode, standInForDialog } from './paper.mjs';

// What each setting of a frame keeps back. In Chromium's fresh profiles a frame of another site has no
// store, whatever its sandbox allows.
const SETTINGS = [
  { name: 'without a sandbox, same origin', fromOwn: true, back: [] },
  { name: 'without a sandbox, another origin', back: ['clipboard', 'store'] },
  {
    name: 'with scripts and its origin',
    sandbox: 'allow-scripts allow-same-origin',
    back: ['clipboard', 'files', 'printing', 'tabs', 'store'],
  },
  {
    name: 'with all but the rest',
    sandbox: 'allow-scripts allow-downloads allow-modals allow-popups allow-same-origin',
    allow: 'clipboard-write',
    back: ['store'],
  },
  {
    name: 'with scripts alone',
    sandbox: 'allow-scripts',
    back: ['clipboard', 'files', 'printing', 'tabs', 'store'],
  },
];

/** What Chromium says by itself of what a frame keeps back. */
const COMPLAINTS = {
  clipboard: /The Clipboard API has been blocked/,
  files: /Download is disallowed/,
  printing: /Ignored call to 'print\(\)'/,
  tabs: /Blocked opening/,
};

for (const { name, back, ...setting } of SETTINGS) {
  const keeps = (what) => back.includes(what);
  const query = { machine: 'curlew-46', units: 'us' };
  const options = { ...setting, query, permissions: ['clipboard-read', 'clipboard-write'] };

  const inSetting = (what, more, body) =>
    framed(`${name}: ${what}`, { ...options, ...more }, async (page, tab, faults) => {
      await body(page, tab);
      const told = (fault) => back.some((it) => COMPLAINTS[it]?.test(fault));
      assert.deepEqual(faults.filter((fault) => !told(fault)), []);
    });

  inSetting('an answer, accessible and no wider than 320 px', { viewport: { width: 320, height: 900 } }, async (page) => {
    await page.implement().selectOption('tiller-150');
    assert.match(await page.text('answer'), /tiller on the Curlew 46/i);
    await assertAccessible(page);
    const overflow = await page.tab.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok(overflow <= 0, `${overflow} px too wide`);
  });

  inSetting('the whole yard, with a worker or without', { query: { units: 'us' } }, async (page) => {
    await page.openView('grid');
    await page.reckoned();
  });

  inSetting('a file, or its text', {}, async (page, tab) => {
    await page.openSaveMenu();
    const complaint = keeps('files') && tab.waitForEvent('console', (it) => COMPLAINTS.files.test(it.text()));
    const download = !keeps('files') && tab.waitForEvent('download');
    await page.part('save-routes').click();
    await (complaint || download);
    const text = await page.part('file-text').inputValue();
    // A box has ends of line of its own.
    assert.equal(table(Buffer.from(text.replaceAll('\n', '\r\n'))).length, 6);
    await assertAccessible(page);
  });

  inSetting('the link, or a box with it selected', {}, async (page, tab) => {
    await page.openMenu();
    await page.part('copy-link').click();
    const copied = async () => {
      if (!keeps('clipboard')) {
        await page.part('menu').getByText('Copied.').waitFor();
        return tab.evaluate(() => navigator.clipboard.readText());
      }
      const box = page.part('link-by-hand');
      await box.waitFor();
      await page.tab.waitForFunction(() => document.activeElement.matches('textarea'));
      return box.evaluate((it) => it.value.slice(it.selectionStart, it.selectionEnd));
    };
    const address = new URL(await copied());
    assert.equal(address.href.split('?')[0], pageUrl);
    assert.deepEqual(Object.fromEntries(address.searchParams), query);
    await tab.goto(address.href);
    await tab.getByTestId('answer').getByText(/Curlew 46/).waitFor();
  });

  inSetting('paper, or a tab to print from, or its address', { deviceScaleFactor: 3 }, async (page, tab) => {
    await page.part('take-home').click();
    await page.part('sheet').waitFor();
    const code = await decodedCode(page);
    assert.equal(code.split('?')[0], pageUrl);
    if (!keeps('printing')) {
      const asked = await standInForDialog(page);
      await page.part('print').click();
      assert.ok(await asked());
      assert.equal(await page.part('open-in-tab').count(), 0);
      return;
    }
    await page.part('print').click();
    await page.part('open-in-tab').click();
    await page.tab.getByText('No tab has opened').waitFor();
    assert.equal(await page.part('address').inputValue(), code);
    await assertAccessible(page);
  });

  inSetting('changes of the yard are kept, or it is told that they aren’t', { query: {} }, async (page, tab) => {
    await page.openEditor();
    await page.openEntry('Curlew 46');
    await page.enter('engine.net_kw', '41');
    if (!keeps('store')) return page.kept('yard?.machines[2].engine.net_kw === 41');
    await page.part('keeping').getByText(/doesn't let the page keep anything/).waitFor();
    await page.part('save-own').click();
    assert.equal(JSON.parse(await page.part('file-text').inputValue()).machines[2].engine.net_kw, 41);
  });
}

framed(
  'a tab opens where the frame lets it, with what was chosen',
  { sandbox: 'allow-scripts allow-same-origin allow-popups', query: { machine: 'curlew-46' } },
  async (page, tab) => {
    await page.implement().selectOption('tiller-150');
    await page.part('take-home').click();
    await page.part('print').click();
    const opened = tab.waitForEvent('popup');
    await page.part('open-in-tab').click();
    const answer = (await opened).getByTestId('answer');
    await answer.getByText(/tiller on the Curlew 46/i).waitFor();
  },
);
