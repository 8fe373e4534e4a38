// From the open page to the printed sheet: three readers, by keys alone and by taps alone.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';

import { assertAccessible } from './accessibility.mjs';
import { flow } from './flow.mjs';
import { byKeys, byTaps } from './keys.mjs';
import { assertOneSheet, cutOff, decodedCode, keepPicture, standInForDialog } from './paper.mjs';

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true };
const TABLET = { viewport: { width: 1024, height: 768 }, hasTouch: true };

/** Opens the page to take home, asks for printing and looks at what comes out. */
async function takeHome(page, by, name) {
  await by.press(page, 'take-home');
  await page.part('sheet').waitFor();
  await keepPicture(page, name);
  const asked = await standInForDialog(page);
  await by.press(page, 'print');
  assert.ok(await asked());
  assert.ok((await cutOff(page)) <= 1, `${name} is cut off`);
  await assertOneSheet(page, name);
}

for (const [how, by] of [['keys', byKeys], ['taps', byTaps]]) {
  flow(`a customer on a phone gets an answer and a page to take home, by ${how} alone`, PHONE, async (page) => {
    await by.choose(page, 'machine', 'Plover');
    await by.choose(page, 'implement', 'Flail');
    assert.match(await page.text('answer'), /Flail mulcher on the Plover 28/);
    await takeHome(page, by, `customer-${how}`);
    await by.press(page, 'back');
    await page.part('answer').waitFor();
    assert.equal(await page.part('sheet').count(), 0);
  });

  flow(`a salesperson weighs wishes, prices and another machine, by ${how} alone`, TABLET, async (page) => {
    await by.choose(page, 'machine', 'Heron');
    await by.choose(page, 'implement', 'Snow');
    await by.unfold(page, 'fit');
    assert.ok((await page.part('fit-items').locator('li').count()) > 3);
    await by.unfold(page, 'choose');
    const points = await page.text('places');
    await by.pick(page, 'look_ahead', 'much');
    assert.notEqual(await page.text('places'), points);
    await by.unfold(page, 'cost');
    await by.type(page, 'currency', 'eur');
    await by.type(page, 'hour', '60');
    await by.type(page, 'rear_shaft-kit', '450');
    await by.type(page, 'rear_shaft-variant', '5200');
    await by.type(page, 'rear_shaft-fitting', '0');
    assert.match(await page.text('cost-rear_shaft'), /5,650/);
    await by.unfold(page, 'wanted');
    assert.ok((await page.part('wanted-machine_hydraulics').innerText()).length > 40);
    await by.unfold(page, 'beside');
    await by.choose(page, 'beside-machine', 'Gannet');
    assert.match(await page.text('beside-difference'), /Gannet 90 brings/);
    await takeHome(page, by, `salesperson-${how}`);
  });

  flow(`a competitor's sheet is checked and its honest figures compared, by ${how} alone`, TABLET, async (page) => {
    await by.choose(page, 'machine', 'Wren');
    await by.unfold(page, 'claims');
    await by.type(page, 'sheet-flow', '37');
    await by.type(page, 'sheet-pressure', '155');
    await by.type(page, 'sheet-hydraulic', '14');
    assert.match(await page.text('claim-hydraulic_power'), /9\.6\skW, not the 14\.0\skW/);
    assert.match(await page.text('claim-steering'), /24\.0\sL\/min are left/);
    const before = await page.link();
    await by.press(page, 'take-over');
    assert.match(await page.text('taken-over'), /honest figures/);
    await page.linkAfter(before);
    await takeHome(page, by, `sheet-${how}`);
  });
}

flow("a sheet that can't be taken over says so, and is cleared with what was refused", TABLET, async (page) => {
  await page.choose('wren-18', 'flail-mulcher-140');
  await page.unfold('claims');
  await page.part('take-over').click();
  assert.match(await page.text('taken-over'), /Nothing was taken over/);
  const flow = page.part('sheet-flow');
  await flow.fill('37');
  await flow.blur();
  // At the couplers: the pump would need more than any may have.
  await page.part('sheet-pressure').fill('420');
  await page.part('sheet-pressure').blur();
  await page.part('sheet-taken').locator('input').last().check();
  const before = await page.shown();
  await page.part('take-over').click();
  assert.match(await page.text('taken-over'), /Nothing was taken over/);
  assert.deepEqual(await page.shown(), before);

  await flow.fill('much');
  await flow.blur();
  const complaint = page.tab.locator('#sheet-flow-complaint');
  assert.match(await complaint.innerText(), /above zero/);
  await page.part('clear-sheet').click();
  assert.equal(await flow.inputValue(), '');
  assert.equal(await complaint.innerText(), '');
});

flow('the code on the sheet leads to the same comparison', { deviceScaleFactor: 3 }, async (page) => {
  await page.choose('heron-68', 'snow-thrower-150');
  await page.openRoute('rear_shaft');
  const before = page.link();
  await page.control('enginespeed').type('1800');
  const shown = await page.shown();
  // At once, before the address bar has followed.
  await page.part('take-home').click();
  const code = await decodedCode(page);
  await page.linkAfter(before);
  const address = page.tab.url();
  assert.equal(code, address);
  await page.tab.goto('about:blank');
  await page.open(address);
  assert.deepEqual(await page.shown(), shown);
});

flow('every pair of the demo fits on one sheet, in either system of units', { viewport: { width: 718, height: 971 } }, async (page) => {
  const values = (id) => page.part(id).locator('option').evaluateAll((all) => all.map((it) => it.value));
  for (const machine of await values('machine')) {
    for (const implement of await values('implement')) {
      await page.choose(machine, implement);
      await page.part('take-home').click();
      const beyond = await cutOff(page);
      assert.ok(beyond <= 1, `${machine} with ${implement}: ${beyond} px cut off`);
      await page.part('back').click();
    }
  }
});

flow('the page to take home is accessible and Escape leads back', PHONE, async (page) => {
  await page.part('take-home').click();
  await page.part('sheet').waitFor();
  await assertAccessible(page);
  await page.tab.keyboard.press('Escape');
  await page.part('answer').waitFor();
});

flow('printing without asking for the sheet prints it all the same', {}, async (page) => {
  await assertOneSheet(page, 'straight-from-the-page');
});

flow('prices that can’t be used are kept and explained', {}, async (page) => {
  await page.unfold('cost');
  for (const bad of ['much', '-3', '1,234']) {
    await page.part('hour').fill(bad);
    await page.part('hour').press('Enter');
    assert.equal(await page.part('hour').inputValue(), bad);
    assert.match(await page.tab.locator('#hour-complaint').innerText(), /0 or more/);
  }
  await page.part('hour').fill('12,5');
  await page.part('hour').press('Enter');
  assert.equal(await page.tab.locator('#hour-complaint').innerText(), '');
  assert.equal(await page.part('hour').inputValue(), '12.5');
});

for (const width of [320, 1280]) {
  flow(`what decides is accessible and no wider than ${width} px`, { viewport: { width, height: 900 } }, async (page) => {
    for (const part of ['fit', 'choose', 'wanted', 'claims', 'cost', 'beside']) await page.unfold(part);
    await page.part('beside-machine').selectOption('gannet-90');
    await page.part('beside-table').waitFor();
    await assertAccessible(page);
    const overflow = await page.tab.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok(overflow <= 0, `${overflow} px too wide`);
  });
}

flow('the longest names and the most that must be asked still fit on one sheet', {}, async (page) => {
  const path = new URL('../../core/src/yard/demo.json', import.meta.url);
  const yard = JSON.parse(await readFile(path, 'utf8'));
  const long = (text) => `${text} ${'wide long names '.repeat(8)}`.slice(0, 80).trim();
  [yard.name, yard.dealer, yard.place] = ['A yard', 'A dealer', 'A place'].map(long);
  yard.note = `${'A note as long as a note may be. '.repeat(9)}`.slice(0, 240).trim();
  for (const it of [...yard.machines, ...yard.implements, ...yard.kits]) it.name = long(it.name);
  const known = yard.machines.map(({ hitch, loader, axles, ...rest }) => rest);
  yard.machines = known;
  for (const it of yard.implements) delete it.mount;
  for (const it of yard.kits) delete it.shaft;
  await page.openFile('long.json', JSON.stringify(yard));
  await page.part('close-notice').click();
  await page.unfold('cost');
  for (const price of ['kit', 'variant', 'fitting']) {
    await page.part(`rear_shaft-${price}`).fill('123456789');
    await page.part(`rear_shaft-${price}`).press('Enter');
  }
  for (const implement of ['snow-thrower-150', 'flail-mulcher-140']) {
    await page.choose('heron-68', implement);
    await page.part('take-home').click();
    assert.ok((await cutOff(page)) <= 1);
    await assertOneSheet(page, `longest-${implement}`);
    await page.part('back').click();
  }
});
