// The whole yard: both questions of a dealer, by keys and by touch, with a worker and without.

import assert from 'node:assert/strict';

import { assertAccessible } from './accessibility.mjs';
import { table } from './csv.mjs';
import { flow } from './flow.mjs';
import { FarendPage } from './page.mjs';

const largeYard = process.env.FAREND_LARGE_YARD;
if (!largeYard) throw new Error('FAREND_LARGE_YARD is not set: run this by `cargo xtask test`');

/** Opens the whole yard, and waits until all of it is reckoned. */
async function open(page) {
  await page.part('view-grid').click();
  await page.reckoned();
}

/** The entries of the list: name, standing, the rest. */
const entries = (page) =>
  page.part('list').locator('[role="option"]').evaluateAll((all) =>
    all.map((it) => ({
      name: it.querySelector('.called').innerText,
      standing: it.querySelector('.standing').innerText,
      by: it.querySelector('.by')?.innerText,
    })));

const filter = (page, id, label) => page.part(id).selectOption({ label });

/** Counts what a person does: presses, choices, keys. */
function counted(page) {
  let actions = 0;
  const does = (act) => async (...what) => {
    actions += 1;
    await act(...what);
  };
  return {
    press: does((id) => page.part(id).click()),
    choose: does((id, label) => filter(page, id, label)),
    unfold: does((id) => page.part(id).locator('summary').click()),
    pick: does((name) => page.part('list').locator('[role="option"]', { hasText: name }).click()),
    made: () => actions,
  };
}

flow('“What on my yard will drive this?” takes fewer than ten actions', {}, async (page) => {
  const person = counted(page);
  await person.press('view-grid');
  await person.press('reading-machines');
  await person.choose('implement', 'Snow thrower, 150 cm');
  await page.reckoned();
  const all = await entries(page);
  assert.equal(all.length, 6);
  await person.unfold('filters');
  await person.choose('filter-least', 'Enough');
  const enough = await entries(page);
  assert.ok(enough.length < all.length && enough.length > 0);
  for (const { standing } of enough) assert.match(standing, /^(Ample|Enough) \d/);
  await person.pick(enough[0].name);
  await page.part('answer').waitFor();
  assert.ok(person.made() < 10, `${person.made()}`);
  // The pair opens by the route that the list named, with the same standing.
  const opened = page.tab.locator('label.row.chosen');
  assert.equal(await opened.locator('.standing').innerText(), enough[0].standing.split(' ')[0]);
  assert.ok(enough[0].by.startsWith(await opened.locator('.name').innerText()));
});

flow('“What can I sell to the owner of that?” takes fewer than ten actions', {}, async (page) => {
  const person = counted(page);
  await person.press('view-grid');
  await person.press('reading-implements');
  await person.choose('machine', 'Plover 28, compact tractor with mid PTO');
  await page.reckoned();
  const all = await entries(page);
  await person.unfold('filters');
  await person.choose('filter-least', 'Enough');
  await person.choose('filter-kits', 'Only what is there already');
  await page.reckoned();
  const sold = await entries(page);
  assert.ok(sold.length > 0 && sold.length < all.length);
  await person.pick(sold[0].name);
  await page.part('answer').waitFor();
  assert.ok(person.made() < 10, `${person.made()}`);
  assert.equal(await page.machine().evaluate((it) => it.selectedOptions[0].text), 'Plover 28, compact tractor with mid PTO');
  assert.equal(await page.implement().evaluate((it) => it.selectedOptions[0].text), sold[0].name);
});

flow('the grid goes by keys alone, and the link brings it back', {}, async (page) => {
  await open(page);
  const grid = page.part('whole');
  await grid.focus();
  const at = () => grid.getAttribute('aria-activedescendant');
  const keys = async (...all) => {
    for (const key of all) await page.tab.keyboard.press(key);
  };
  assert.equal(await at(), 'cell-0-0');
  await keys('ArrowDown', 'ArrowRight', 'ArrowRight');
  assert.equal(await at(), 'cell-1-2');
  await keys('End');
  assert.equal(await at(), 'cell-1-7');
  await keys('Control+End');
  assert.equal(await at(), 'cell-5-7');
  // The end is the end.
  await keys('ArrowRight', 'PageDown');
  assert.equal(await at(), 'cell-5-7');
  await keys('Control+Home', 'ArrowDown');
  assert.equal(await at(), 'cell-1-0');
  const before = page.link();
  await keys('Enter');
  await page.until(() => document.activeElement.dataset.testid === 'answer');
  await page.linkAfter(before);
  const pair = page.link();
  await page.part('view-grid').click();
  const whole = await page.linkAfter(pair);
  await page.part('filters').locator('summary').click();
  await filter(page, 'filter-order', 'name');
  const changed = await page.linkAfter(whole);
  await page.tab.goto('about:blank');
  await page.tab.goto(new URL(changed, process.env.FAREND_URL).href);
  await page.reckoned();
  await page.part('filters').locator('summary').click();
  assert.equal(await page.part('filter-order').evaluate((it) => it.selectedOptions[0].text), 'name');
  const names = await page.tab.locator('.row-head .what').allInnerTexts();
  assert.deepEqual(names, [...names].sort((a, b) => a.localeCompare(b)));
});

flow('what is filtered is said, and one press shows all again', {}, async (page) => {
  await open(page);
  const shown = () => page.text('grid-shown');
  assert.equal(await shown(), '6 of 6 machines, 8 of 8 implements');
  await page.part('filters').locator('summary').click();
  await filter(page, 'filter-machines', 'Skid steer');
  assert.equal(await shown(), '1 of 6 machines, 8 of 8 implements');
  await page.part('filter-from').fill('300');
  await page.part('filter-from').press('Enter');
  await page.tab.getByText('every pair is filtered out').waitFor();
  await page.part('filter-from').fill('strong');
  await page.part('filter-from').press('Enter');
  await page.tab.getByText('Enter a number, or leave it empty').waitFor();
  await page.part('filter-reset').click();
  assert.equal(await shown(), '6 of 6 machines, 8 of 8 implements');
  await page.part('filter-reset').waitFor({ state: 'detached' });
});

flow('a route alone is shown where it’s asked for', {}, async (page) => {
  await open(page);
  await page.part('filters').locator('summary').click();
  await filter(page, 'filter-route', 'Mid shaft');
  const by = await page.tab.locator('.cell .by').allInnerTexts();
  assert.ok(by.length > 0);
  for (const route of by) assert.match(route, /^Mid shaft/);
  assert.ok((await page.tab.locator('.cell [data-standing="no-fit"]').count()) > 0);
});

flow('what is shown can be saved as a table', {}, async (page) => {
  await open(page);
  const download = page.tab.waitForEvent('download');
  await page.part('grid-save').click();
  const file = await download;
  assert.equal(file.suggestedFilename(), 'farend-whole-yard.csv');
  const { readFile } = await import('node:fs/promises');
  const rows = table(await readFile(await file.path()));
  assert.equal(rows.length, 48);
  const cell = page.tab.locator('#cell-0-0');
  const [first] = rows;
  const text = await cell.locator('.standing').innerText();
  assert.equal(text, `${first.Standing} ${Number(first['Delivered over needed']).toFixed(2)}`);
  const ratio = first['Delivered (kW)'] / first['Needed (kW)'];
  assert.ok(Math.abs(ratio / first['Delivered over needed'] - 1) < 1e-9);
});

flow('what is shown is what is printed', {}, async (page) => {
  await open(page);
  await page.tab.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  const paper = page.part('grid-paper');
  await paper.waitFor({ state: 'attached' });
  await page.tab.emulateMedia({ media: 'print' });
  assert.equal(await paper.locator('td').count(), 48);
  assert.ok(await paper.isVisible());
  assert.ok(!(await page.part('whole').isVisible()));
  assert.equal(await page.tab.getByTestId('take-home-page').count(), 0);
  await page.tab.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await paper.waitFor({ state: 'detached' });
});

flow('a yard of 500 machines and 200 implements: only what is in sight is in the document', {}, async (page) => {
  await page.part('open-file').setInputFiles(largeYard);
  await page.part('notice').waitFor();
  await open(page);
  assert.equal(await page.text('grid-shown'), '500 of 500 machines, 200 of 200 implements');
  const grid = page.part('whole');
  assert.equal(await grid.getAttribute('aria-rowcount'), '501');
  assert.equal(await grid.getAttribute('aria-colcount'), '201');
  assert.ok((await page.tab.locator('.cell').count()) < 600);
  await grid.focus();
  await page.tab.keyboard.press('Control+End');
  const last = page.tab.locator('#cell-499-199');
  await last.waitFor();
  assert.ok((await page.tab.locator('.cell').count()) < 600);
  const [box, seen] = [await last.boundingBox(), await grid.boundingBox()];
  assert.ok(box.x + box.width <= seen.x + seen.width && box.y + box.height <= seen.y + seen.height);
});

flow('the work can be stopped, and goes on where it was', {}, async (page) => {
  await page.part('open-file').setInputFiles(largeYard);
  await page.part('notice').waitFor();
  // Pressed by the page itself as soon as the button is there: a person is slower than the work.
  await page.tab.evaluate(() => {
    const stop = new MutationObserver(() => {
      const button = document.querySelector('[data-testid="grid-stop"]');
      if (!button) return;
      stop.disconnect();
      button.click();
    });
    stop.observe(document.body, { childList: true, subtree: true });
    document.querySelector('[data-testid="view-grid"]').click();
  });
  await page.tab.getByRole('button', { name: 'Go on' }).click();
  await page.reckoned();
  assert.equal(await page.part('grid-stop').count(), 0);
});

/** All that the grid shows. */
const cells = (page) => page.tab.locator('.cell').allInnerTexts();

flow('without a worker the page reckons in slices, with the same result', {}, async (page) => {
  const before = page.link();
  await open(page);
  await page.linkAfter(before);
  const by = await cells(page);
  for (const refusal of [
    'window.Worker = class { constructor() { throw new DOMException("no", "SecurityError"); } };',
    // One that starts and fails.
    'const Real = Worker; window.Worker = class extends Real { constructor(a, o) { super("data:text/javascript,throw 1", o); } };',
  ]) {
    const tab = await page.tab.context().newPage();
    await tab.addInitScript(refusal);
    await tab.goto(page.tab.url());
    await new FarendPage(tab).reckoned();
    assert.deepEqual(await tab.locator('.cell').allInnerTexts(), by);
    await tab.close();
  }
});

for (const [what, id] of [['grid', 'reading-whole'], ['list', 'reading-machines']]) {
  flow(`the ${what} breaks no accessibility rule`, {}, async (page) => {
    await open(page);
    await page.part(id).click();
    await page.part('filters').locator('summary').click();
    await assertAccessible(page);
  });
}

for (const width of [320, 390, 1024, 1920]) {
  flow(`the whole yard asks for no sideways scroll of the page at ${width} px`, { viewport: { width, height: 800 } }, async (page) => {
    await open(page);
    for (const id of ['reading-whole', 'reading-machines', 'reading-implements']) {
      await page.part(id).click();
      const [inner, scroll] = await page.tab.evaluate(() => [innerWidth, document.documentElement.scrollWidth]);
      assert.ok(scroll <= inner, `${id}: ${scroll} > ${inner}`);
    }
  });
}
