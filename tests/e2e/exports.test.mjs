// What the page saves is what it shows, and a saved comparison opens again.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';

import { assertAccessible } from './accessibility.mjs';
import { pageUrl } from './chromium.mjs';
import { table } from './csv.mjs';
import { flow } from './flow.mjs';

const ROUTES = ['rear_shaft', 'mid_shaft', 'turned_forward', 'machine_hydraulics', 'pump_pack', 'skid_steer'];
const BUTTONS = ['save-routes', 'save-ledger', 'save-svg', 'save-png', 'save-comparison'];
const ownYard = (await readFile(new URL('../yards/hand-written.json', import.meta.url), 'utf8')).replace(/^\uFEFF/, '');

/** A number with its unit as the page shows it. */
const shown = (number, unit, digits = 1) => {
  const options = { minimumFractionDigits: digits, maximumFractionDigits: digits };
  return `${new Intl.NumberFormat('en', options).format(Number(number))}\u00A0${unit}`;
};

for (const [units, unit] of [['metric', 'kW'], ['us', 'hp']]) {
  flow(`the table of the routes says what the page shows: ${units}`, {}, async (page) => {
    await page.choose('curlew-46', 'snow-thrower-150');
    await page.pick(`units-${units}`);
    const { name, bytes } = await page.save('save-routes');
    assert.equal(name, 'farend-curlew-46-snow-thrower-150-routes.csv');
    const rows = table(bytes);
    assert.equal(rows.length, ROUTES.length);
    for (const [place, route] of ROUTES.entries()) {
      const row = rows[place];
      assert.equal(row.Standing, await page.standing(route));
      if (row.Standing === 'No fit') {
        assert.equal(row[`Delivered, likely (${unit})`], '');
        assert.ok((await page.route(route).innerText()).includes(row.Why));
        continue;
      }
      const delivered = row[`Delivered, likely (${unit})`];
      assert.equal(shown(delivered, unit), await page.delivered(route));
      const part = shown(row["Of the engine's net power (%)"], '%', 0);
      assert.ok((await page.route(route).innerText()).includes(part), part);
      const [low, high] = ['low', 'high'].map((it) => Number(row[`Delivered, ${it} (${unit})`]));
      assert.ok(low <= Number(delivered) && Number(delivered) <= high);
      assert.ok(Number(row['Hooking up (min)']) > 0 && row.Kit !== '');
    }
  });
}

flow('the job and its time are in the table once a job is set', {}, async (page) => {
  const before = table((await page.save('save-routes')).bytes)[0];
  assert.equal(before.Job, '');
  await page.unfold('work');
  await page.part('job').fill('2000');
  await page.part('job').press('Enter');
  const [row] = table((await page.save('save-routes')).bytes);
  assert.equal(row['Job (m²)'], '2000');
  const time = page.part('work-table').locator('tbody tr').first().locator('td b').first();
  assert.equal(await time.innerText(), shown(row['Time, likely (min)'], 'min', 0));
});

flow('the ledger says what the page shows, stage by stage', {}, async (page) => {
  await page.choose('curlew-46', 'snow-thrower-150');
  for (const route of ['pump_pack', 'rear_shaft']) {
    await page.openRoute(route);
    const { name, bytes } = await page.save('save-ledger');
    assert.equal(name, 'farend-curlew-46-snow-thrower-150-ledger.csv');
    const rows = table(bytes);
    const onPage = await page.part('ledger').locator('table.stages tr:not(.formulas):has(td[data-head])').all();
    assert.ok(onPage.length >= 3);
    let place = -1;
    for (const stage of onPage) {
      const title = await stage.locator('th').innerText();
      // Stages of one name follow each other as on the page.
      place = rows.findIndex((row, at) => at > place && row.Stage === title);
      assert.notEqual(place, -1, title);
      const row = rows[place];
      const cells = await stage.locator('td').allInnerTexts();
      for (const [cell, column] of ['Takes', 'Loses', 'Passes on'].entries()) {
        const power = shown(row[`${column} (kW)`], 'kW');
        assert.ok(cells[cell].startsWith(power), `${title} ${column}: ${cells[cell]} for ${power}`);
        const carried = ['speed (rpm)', 'torque (N·m)', 'flow (L/min)', 'pressure (bar)']
          .map((it) => row[`${column}: ${it}`])
          .filter((it) => it);
        if (title !== 'Engine' && column !== 'Loses') assert.equal(carried.length, 2, title);
        for (const number of carried) {
          const digits = [0, 1].map((it) => shown(number, '', it).trim());
          assert.ok(title === 'Engine' || digits.some((it) => cells[cell].includes(it)), `${title}: ${number} not in ${cells[cell]}`);
        }
      }
    }
    const last = rows.at(-1);
    assert.equal(shown(last['Takes (kW)'], 'kW'), await page.delivered(route));
  }
});

flow('a route that can’t be had has no ledger to save, and the page says so', {}, async (page) => {
  await page.choose('puffin-62', 'flail-mulcher-140');
  await page.openRoute('mid_shaft');
  await page.openSaveMenu();
  await page.part('save-ledger').click();
  assert.match(await page.text('notice'), /Mid shaft can't be hooked up/);
});

/** What a picture is made of, and the words in it that touch each other or stick out. */
const looked = (tab, svg) =>
  tab.evaluate((text) => {
    const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
    const root = document.importNode(parsed.documentElement, true);
    document.body.replaceChildren(root);
    const all = [root, ...root.querySelectorAll('*')];
    // The light edge below each text has its place, not a place of its own.
    const texts = all.filter((it) => it.localName === 'text' && !it.hasAttribute('stroke'));
    const boxes = texts.map((it) => ({ words: it.textContent, box: it.getBBox() }));
    const apart = (a, b) =>
      a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height * 0.9 <= b.y || b.y + b.height * 0.9 <= a.y;
    const touching = boxes.flatMap((a, at) =>
      boxes.slice(at + 1).filter((b) => !apart(a.box, b.box)).map((b) => `${a.words} | ${b.words}`),
    );
    const outside = boxes.filter(({ box }) => box.x < 30 || box.x + box.width > 970 || box.y < 0 || box.y + box.height > 640);
    return {
      size: [root.getAttribute('width'), root.getAttribute('height'), root.getAttribute('viewBox')],
      root: `${root.namespaceURI} ${root.localName} ${root.getAttribute('role')}`,
      label: root.getAttribute('aria-label'),
      elements: [...new Set(all.map((it) => it.localName))],
      attributes: [...new Set(all.flatMap((it) => [...it.attributes].map((attribute) => attribute.name)))],
      references: all
        .flatMap((it) => [...it.attributes].filter(({ name }) => name !== 'xmlns').map(({ value }) => value))
        .filter((it) => /url\(|:\/\//.test(it)),
      faces: texts.every((it) => it.closest('[font-family]') && it.closest('[font-size]')),
      words: texts.map((it) => it.textContent),
      touching,
      outside: outside.map(({ words }) => words),
    };
  }, svg);

const text = ({ bytes }) => new TextDecoder().decode(bytes);

flow('the picture stands by itself and says what the page shows', {}, async (page) => {
  await page.choose('curlew-46', 'snow-thrower-150');
  const file = await page.save('save-svg');
  assert.equal(file.name, 'farend-curlew-46-snow-thrower-150.svg');
  const beside = await page.tab.context().newPage();
  const picture = await looked(beside, text(file));
  assert.equal(picture.root, 'http://www.w3.org/2000/svg svg img');
  assert.deepEqual(picture.size, ['1000', '640', '0 0 1000 640']);
  const drawn = ['svg', 'defs', 'pattern', 'rect', 'circle', 'g', 'text', 'line', 'path'];
  assert.deepEqual(picture.elements.filter((it) => !drawn.includes(it)), []);
  assert.deepEqual(picture.attributes.filter((it) => /^(class|style|on.*|.*href|src)$/.test(it)), []);
  assert.deepEqual([...new Set(picture.references)].sort(), ['url(#picture-drops)', 'url(#picture-hatch)']);
  assert.ok(picture.faces);
  const message = (await page.part('bars-message').innerText()).trim();
  assert.ok(picture.label.endsWith(message), picture.label);
  assert.ok(picture.words.includes('Invented demo data'));
  assert.ok(picture.words.some((it) => /^Farend \d+\.\d+\.\d+, .*20\d\d$/.test(it)));
  for (const route of ROUTES) {
    const standing = await page.standing(route);
    assert.ok(picture.words.includes(standing), standing);
    if (standing !== 'No fit') assert.ok(picture.words.includes(await page.delivered(route)));
  }
});

flow('no words of the picture touch each other or stick out, however long the names', {}, async (page) => {
  const beside = await page.tab.context().newPage();
  const check = async (what) => {
    const { touching, outside } = await looked(beside, text(await page.save('save-svg')));
    assert.deepEqual({ touching, outside }, { touching: [], outside: [] }, what);
  };
  for (const [machine, implement] of [
    ['curlew-46', 'snow-thrower-150'], ['wren-18', 'wood-chipper-15'], ['puffin-62', 'flail-mulcher-140'], ['gannet-90', 'broom-180'],
  ]) {
    await page.choose(machine, implement);
    await check(`${machine} ${implement}`);
  }
  await page.pick('units-us');
  await check('US units');
  const yard = JSON.parse(ownYard);
  for (const item of [...yard.machines, ...yard.implements]) item.name = 'WWW '.repeat(20).trim();
  await page.openFile('long.json', JSON.stringify(yard));
  await check('long names');
});

flow('the picture as PNG has two pixels for each unit, and the same bars', {}, async (page) => {
  const { name, bytes } = await page.save('save-png');
  assert.ok(name.endsWith('.png'));
  assert.deepEqual([...bytes.subarray(0, 8)], [137, 80, 78, 71, 13, 10, 26, 10]);
  assert.deepEqual([bytes.readUInt32BE(16), bytes.readUInt32BE(20)], [2000, 1280]);
  const inks = await page.tab.evaluate(async (base64) => {
    const content = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const picture = await createImageBitmap(new Blob([content], { type: 'image/png' }));
    const canvas = new OffscreenCanvas(picture.width, picture.height);
    const context = canvas.getContext('2d');
    context.drawImage(picture, 0, 0);
    const { data } = context.getImageData(0, 0, picture.width, picture.height);
    const count = (r, g, b) => {
      let found = 0;
      for (let at = 0; at < data.length; at += 4) {
        if (data[at] === r && data[at + 1] === g && data[at + 2] === b && data[at + 3] === 255) found += 1;
      }
      return found;
    };
    return { paper: count(255, 255, 255), arrives: count(0x16, 0x4b, 0x6b), ink: count(0x1b, 0x1f, 0x23) };
  }, bytes.toString('base64'));
  assert.ok(inks.paper > 1_000_000 && inks.arrives > 50_000 && inks.ink > 5_000, JSON.stringify(inks));
});

flow('a saved comparison opens again: the same yard, the same page', {}, async (page) => {
  const yard = JSON.parse(ownYard);
  await page.openFile('own.json', ownYard);
  await page.choose(yard.machines[0].id, yard.implements[0].id);
  await page.openRoute('machine_hydraulics');
  await page.pick('units-us');
  await page.control('ownrelief').less.click();
  const before = await page.shown();
  const name = await page.text('yard-name');
  const file = await page.save('save-comparison');
  const saved = JSON.parse(text(file));
  assert.equal(saved.format, 'farend-comparison');
  for (const result of saved.results.routes) {
    const standing = (await page.standing(result.route)).toLowerCase();
    assert.equal(result.runs?.standing ?? 'no fit', standing);
    if (!result.runs) continue;
    const horsepower = result.runs.delivered_kw.likely / 0.745699871582270;
    assert.equal(shown(horsepower, 'hp'), await page.delivered(result.route));
  }

  await page.tab.goto('about:blank');
  await page.open(pageUrl);
  assert.notDeepEqual(await page.shown(), before);
  await page.openFile(file.name, text(file));
  assert.match(await page.text('notice'), /is open, with the yard/);
  assert.deepEqual(await page.shown(), before);
  assert.equal(await page.text('yard-name'), name);
  assert.deepEqual(JSON.parse(text(await page.save('save-comparison'))), saved);
});

flow('a broken or newer comparison is refused with all its faults and changes nothing', {}, async (page) => {
  await page.choose('heron-68', 'tiller-150');
  const saved = JSON.parse(text(await page.save('save-comparison')));
  await page.choose('curlew-46', 'snow-thrower-150');
  const before = await page.shown();

  const broken = structuredClone(saved);
  broken.link = broken.link.slice(2);
  broken.yard.machines[0].engine.net_kw = 9000;
  delete broken.yard.implements[0].name;
  await page.openFile('broken.json', JSON.stringify(broken));
  const notice = await page.text('notice');
  for (const fault of [
    /broken\.json can't be used: it has 3 faults/,
    /link .*can't be read/,
    /yard\.machines\[0\]\.engine\.net_kw \(9000\) must be 3 to 600.kW/,
    /yard\.implements\[0\]\.name is missing/,
  ]) assert.match(notice, fault);
  assert.deepEqual(await page.shown(), before);
  await page.part('close-notice').click();

  await page.openFile('newer.json', JSON.stringify({ ...saved, format_version: 2 }));
  assert.match(await page.text('notice'), /one fault[^]*newer version/);
  assert.deepEqual(await page.shown(), before);
});

flow('where the browser keeps files back, each button says what to do instead', {}, async (page) => {
  await page.tab.evaluate(() => {
    URL.createObjectURL = () => {
      throw new DOMException('refused', 'SecurityError');
    };
  });
  await page.openSaveMenu();
  for (const button of BUTTONS) {
    await page.part(button).click();
    const way = button === 'save-png' ? /as SVG/ : /a tab of its own/;
    await page.part('notice').getByText(way).waitFor();
    await page.part('close-notice').click();
  }
});

flow('where the browser makes no pixels, the page points to the SVG', {}, async (page) => {
  await page.tab.evaluate(() => {
    HTMLCanvasElement.prototype.toBlob = () => {
      throw new DOMException('tainted', 'SecurityError');
    };
  });
  await page.openSaveMenu();
  await page.part('save-png').click();
  await page.part('notice').getByText(/as SVG/).waitFor();
});

flow('the menu is accessible, its buttons large enough for gloves', { viewport: { width: 390, height: 844 } }, async (page) => {
  await page.openSaveMenu();
  for (const button of BUTTONS) {
    const { height } = await page.part(button).boundingBox();
    assert.ok(height >= 48, `${button}: ${height}`);
  }
  await assertAccessible(page);
});
