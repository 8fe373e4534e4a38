// From the two choices to the ledger and back through the link.

import assert from 'node:assert/strict';

import { assertAccessible } from './accessibility.mjs';
import { flow } from './flow.mjs';

const ROUTES = ['rear_shaft', 'mid_shaft', 'turned_forward', 'machine_hydraulics', 'pump_pack', 'skid_steer'];
const number = (text) => Number.parseFloat(text.replace(/,/g, ''));

flow('choose, drag the pressure, see bar, sentence, ledger and link change, reload, same state', {}, async (page) => {
  const first = page.link();
  await page.choose('plover-28', 'post-auger');
  await page.openRoute('machine_hydraulics');
  const relief = page.control('ownrelief');
  const before = await page.shown();
  const bar = await page.barWidth('machine_hydraulics');
  const contrast = await page.text('contrast');
  const link = await page.linkAfter(first);

  await relief.drag(0.1);
  // The address follows once the last step of the drag has come to rest.
  await page.linkAfter(link);
  const after = await page.shown();
  assert.ok(number(after.relief) < number(before.relief));
  assert.ok((await page.barWidth('machine_hydraulics')) < bar * 0.8);
  assert.notEqual(await page.text('contrast'), contrast);
  assert.notEqual(after.ledger, before.ledger);

  await page.tab.reload();
  await page.heading().waitFor();
  assert.deepEqual(await page.shown(), after);
});

flow('every route is shown, and one that a machine can’t have says why', {}, async (page) => {
  await page.choose('puffin-62', 'flail-mulcher-140');
  for (const route of ROUTES) assert.ok(await page.route(route).isVisible());
  assert.equal(await page.standing('rear_shaft'), 'No fit');
  assert.match(await page.route('rear_shaft').innerText(), /no rear PTO/);
  assert.equal(await page.openedRoute(), 'skid_steer');
  await page.openRoute('mid_shaft');
  assert.match(await page.text('no-fit'), /no mid PTO/);
});

flow('each control turns by dragging, tapping, keys and typing, on one state', { hasTouch: true }, async (page) => {
  for (const [route, ids] of [
    ['machine_hydraulics', ['enginespeed', 'ownflow', 'ownrelief']],
    ['pump_pack', ['enginespeed', 'packflow', 'packrelief']],
  ]) {
    await page.openRoute(route);
    for (const id of ids) {
      const control = page.control(id);
      const own = await control.value();
      const changed = async (act, what) => {
        const before = await control.value();
        const power = await page.delivered(route);
        await act();
        assert.notEqual(await control.value(), before, `${id} by ${what}`);
        assert.notEqual(await page.delivered(route), power, `${id} by ${what}`);
      };
      await changed(() => control.drag(0.45), 'dragging');
      await changed(() => control.less.tap(), 'tapping');
      await changed(() => control.more.tap(), 'tapping');
      // One step may be less than the tenth of a kilowatt that is shown.
      const keys = async () => {
        for (let press = 0; press < 10; press += 1) await control.slider.press('ArrowLeft');
      };
      await changed(keys, 'keys');
      await changed(() => control.type(String(Math.round(number(own) * 0.9))), 'typing');
      await control.back.click();
      assert.equal(await control.value(), own);
    }
  }
});

flow('a number that can’t be used is kept, explained, and changes nothing', {}, async (page) => {
  const relief = page.control('ownrelief');
  const before = await page.delivered('machine_hydraulics');
  for (const bad of ['9000', 'much', '1,234', '']) {
    await relief.type(bad);
    assert.equal(await relief.value(), bad);
    assert.match(await relief.complaint.innerText(), /from 50/);
    assert.equal(await page.delivered('machine_hydraulics'), before);
  }
  await relief.type('150,5');
  assert.equal(await relief.complaint.innerText(), '');
  assert.equal(await relief.value(), '150.5');
});

flow('units change every figure and no result', {}, async (page) => {
  const metric = number(await page.delivered('rear_shaft'));
  const standing = await page.standing('rear_shaft');
  await page.pick('units-us');
  const us = await page.delivered('rear_shaft');
  assert.match(us, /hp$/);
  assert.ok(Math.abs(number(us) - metric / 0.7457) < 0.1);
  assert.equal(await page.standing('rear_shaft'), standing);
  assert.match(await page.text('ledger'), /psi/);
  assert.doesNotMatch(await page.text('ledger'), /\d (kW|bar|N·m|L\/min)/);
});

flow('a skid steer’s circuits can be chosen', {}, async (page) => {
  await page.choose('puffin-62', 'stump-cutter');
  const high = number(await page.delivered('skid_steer'));
  await page.pick('standard_flow');
  assert.ok(number(await page.delivered('skid_steer')) < high * 0.8);
});

flow('tables say what the pictures show', {}, async (page) => {
  for (const summary of await page.tab.locator('details.table summary').all()) await summary.click();
  const rows = page.part('routes-table').locator('tbody tr');
  assert.equal(await rows.count(), ROUTES.length);
  for (const [place, route] of ROUTES.entries()) {
    const row = await rows.nth(place).innerText();
    assert.ok(row.includes(await page.standing(route)));
    if ((await page.standing(route)) !== 'No fit') assert.ok(row.includes(await page.delivered(route)));
  }
  assert.ok((await page.part('curve-table').locator('tbody tr').count()) >= 5);
});

flow('the routes are reached and chosen by keys alone', {}, async (page) => {
  await page.machine().focus();
  const focused = () => page.tab.evaluate(() => document.activeElement?.name);
  while ((await focused()) !== 'route') await page.tab.keyboard.press('Tab');
  await page.tab.keyboard.press('ArrowUp');
  assert.equal(await page.openedRoute(), 'turned_forward');
  assert.match(await page.text('ledger'), /Rear shaft turned forward/);
});

for (const [machine, implement] of [['curlew-46', 'snow-thrower-150'], ['wren-18', 'wood-chipper-15']]) {
  for (const units of ['units-metric', 'units-us']) {
    flow(`no accessibility rule is broken: ${machine}, ${implement}, ${units}`, {}, async (page) => {
      await page.choose(machine, implement);
      await page.pick(units);
      for (const summary of await page.tab.locator('summary').all()) await summary.click();
      await assertAccessible(page);
    });
  }
}

for (const width of [320, 390, 1024, 1920]) {
  flow(`nothing needs sideways scrolling at ${width} px`, { viewport: { width, height: 800 } }, async (page) => {
    await page.choose('plover-28', 'snow-thrower-150');
    const wide = await page.tab.evaluate(() => document.documentElement.scrollWidth);
    assert.ok(wide <= width, `${wide} px`);
  });
}
