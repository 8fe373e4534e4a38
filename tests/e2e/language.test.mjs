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
