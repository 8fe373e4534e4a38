import assert from 'node:assert/strict';

import { pageUrl } from './chromium.mjs';
import { flow, inTab } from './flow.mjs';
import { FarendPage } from './page.mjs';

const asked = (tag) => new URL(`?lang=${tag}`, pageUrl).href;
const spoken = (page) => page.tab.evaluate(() => document.documentElement.lang);

/** Chooses a language, and waits until the page speaks it. */
async function speak(page, tag) {
  await page.part('language').selectOption(tag);
  await page.until((wanted) => document.documentElement.lang === wanted, tag);
}

flow('the browser’s language is spoken where it is offered', { locale: 'es-MX' }, async (page) => {
  assert.equal(await spoken(page), 'es');
  assert.match(await page.tab.title(), /qué mueve/);
  assert.match(await page.delivered('rear_shaft'), /^\d+,\d\u{a0}kW$/u);
  // Nobody has read it who grew up with it, and it says so in its own words.
  assert.match(await page.text('unread'), /hablantes nativos/);
});

flow('English is spoken where the browser’s language is not offered', { locale: 'fi-FI' }, async (page) => {
  assert.equal(await spoken(page), 'en');
  assert.match(await page.delivered('rear_shaft'), /^\d+\.\d\u{a0}kW$/u);
  assert.equal(await page.part('unread').count(), 0);
});

flow('another language is chosen without losing what was turned', {}, async (page) => {
  await page.openRoute('machine_hydraulics');
  await page.control('ownrelief').type('175');
  const before = await page.shown();
  await speak(page, 'fr');
  assert.match(await page.text('machine_hydraulics'), /Hydraulique de la machine/);
  assert.equal(await page.control('ownrelief').value(), '175');
  assert.equal(await page.openedRoute(), 'machine_hydraulics');
  assert.equal(await page.tab.evaluate(() => document.activeElement.id), 'language');
  await speak(page, 'en');
  assert.deepEqual(await page.shown(), before);
});

flow('a choice is kept by the browser, and the address asks louder', {}, async (page) => {
  await speak(page, 'es');
  await page.open(pageUrl);
  assert.equal(await spoken(page), 'es');
  await page.open(asked('fr'));
  assert.equal(await spoken(page), 'fr');
  // From here on the address asks for what was chosen.
  await speak(page, 'en');
  assert.equal(new URL(page.tab.url()).searchParams.get('lang'), 'en');
});

flow('units stay as they are when the language changes', {}, async (page) => {
  await page.tab.locator('label', { has: page.part('units-us') }).click();
  await speak(page, 'es');
  assert.match(await page.delivered('rear_shaft'), /^\d+,\d\u{a0}hp$/u);
});

// A service worker would have it.
inTab('a language that cannot be loaded is told, and the page stays as it is', { serviceWorkers: 'block' }, async (tab) => {
  const page = new FarendPage(tab);
  await page.open(pageUrl);
  await page.tab.route('**/es.txt', (route) => route.abort());
  await page.part('language').selectOption('es');
  await page.part('missed').filter({ hasText: /./ }).waitFor();
  assert.match(await page.text('missed'), /^Español couldn't be loaded/);
  assert.equal(await spoken(page), 'en');
  assert.equal(await page.part('language').inputValue(), 'en');
});

const english = /\b(the|of|must|where|is|its)\b/i;
const broken = JSON.stringify({
  format_version: 2,
  name: 'Fault',
  machines: [{ id: 'avocet', name: 'Avocet 20', kind: 'tractor', engine: { net_kw: 9000, rated_rpm: '2400', lowest_rpm: 0.5 } }],
  implements: [{ id: 'B!' }],
  kits: [],
  kists: [],
});
/** What the broken file's faults say: a limit with its decimals, and what was probably meant. */
const told = {
  es: [/net_kw \(9000\) debe ser de 3 a 600.kW/, /rated_rpm \("2400"\) debe ser un número/, /kists no es un campo .*¿Quería decir kits\?/],
  fr: [/net_kw \(9000\) doit être de 3 à 600.kW/, /rated_rpm \("2400"\) doit être un nombre/, /kists n'est pas un champ .*Vouliez-vous dire kits.\?/],
};

for (const tag of ['es', 'fr']) {
  flow(`what is wrong with a file is told in its reader’s language: ${tag}`, { url: asked(tag) }, async (page) => {
    await page.openFile('broken.json', broken);
    const notice = await page.text('notice');
    for (const fault of told[tag]) assert.match(notice, fault);
    assert.doesNotMatch(notice, english);
    await page.part('mend-here').click();
    await page.openEntry('Avocet 20');
    await page.part('faults').waitFor();
    assert.doesNotMatch(await page.text('entry'), english);
  });

  flow(`boxes show decimals as the language writes them, and read them as the same number: ${tag}`, { url: asked(tag) }, async (page) => {
    await page.openRoute('machine_hydraulics');
    const flow = page.control('ownflow');
    await flow.type('38.5');
    assert.equal(await flow.value(), '38,5');
    assert.equal(await flow.slider.inputValue(), '38.5');
    // What is shown, entered as it stands.
    await flow.type('40');
    await flow.type('38,5');
    assert.equal(await flow.slider.inputValue(), '38.5');

    await page.openEditor();
    await page.enter('engine.net_kw', '34,125');
    await page.kept('yard?.machines.some((it) => it.engine.net_kw === expected)', 34.125);
    assert.equal(await page.field('engine.net_kw').inputValue(), '34,125');
    // Here the point may part thousands.
    await page.enter('engine.net_kw', '1.234');
    assert.equal(await page.field('engine.net_kw').getAttribute('aria-invalid'), 'true');
    assert.equal(await page.field('engine.net_kw').inputValue(), '1.234');
  });
}

for (const width of [320, 390]) {
  flow(`words two fifths longer have room at ${width} px`, { url: asked('pseudo'), viewport: { width, height: 800 } }, async (page) => {
    // The words come from the files: accented and in brackets.
    assert.match(await page.text('rear_shaft'), /\[Réèáàr/);
    for (const view of ['pair', 'grid', 'yard', 'practice']) {
      await page.openView(view);
      await page.tab.locator(`[data-testid="view-${view}"][aria-current]`).waitFor();
      await page.tab.evaluate(() => document.querySelectorAll('main details, header details').forEach((it) => (it.open = true)));
      assert.deepEqual(await page.tab.evaluate(outOfPlace), [], view);
    }
    await page.openFile('broken.json', broken);
    const faults = await page.part('notice').locator('li').allInnerTexts();
    assert.ok(faults.length > 4);
    for (const fault of faults) assert.match(fault, /\[.*[áéíóú]/);
    assert.deepEqual(await page.tab.evaluate(outOfPlace), [], 'notice');
    await page.part('mend-here').click();
    await page.openEntry('Avocet 20');
    assert.deepEqual(await page.tab.evaluate(outOfPlace), [], 'faults');
    const table = { name: 'broken.csv', mimeType: 'text/csv', buffer: Buffer.from('id,name,routes,hosse\nA!,,by air,1') };
    await page.part('open-file').setInputFiles(table);
    await page.part('table-faults').waitFor();
    assert.deepEqual(await page.tab.evaluate(outOfPlace), [], 'table');
  });
}

/** What sticks out of the page or of a box that clips it; runs in the page. */
function outOfPlace() {
  const told = [];
  const clips = (it) => ['auto', 'scroll', 'hidden', 'clip'].includes(getComputedStyle(it).overflowX);
  const within = (it, holds) => {
    for (let up = it.parentElement; up; up = up.parentElement) if (holds(up)) return true;
    return false;
  };
  if (document.documentElement.scrollWidth > innerWidth) told.push(`page: ${document.documentElement.scrollWidth}`);
  for (const it of document.querySelectorAll('main *, header *')) {
    const box = it.getBoundingClientRect();
    const name = `${it.tagName} ${it.textContent.trim().slice(0, 40)}`;
    if (!box.width || !it.checkVisibility() || it.closest('.hidden, select, svg defs')) continue;
    if (box.right > innerWidth + 1 && !within(it, clips)) told.push(`beyond the page: ${name}`);
    // What only listeners are told has one pixel.
    const isCut = it.clientWidth > 1 && getComputedStyle(it).overflowX === 'hidden' && it.scrollWidth > it.clientWidth + 1;
    if (isCut && getComputedStyle(it).textOverflow !== 'ellipsis') told.push(`cut off: ${name}`);
    if (it.matches('button, .button, .switch span') && it.scrollWidth > it.clientWidth + 1) told.push(`too wide: ${name}`);
  }
  return told;
}
