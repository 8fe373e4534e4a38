// What unfolds for those who want to know more.

import assert from 'node:assert/strict';

import { assertAccessible } from './accessibility.mjs';
import { flow } from './flow.mjs';

const PARTS = ['driving', 'site', 'work', 'heat', 'influences', 'sources'];

const number = (text) => Number(text.replace(/[^0-9.-].*$/s, '').replaceAll(',', ''));
const minutes = (text) => {
  const [, hours = 0, rest = 0] = text.match(/^(?:(\d+)\sh)?\s*(?:(\d+)\smin)?/);
  return Number(hours) * 60 + Number(rest);
};

/** The cells of a route's row in the table of work. */
const workOf = (page, name) =>
  page.part('work-table').getByRole('row').filter({ has: page.tab.getByRole('rowheader', { name, exact: true }) });

flow('a customer sees none of it until it is unfolded', {}, async (page) => {
  for (const part of PARTS) {
    assert.equal(await page.part(part).evaluate((it) => it.open), false, part);
  }
  assert.equal(await page.part('work-table').count(), 0);
});

flow('twice the job takes twice the time, and the link carries it', {}, async (page) => {
  await page.unfold('work');
  const time = async () => minutes(await workOf(page, 'Rear shaft').getByRole('cell').first().locator('b').innerText());
  const once = await time();
  assert.ok(once > 5 && once < 120, String(once));
  const before = page.link();
  await page.part('job').fill('2000');
  await page.part('job').press('Enter');
  const twice = await time();
  assert.ok(Math.abs(twice - 2 * once) <= 2, `${twice} after ${once}`);
  const link = await page.linkAfter(before);
  await page.tab.reload();
  await page.unfold('work');
  assert.equal(await page.part('job').inputValue(), '2000');
  assert.equal(await time(), twice);
  assert.equal(page.link(), link);
});

flow('a job that can’t be used is kept and explained', {}, async (page) => {
  await page.unfold('work');
  for (const bad of ['much', '-3', '1,234', '']) {
    await page.part('job').fill(bad);
    await page.part('job').press('Enter');
    assert.equal(await page.part('job').inputValue(), bad);
    assert.match(await page.tab.locator('#job-complaint').innerText(), /above zero/);
  }
  await page.part('job-measure').selectOption('mass');
  assert.equal(await page.tab.locator('#job-complaint').innerText(), '');
  assert.equal(await page.part('job').inputValue(), '10');
});

flow('a rotor that is too slow does no work, whatever its power', {}, async (page) => {
  await page.unfold('work');
  const slow = workOf(page, 'Machine hydraulics');
  assert.match(await slow.innerText(), /not done/);
  assert.match(await slow.innerText(), /too slow/);
  assert.match(await workOf(page, 'Rear shaft').innerText(), /of rated/);
});

flow('a slope, thin air and loose ground leave less for the rear shaft', {}, async (page) => {
  await page.unfold('driving');
  await page.unfold('site');
  for (const [control, value] of [['slope', '15'], ['altitude', '2500']]) {
    const before = number(await page.delivered('rear_shaft'));
    await page.control(control).type(value);
    assert.ok(number(await page.delivered('rear_shaft')) < before, control);
    await page.control(control).back.click();
    assert.equal(number(await page.delivered('rear_shaft')), before);
  }
  await page.pick('firm');
  const firm = number(await page.delivered('rear_shaft'));
  await page.pick('loose');
  assert.ok(number(await page.delivered('rear_shaft')) < firm);
});

flow('the curve runs over the slope too', {}, async (page) => {
  const before = page.link();
  await page.part('over').selectOption({ label: 'Slope, uphill above zero' });
  await page.linkAfter(before);
  assert.match(await page.part('curve').getAttribute('aria-label'), /slope/);
});

flow('a route without what the curve runs over has one over its first control', {}, async (page) => {
  // What the curve begins with, the relief pressure, a pump pack hasn't.
  await page.choose('curlew-46', 'snow-thrower-150');
  await page.openRoute('pump_pack');
  await page.until(() => /engine speed/i.test(document.querySelector('[data-testid="curve"]').ariaLabel));
});

flow('another oil changes what the hydraulics bring', {}, async (page) => {
  await page.unfold('site');
  const before = await page.delivered('machine_hydraulics');
  await page.part('oil-grade').getByRole('combobox').selectOption('iso-vg-100');
  assert.notEqual(await page.delivered('machine_hydraulics'), before);
});

flow('heat and what matters most follow the open route', {}, async (page) => {
  await page.unfold('heat');
  await page.unfold('influences');
  assert.match(await page.text('heat-lost'), /kW end as heat/);
  assert.match(await page.text('influences'), /Hydraulic motor/);
  await page.openRoute('rear_shaft');
  await page.part('heat').getByText('No oil carries power').waitFor();
  assert.match(await page.text('influences'), /PTO train/);
});

flow('sources name the models, the figures and what is left out', {}, async (page) => {
  await page.unfold('sources');
  const text = await page.text('sources');
  for (const part of [/Wilson/, /Haaland/, /ASTM D341/, /from memory/, /Wheel slip/]) {
    assert.match(text, part);
  }
});

for (const width of [390, 1280]) {
  flow(`all of it unfolded is accessible and no wider than ${width} px`, { viewport: { width, height: 900 } }, async (page) => {
    for (const part of PARTS) await page.unfold(part);
    await page.part('work-table').waitFor();
    await assertAccessible(page);
    const overflow = await page.tab.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok(overflow <= 0, `${overflow} px too wide`);
  });
}
