// The yard under a dealer's hands: machines made, changed, mended, taken back.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';

import { assertAccessible } from './accessibility.mjs';
import { flow } from './flow.mjs';
import { byKeys } from './keys.mjs';

/** Waits until an element's text is something. */
const says = (page, id, pattern) => page.part(id).filter({ hasText: pattern }).waitFor();

flow('a machine is added from nothing until it is compared', {}, async (page) => {
  await page.openEditor();
  await page.part('add-entry').click();
  await says(page, 'faults', /Kind: is missing/);
  await page.enter('name', 'Snipe 30, made for the test');
  await page.field('kind').selectOption('tractor');
  await page.enter('engine.net_kw', '30');
  await page.enter('engine.rated_rpm', '2500');
  await page.enter('engine.lowest_rpm', '1100');
  await page.part('faults').waitFor({ state: 'detached' });
  await page.unfold('part-rear_pto');
  await page.enter('rear_pto.rpm', '540');
  await says(page, 'faults', /Rear PTO: at an engine speed of: is missing/);
  await page.enter('rear_pto.engine_rpm', '2300');
  await page.part('faults').waitFor({ state: 'detached' });
  assert.match(await page.text('part-rear_pto'), /540.rpm with the engine at 2,300.rpm/);

  await page.openView('pair');
  await page.choose('machine', 'snow-thrower-150');
  assert.match(await page.text('answer'), /Snipe 30/);
  assert.match(await page.delivered('rear_shaft'), /kW/);
});

flow('a changed figure changes the comparison', {}, async (page) => {
  await page.choose('curlew-46', 'snow-thrower-150');
  const before = await page.delivered('rear_shaft');
  await page.openEditor();
  await page.enter('engine.net_kw', '23');
  await page.openView('pair');
  assert.notEqual(await page.delivered('rear_shaft'), before);
  await page.openEditor();
  await page.part('undo').click();
  await page.openView('pair');
  assert.equal(await page.delivered('rear_shaft'), before);
});

flow('a fault is told at its field and the entry left out until it is mended', {}, async (page) => {
  await page.choose('curlew-46', 'snow-thrower-150');
  await page.openEditor();
  await page.enter('engine.net_kw', '9000');
  await says(page, 'faults', /Engine: net power: must be 3 to 600.kW/);
  assert.match(await page.complaint('engine.net_kw'), /Must be 3 to 600.kW/);
  assert.equal(await page.field('engine.net_kw').getAttribute('aria-invalid'), 'true');
  assert.match(await page.entries().filter({ hasText: 'Curlew' }).innerText(), /1 to mend/);
  // From the list of faults to the field.
  await page.part('faults').getByRole('button').click();
  await page.until(() => document.activeElement.dataset.testid === 'field-engine.net_kw');

  await page.openView('pair');
  await says(page, 'nothing', /Curlew 46 has something to mend first/);
  assert.equal(await page.machine().locator('option[value="curlew-46"]:not([hidden])').count(), 0);
  await page.part('to-editor').click();
  await page.enter('engine.net_kw', '46');
  await page.openView('pair');
  await page.part('answer').waitFor();
  assert.equal(await page.machine().inputValue(), 'curlew-46');
});

flow('a fault in a folded part opens it and is reached from the list', {}, async (page) => {
  await page.openEditor();
  await page.unfold('part-rear_pto');
  await page.enter('rear_pto.engine_rpm', '2500');
  await page.part('part-rear_pto').locator('summary').first().click();
  await page.field('rear_pto.engine_rpm').waitFor({ state: 'detached' });
  assert.match(await page.text('part-rear_pto'), /1 to mend/);
  await page.part('faults').getByRole('button', { name: /engine speed/ }).click();
  await page.field('rear_pto.engine_rpm').waitFor();
  assert.match(await page.complaint('rear_pto.engine_rpm'), /not be above the engine's rated speed/);
});

flow('steps are named, taken back and made again, by buttons and by keys', {}, async (page) => {
  await page.openEditor();
  const undo = page.part('undo');
  assert.ok(await undo.isDisabled());
  await page.enter('engine.net_kw', '40');
  await says(page, 'undo', 'Undo: net power of Curlew 46');
  await page.part('copy-entry').click();
  await says(page, 'undo', 'Undo: adding Curlew 46');
  assert.equal(await page.field('name').inputValue(), 'Curlew 46, utility tractor with mid PTO (copy)');
  await page.part('remove-entry').click();
  await says(page, 'undo', 'Undo: removing Curlew 46');
  assert.equal(await page.entries().count(), 6);
  await undo.click();
  await says(page, 'redo', 'Redo: removing Curlew 46');
  assert.equal(await page.entries().count(), 7);

  // They last through another view.
  await page.openView('pair');
  await page.openEditor();
  await page.tab.keyboard.press('Control+z');
  await says(page, 'undo', 'Undo: net power of Curlew 46');
  await page.tab.keyboard.press('Control+z');
  assert.ok(await undo.isDisabled());
  assert.equal(await page.field('engine.net_kw').inputValue(), '46');
  await page.tab.keyboard.press('Control+y');
  assert.equal(await page.field('engine.net_kw').inputValue(), '40');
  await page.tab.keyboard.press('Control+Shift+z');
  await says(page, 'undo', 'Undo: adding Curlew 46');
  // What is new makes what was taken back go.
  await undo.click();
  await page.enter('engine.rated_rpm', '2450');
  assert.ok(await page.part('redo').isDisabled());
});

flow('Ctrl+Z in a field takes back its own typing first', {}, async (page) => {
  await page.openEditor();
  await page.enter('engine.net_kw', '40');
  const name = page.field('name');
  await name.press('End');
  await name.pressSequentially('xyz');
  await name.press('Control+z');
  assert.equal(await page.field('engine.net_kw').inputValue(), '40');
  await name.press('Enter');
  await name.press('Control+z');
  await page.part('undo').filter({ hasText: 'xyz' }).waitFor({ state: 'detached' });
});

flow('US units are entered, kept metric, and limits are told in them', {}, async (page) => {
  await page.openEditor();
  await page.part('units-us').check();
  await page.enter('engine.net_kw', '60');
  assert.equal(await page.field('engine.net_kw').inputValue(), '60');
  await page.enter('engine.net_kw', '1000');
  assert.match(await page.complaint('engine.net_kw'), /Must be 4\.024 to 804\.6.hp/);
  await page.part('undo').click();
  await page.part('units-metric').check();
  // 60 hp of 0.745 699 872 kW each.
  assert.equal(await page.field('engine.net_kw').inputValue(), '44.74199');
  await page.kept('Math.abs(yard?.machines[2].engine.net_kw - 44.7419923) < 1e-6');
});

flow('a decimal comma is read, and a number that may mean two is asked about', {}, async (page) => {
  await page.openEditor();
  await page.enter('engine.net_kw', '44,5');
  assert.equal(await page.field('engine.net_kw').inputValue(), '44.5');
  await page.enter('engine.rated_rpm', '2,400');
  await page.tab.getByText("This isn't one clear number").waitFor();
  assert.equal(await page.field('engine.rated_rpm').getAttribute('aria-invalid'), 'true');
  await says(page, 'undo', 'net power');
  await page.enter('engine.rated_rpm', '2450');
  await says(page, 'undo', 'rated speed');
});

flow('a figure is given as a range with its source, and as one again', {}, async (page) => {
  await page.openEditor();
  await page.part('range-engine.net_kw').click();
  await page.enter('engine.net_kw.low', '47');
  await says(page, 'faults', /net power: must be in rising order/);
  assert.match(await page.complaint('engine.net_kw'), /low, likely, high/);
  await page.enter('engine.net_kw.low', '44');
  await page.part('faults').waitFor({ state: 'detached' });
  await page.field('engine.net_kw.source').selectOption('from-memory');
  await page.kept('yard?.machines[2].engine.net_kw.source === "from-memory"');
  await page.part('one-engine.net_kw').click();
  // As the demo has it, so nothing need be kept.
  await page.kept('yard === null');
});

flow('outlets and steps are added, moved and removed', {}, async (page) => {
  await page.openEditor();
  await page.openEntry('Puffin 62');
  await page.unfold('part-circuits');
  assert.match(await page.text('part-circuits[0]'), /Standard flow/);
  await page.part('entry').getByRole('button', { name: 'Move up: Outlet 2' }).click();
  await page.part('part-circuits[0]').filter({ hasText: 'High flow' }).waitFor();
  await page.part('remove-circuits[0]').click();
  await page.part('part-circuits[1]').waitFor({ state: 'detached' });
  await page.part('add-circuits').click();
  await says(page, 'faults', /Hydraulic outlets, outlet 2: outlet: is missing/);
  await page.part('leave-out-circuits').click();
  await page.part('faults').waitFor({ state: 'detached' });

  await page.openList('implements');
  await page.openEntry('Snow thrower, 150 cm');
  await page.unfold('part-shafts');
  await page.unfold('part-shafts[0]');
  await page.field('shafts[0].drive').selectOption('chain');
  await page.part('remove-shafts[0].drive[0]').click();
  await page.kept('yard?.implements[0].shafts[0].drive.join() === "chain"');
});

flow('an entry with another’s identifier is told of it', {}, async (page) => {
  await page.openEditor();
  await page.unfold('part-more');
  await page.enter('id', 'wren-18');
  assert.match(await page.complaint('id'), /Stands elsewhere already/);
});

flow('a yard without machines says what to do', {}, async (page) => {
  await page.openEditor();
  for (let left = 5; left >= 0; left -= 1) {
    await page.part('remove-entry').click();
    await page.until(
      (count) => document.querySelectorAll('[data-testid=entries] button').length === count,
      left,
    );
  }
  await page.openView('pair');
  await says(page, 'nothing', /no machine that can be compared/);
  await assertAccessible(page);
});

flow('the yard itself has its fields', {}, async (page) => {
  await page.openEditor();
  await page.unfold('own');
  const name = page.part('own-name');
  await name.fill('The pier');
  await name.press('Enter');
  await page.part('yard-name').filter({ hasText: 'The pier' }).waitFor();
  await says(page, 'undo', 'Undo: name of the yard');
  const currency = page.part('own-currency');
  await currency.fill('euros');
  await currency.press('Enter');
  assert.match(await page.text('own'), /Must not be longer or more than 3/);
});

flow('the yard is saved as a file that opens again', {}, async (page) => {
  await page.openEditor();
  await page.enter('engine.net_kw', '41');
  const download = page.tab.waitForEvent('download');
  await page.part('save-yard').click();
  const text = await readFile(await (await download).path(), 'utf8');
  assert.equal(JSON.parse(text).machines[2].engine.net_kw, 41);
  await page.part('undo').click();
  await page.openFile('saved.json', text);
  await page.openEntry('Curlew 46');
  assert.equal(await page.field('engine.net_kw').inputValue(), '41');
  await says(page, 'undo', 'Undo: opening saved.json');
});

flow('a file with faults can be opened to mend it', {}, async (page) => {
  const { machines, ...yard } = JSON.parse(
    await readFile(new URL('../../core/src/yard/demo.json', import.meta.url), 'utf8'),
  );
  machines[3].engine.net_kw = 9000;
  machines[3].engine.rated_rpm = '2,200';
  await page.openFile('broken.json', JSON.stringify({ ...yard, machines }));
  await page.part('mend-here').click();
  await page.openEntry('Heron 68');
  assert.equal(await page.field('engine.rated_rpm').inputValue(), '2,200');
  await page.enter('engine.rated_rpm', '2200');
  await page.enter('engine.net_kw', '68');
  await page.part('faults').waitFor({ state: 'detached' });
});

flow('going back to the demo asks first and can be undone', {}, async (page) => {
  await page.openEditor();
  await page.enter('name', 'Mine');
  await page.part('to-demo').click();
  await page.part('demo-no').click();
  assert.equal(await page.entries().filter({ hasText: 'Mine' }).count(), 1);
  await page.part('to-demo').click();
  await page.part('demo-yes').click();
  await page.entries().filter({ hasText: 'Curlew' }).waitFor();
  await page.part('undo').click();
  await page.entries().filter({ hasText: 'Mine' }).waitFor();
});

flow('entries are found by name', {}, async (page) => {
  await page.openEditor();
  await page.part('search').fill('skid');
  await page.until(
    () => document.querySelectorAll('[data-testid=entries] button').length === 1,
  );
  assert.match(await page.text('entries'), /Puffin 62/);
});

flow('a renamed identifier stays chosen', {}, async (page) => {
  await page.choose('curlew-46', 'snow-thrower-150');
  await page.openEditor();
  await page.unfold('part-more');
  await page.enter('id', 'own-46');
  await page.openView('pair');
  assert.equal(await page.machine().inputValue(), 'own-46');
});

flow('a machine is made by keys alone', {}, async (page) => {
  await byKeys.press(page, 'view-yard');
  await page.part('entry').waitFor();
  await byKeys.press(page, 'add-entry');
  await page.part('faults').waitFor();
  await byKeys.type(page, 'field-name', 'Rail 25');
  await byKeys.choose(page, 'field-kind', 'Tractor');
  await byKeys.type(page, 'field-engine.net_kw', '25');
  await byKeys.type(page, 'field-engine.rated_rpm', '2600');
  await byKeys.type(page, 'field-engine.lowest_rpm', '1200');
  await page.part('faults').waitFor({ state: 'detached' });
  await byKeys.unfold(page, 'part-mid_pto');
  await byKeys.type(page, 'field-mid_pto.rpm', '2000');
  await byKeys.type(page, 'field-mid_pto.engine_rpm', '2400');
  await page.part('faults').waitFor({ state: 'detached' });
  assert.match(await page.entries().filter({ hasText: 'Rail 25' }).innerText(), /not known/);
});

for (const list of ['machines', 'implements', 'kits']) {
  flow(`the form of ${list} breaks no accessibility rule, all unfolded`, {}, async (page) => {
    await page.openEditor();
    await page.openList(list);
    await page.part('entry').getByRole('heading', { level: 3 }).waitFor();
    // Parts come to light within parts.
    for (let depth = 0; depth < 4; depth += 1) {
      for (const summary of await page.part('entry').locator('details:not([open]) > summary').all()) {
        if (await summary.isVisible()) await summary.click();
      }
    }
    await page.unfold('own');
    await assertAccessible(page);
  });
}

flow('the editor with faults breaks no accessibility rule', {}, async (page) => {
  await page.openEditor();
  await page.part('add-entry').click();
  await page.part('faults').waitFor();
  await page.part('range-engine.net_kw').click();
  await page.part('to-demo').click();
  await assertAccessible(page);
});

flow('nothing lies beside a screen of 320 px', { viewport: { width: 320, height: 640 } }, async (page) => {
  await page.openEditor();
  await page.part('add-entry').click();
  await page.part('faults').waitFor();
  for (const list of ['machines', 'implements', 'kits']) {
    await page.openList(list);
    await page.part('entry').getByRole('heading', { level: 3 }).waitFor();
    for (let depth = 0; depth < 4; depth += 1) {
      for (const summary of await page.part('entry').locator('details:not([open]) > summary').all()) {
        if (await summary.isVisible()) await summary.click();
      }
    }
    const width = await page.tab.evaluate(() => document.documentElement.scrollWidth);
    assert.ok(width <= 320, `${list}: ${width} px`);
  }
});
