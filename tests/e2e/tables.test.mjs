// The yard's lists as tables: out to a spreadsheet, and in again with a look at what that changes.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';

import { assertAccessible } from './accessibility.mjs';
import { table } from './csv.mjs';
import { flow } from './flow.mjs';

const LISTS = ['machines', 'implements', 'kits'];
const ownYard = await readFile(new URL('../yards/hand-written.json', import.meta.url), 'utf8');

const text = ({ bytes }) => new TextDecoder().decode(bytes);
/** A table of kits with a price each. */
const prices = (...cells) =>
  ['id;name;routes;price', ...cells.map((cell, place) => `kit-${place};A kit;rear_shaft;${cell}`)].join('\r\n');

const taken = async (page, says) => {
  await page.part('table-take').click();
  await page.part('notice').getByText(says).waitFor();
  await page.part('table-in').waitFor({ state: 'detached' });
};

flow('a table goes out, is changed and comes in again', {}, async (page) => {
  await page.choose('curlew-46', 'snow-thrower-150');
  const before = await page.shown();
  const file = await page.saveTable('save-machines');
  assert.equal(file.name, 'farend-machines.csv');
  const rows = table(file.bytes);
  assert.equal(rows.length, await page.machine().locator('option').count());
  const names = await page.machine().locator('option').allInnerTexts();
  assert.deepEqual(rows.map((row) => row.name), names);
  assert.equal(rows.find((row) => row.id === 'curlew-46')['engine.net_kw'], '46');

  const changed = text(file).replace('tractor,46,', 'tractor,52,').replace(/\r\nwren-18,/, '\r\nwren-19,');
  await page.openTable('mine.csv', changed);
  await page.until(() => document.activeElement?.id === 'table-in-heading');
  assert.ok(await page.part('table-machines').isChecked());
  const summary = `1 new, 1 changed, ${rows.length - 2} unchanged, 0 removed`;
  assert.ok((await page.text('table-summary')).includes(summary));
  const shown = await page.text('table-rows');
  assert.match(shown, /2\s+Wren 18[^\n]*\s+new/);
  assert.match(shown, /4\s+Curlew 46[^\n]*\s+changed: engine\.net_kw/);
  assert.deepEqual(await page.shown(), before);
  assert.ok(await page.part('table-merge').isChecked());
  await assertAccessible(page);

  await taken(page, `mine.csv is in the yard. Machines: ${summary}.`);
  assert.deepEqual(await page.machine().locator('option').allInnerTexts(), [...names, names[0]]);
  const after = await page.shown();
  assert.equal(after.machine, 'curlew-46');
  assert.notEqual(after.answer, before.answer);
  const again = table((await page.saveTable('save-machines')).bytes);
  assert.deepEqual(again.map((row) => row.id), [...rows.map((row) => row.id), 'wren-19']);
  assert.equal(again[2]['engine.net_kw'], '52');
});

flow('a list can be replaced, and what goes is named first', {}, async (page) => {
  const file = text(await page.saveTable('save-machines'));
  const [headers, ...lines] = file.trimEnd().split('\r\n');
  await page.openTable('two.csv', [headers, ...lines.slice(1, 3)].join('\r\n'));
  assert.equal(await page.part('table-removed').count(), 0);
  assert.match(await page.text('table-why-not'), /changes nothing/);
  assert.ok(await page.part('table-take').isDisabled());
  await page.pick('table-replace');
  assert.match(await page.text('table-removed'), /Wren 18.*Heron 68/);
  await taken(page, `0 new, 0 changed, 2 unchanged, ${lines.length - 2} removed`);
  assert.equal(await page.machine().locator('option').count(), 2);
});

flow('faults are told by row and column, and the yard stays as it was', {}, async (page) => {
  const before = await page.shown();
  const names = await page.machine().locator('option').allInnerTexts();
  const file = text(await page.saveTable('save-machines'));
  const broken = file.replace('tractor,18,', 'tractor,9000,').replace('tractor,28,', 'tractor,about 28,').replace('net_kw', 'net_hp');
  await page.openTable('broken.csv', broken.replace('net_hp', 'net_kw'));
  const faults = page.part('table-faults').locator('li');
  assert.deepEqual(await faults.allInnerTexts(), [
    'Row 2, engine.net_kw (9000) must be 3 to 600\u{a0}kW. Net power at rated speed; 1 mechanical hp is 0.7457 kW. Gross power is higher.',
    'Row 3, engine.net_kw ("about 28") must be a number. Plain, such as 1234.5 or 1234,5: without a unit, and without blanks between digits.',
  ]);
  assert.match(await page.text('table-summary'), /2 faults/);
  assert.ok(await page.part('table-take').isDisabled());
  assert.match(await page.text('table-why-not'), /Mend its faults/);
  await assertAccessible(page);
  // The same file as another list, with other faults.
  await page.openTable('header.csv', broken);
  await faults.getByText('Row 1, engine.net_hp (column D) is not a field of this format. Did you mean engine.net_kw?').waitFor();
  await page.part('table-leave').click();
  await page.part('table-in').waitFor({ state: 'detached' });
  await page.until(() => document.activeElement?.id === 'menu');
  assert.deepEqual(await page.shown(), before);
  assert.deepEqual(await page.machine().locator('option').allInnerTexts(), names);
});

flow('where a mark can be read in two ways the page asks', {}, async (page) => {
  await page.openTable('prices.csv', prices('7', '1,234'));
  assert.match(await page.text('table-doubt'), /Row 3, price says 1,234\./);
  assert.ok(await page.part('table-take').isDisabled());
  assert.match(await page.text('table-why-not'), /how its numbers are meant/);
  for (const [mark, price] of [['point', '1234'], ['comma', '1.234']]) {
    await page.part(`mark-${mark}`).focus();
    await page.tab.keyboard.press('Space');
    await page.part('table-rows').waitFor();
    // Where the focus was, it still is.
    const focused = await page.tab.evaluate(() => document.activeElement?.dataset.testid);
    assert.equal(focused, `mark-${mark}`);
    const label = await page.part(`mark-${mark}`).locator('..').innerText();
    assert.ok(label.startsWith(`${price}:`), label);
  }
  await taken(page, /2 new/);
  const rows = table((await page.saveTable('save-kits')).bytes);
  assert.deepEqual(rows.slice(-2).map((row) => row.price), ['7', '1.234']);
});

flow('a table whose headers suit several lists asks which it is of', {}, async (page) => {
  await page.openTable('few.csv', 'id,name,price\nhoses,Hoses,200\n');
  assert.match(await page.text('table-summary'), /suit several lists/);
  assert.ok(await page.part('table-take').isDisabled());
  await page.pick('table-kits');
  await page.part('table-faults').getByText(/Row 1, routes is missing/).waitFor();
});

flow('files can be dropped anywhere, one at a time', {}, async (page) => {
  await page.drop([{ name: 'prices.csv', text: prices('7') }]);
  await page.tab.getByRole('heading', { name: 'What prices.csv would change' }).waitFor();
  await taken(page, /1 new/);
  await page.part('close-notice').click();

  await page.drop([{ name: 'a.csv', text: prices('7') }, { name: 'b.csv', text: prices('8') }]);
  await page.part('notice').getByText('2 files at once').waitFor();
  assert.equal(await page.part('table-in').count(), 0);
  await page.part('close-notice').click();

  const before = await page.shown();
  const saved = text(await page.save('save-comparison'));
  await page.drop([{ name: 'own.json', text: ownYard }]);
  await page.part('notice').getByText('own.json is open').waitFor();
  await page.drop([{ name: 'saved.json', text: saved }]);
  await page.part('notice').getByText('saved.json is open').waitFor();
  assert.deepEqual(await page.shown(), before);
});

flow('a text that is dragged is no file', {}, async (page) => {
  const dataTransfer = await page.tab.evaluateHandle(() => {
    const data = new DataTransfer();
    data.setData('text/plain', 'words');
    return data;
  });
  await page.part('answer').dispatchEvent('dragover', { dataTransfer });
  await page.part('answer').dispatchEvent('drop', { dataTransfer });
  assert.equal(await page.part('drop-hint').count(), 0);
});

flow('a template is filled in by hand and comes in', {}, async (page) => {
  for (const list of LISTS) {
    const file = await page.saveTable(`template-${list}`);
    assert.equal(file.name, `farend-${list}-template.csv`);
    const [example, ...others] = table(file.bytes);
    assert.equal(example.id, 'example');
    assert.equal(others.length, 0);
    await page.openTable(file.name, text(file).replace('example', `own-${list}`));
    await taken(page, /1 new, 0 changed, 0 unchanged, 0 removed/);
  }
  await page.choose('own-machines', 'own-implements');
  assert.equal(await page.tab.locator('label.row').count(), 6);
});

for (const width of [390, 1280]) {
  flow(`tables fit ${width} px, their buttons are large enough for gloves`, { viewport: { width, height: 900 } }, async (page) => {
    await page.showTables();
    for (const list of LISTS) {
      for (const button of [`save-${list}`, `template-${list}`]) {
        const { height } = await page.part(button).boundingBox();
        assert.ok(height >= 48, `${button}: ${height}`);
      }
    }
    await page.openTable('prices.csv', prices('1,234'));
    await page.pick('mark-comma');
    for (const part of ['table-take', 'table-leave', 'table-replace', 'table-machines', 'mark-comma']) {
      const { height } = await page.part(part).boundingBox();
      assert.ok(height >= 48, `${part}: ${height}`);
    }
    await page.openTable('faults.csv', prices('about 5', '7 kW', 'x'.repeat(200)));
    await page.part('table-faults').waitFor();
    const { scroll, view } = await page.tab.evaluate(() => ({
      scroll: document.documentElement.scrollWidth,
      view: document.documentElement.clientWidth,
    }));
    assert.ok(scroll <= view, `${scroll} px in ${view}`);
  });
}
