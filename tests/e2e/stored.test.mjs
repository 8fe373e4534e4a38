// Everything that the browser keeps, in every state that its store can be in: all can be used, what isn't
// kept is told, and nothing is overwritten that can't be read. What the user is asked about the yard, and
// what becomes of it, is tried in kept.test.mjs; what a learner sees, in practice.test.mjs.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';

import { pageUrl } from './chromium.mjs';
import { flow } from './flow.mjs';
import { FarendPage } from './page.mjs';
import { Practising } from './practising.mjs';

const YARD = 'farend-yard';
const RECORD = 'farend-practice-record';
const LANGUAGE = 'farend-language';
const OUTDOORS = 'farend-outdoors';

const golden = async (name) => JSON.parse(await readFile(new URL(`../golden/yard/${name}.json`, import.meta.url), 'utf8'));
const enveloped = (yard, version = 1) =>
  JSON.stringify({ format: 'farend-edited-yard', format_version: version, yard });
const answer = { idea: 'it_must_hook_up', right: true, confidence: 'sure', help: 'shown' };
const recorded = (more = {}) =>
  JSON.stringify({ format: RECORD, format_version: 1, answers: [answer], ...more });


/** How often a flow opens the page before it begins. */
const OPENED = process.env.FAREND_OFFLINE ? 2 : 1;

/** Puts something in the store before the page opens for the flow, in the first tab. */
const stored = (items) => `
  if (Number(localStorage.getItem('stored')) < ${OPENED}) {
    for (const [key, text] of Object.entries(${JSON.stringify(items)})) localStorage.setItem(key, text);
    localStorage.setItem('stored', Number(localStorage.getItem('stored')) + 1);
  }`;

const none = `Object.defineProperty(window, 'localStorage', { get: () => null });`;
const denied = `Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('no', 'SecurityError'); } });`;
/** Halves, until nothing more goes in. */
const full = `
  for (let size = 4_000_000, place = 0; size >= 1; place += 1) {
    try {
      localStorage.setItem('filler-' + place, 'x'.repeat(size));
    } catch {
      size = Math.floor(size / 2);
    }
  }`;

/** What the store holds of ours. */
const items = (page) =>
  page.tab.evaluate(() => {
    try {
      return Object.fromEntries(Object.entries(localStorage).filter(([key]) => key.startsWith('farend-')));
    } catch {
      return {};
    }
  });

const isOutdoors = async (page) => (await page.part('outdoors').getAttribute('aria-pressed')) === 'true';
const spoken = (page) => page.tab.evaluate(() => document.documentElement.lang);
const firstName = async (page) => {
  await page.openEditor();
  await page.entries().first().click();
  return page.field('name').inputValue();
};
const cases = async (page) => {
  await new Practising(page).open('record');
  const [number] = /\d+(?= case)/.exec(await page.text('idea-it_must_hook_up')) ?? ['0'];
  return Number(number);
};
const answerOne = async (page, seed) => {
  const practising = new Practising(page);
  await practising.open('alone');
  await practising.find('fit', seed);
  await practising.giveUp();
};

/** What the page tells of the yard and of the record. */
const told = async (page) => {
  await new Practising(page).open('record');
  const text = async (id) => ((await page.part(id).count()) ? page.text(id) : '');
  return { yard: await text('keeping'), record: await text('record-trouble') };
};

/** Longer than what it replaces, so that it needs room. */
const CHANGED = 'Changed '.padEnd(80, 'x');

/** Changes everything that can be kept, and sees that it holds. The words change last. */
const changeAll = async (page) => {
  const [outdoors, before] = [await isOutdoors(page), await cases(page)];
  await page.part('outdoors').click();
  assert.equal(await isOutdoors(page), !outdoors);
  await answerOne(page, 1);
  assert.equal(await cases(page), before + 1);
  await firstName(page);
  await page.enter('name', CHANGED);
  assert.equal(await firstName(page), CHANGED);
  // Closing doesn't wait for changes to rest.
  await page.tab.evaluate(() => dispatchEvent(new Event('pagehide')));
  const words = await told(page);
  await page.part('language').selectOption('es');
  await page.until(() => document.documentElement.lang === 'es');
  return words;
};

const reopened = async (page) => {
  await page.open(pageUrl);
  const language = await spoken(page);
  if (language !== 'en') {
    await page.part('language').selectOption('en');
    await page.until(() => document.documentElement.lang === 'en');
  }
  return { language, outdoors: await isOutdoors(page), cases: await cases(page), name: await firstName(page) };
};

const whole = { yard: /^$/, record: /^$/ };
const first = (yard) => yard.machines[0].name;
const demo = await golden('v2-demo');
const older = await Promise.all(['v1-first', 'v1-last'].map(golden));
const wontKeep = { yard: /doesn't let the page keep anything/, record: /anything here/ };
const ofDemo = { cases: 0, name: first(demo) };
const keptAll = { language: 'es', outdoors: true, name: CHANGED };
const keptNothing = { language: 'en', outdoors: false };
const tomorrow = { [RECORD]: recorded({ format_version: 2 }), [LANGUAGE]: 'tlh', [OUTDOORS]: 'dusk' };

/**
 * The states: what is there, what the store does, what opens, what is told of changes, what of the store
 * then is as it was (by key) and what opens the next time.
 */
const STATES = [
  { name: 'nothing is kept yet', opens: ofDemo, tells: whole, next: { ...keptAll, cases: 1 } },
  { name: 'there is no store', store: none, opens: ofDemo, tells: wontKeep, next: { ...keptNothing, ...ofDemo } },
  { name: 'the store is denied', store: denied, opens: ofDemo, tells: wontKeep, next: { ...keptNothing, ...ofDemo } },
  {
    name: 'the store is full',
    there: { [YARD]: enveloped(older[0]), [RECORD]: recorded() },
    store: full,
    opens: { cases: 1, name: first(older[0]) },
    tells: { yard: /room that this browser gives is used up/, record: /no room/ },
    stays: [RECORD],
    next: { ...keptNothing, cases: 1, name: first(older[0]) },
  },
  {
    name: 'all that is kept is damaged',
    there: { [YARD]: '{"format":"farend-edit', [RECORD]: '{', [LANGUAGE]: '{', [OUTDOORS]: '{' },
    opens: ofDemo,
    tells: { yard: /was set aside/, record: /can't be read/ },
    stays: [RECORD],
    aside: '{"format":"farend-edit',
    next: { language: 'es', outdoors: false, cases: 0, name: CHANGED },
  },
  ...older.map((yard, place) => ({
    name: `a yard of the first format is kept, ${place + 1}`,
    there: { [YARD]: enveloped(yard), [RECORD]: recorded() },
    opens: { cases: 1, name: first(yard) },
    tells: whole,
    next: { ...keptAll, cases: 2 },
  })),
  ...[['the envelope', enveloped(demo, 99)], ['the yard', enveloped({ ...demo, format_version: 99 })]].map(([what, yard]) => ({
    name: `a newer version kept it all, by ${what}`,
    there: { [YARD]: yard, ...tomorrow },
    opens: ofDemo,
    tells: { yard: /can't read, probably from a newer one/, record: /newer version/ },
    stays: [YARD, RECORD],
    next: { language: 'es', outdoors: false, ...ofDemo },
  })),
];

for (const { name, there = {}, store = '', opens, tells, stays = [], aside, next } of STATES) {
  flow(`${name}: all can be used, and what isn’t kept is told`, { before: stored(there) + store }, async (page) => {
    assert.deepEqual({ cases: await cases(page), name: await firstName(page) }, opens);
    const words = await changeAll(page);
    for (const what of ['yard', 'record']) assert.match(words[what], tells[what]);
    const after = await items(page);
    for (const key of stays) assert.equal(after[key], there[key], key);
    assert.equal(after[`${YARD}-set-aside-1`], aside);
    assert.deepEqual(await reopened(page), next);
  });
}

/** A second tab of the same browser. */
const second = async (page) => {
  const other = new FarendPage(await page.tab.context().newPage());
  await other.open(pageUrl);
  return other;
};

flow('two tabs change it all: neither loses anything, and the other’s yard is told', { before: stored({ [RECORD]: recorded() }) }, async (page) => {
  await answerOne(page, 2);
  const other = await second(page);
  assert.equal((await changeAll(other)).record, '');
  await page.tab.bringToFront();
  await page.part('keeping').getByText(/changed in another tab/).waitFor();
  assert.equal(await spoken(page), 'en');
  await page.part('practice-record').click();
  await page.part('idea-it_must_hook_up').getByText('3 cases').waitFor();
  await answerOne(page, 3);
  await firstName(page);
  await page.enter('name', 'Changed here');
  await page.tab.evaluate(() => dispatchEvent(new Event('pagehide')));
  assert.equal(JSON.parse((await items(page))[YARD]).yard.machines[0].name, CHANGED);
  assert.deepEqual(await reopened(page), { ...keptAll, cases: 4 });
});

flow('what a newer version keeps in another tab is not overwritten either', {}, async (page) => {
  await answerOne(page, 2);
  const other = await second(page);
  const theirs = { [YARD]: enveloped(demo, 99), [RECORD]: tomorrow[RECORD] };
  await other.tab.evaluate((all) => Object.entries(all).forEach(([key, text]) => localStorage.setItem(key, text)), theirs);
  await page.part('keeping').getByText(/changed in another tab/).waitFor();
  await page.tab.bringToFront();
  await page.part('take-other').click();
  await page.part('keeping').getByText(/can't read, probably from a newer one/).waitFor();
  const words = await changeAll(page);
  assert.match(words.record, /newer version/);
  const after = await items(page);
  for (const key of [YARD, RECORD]) assert.equal(after[key], theirs[key], key);
});

flow('answers that found no room are kept when there is some, beside another tab’s', {}, async (page) => {
  const other = await second(page);
  await page.tab.bringToFront();
  await page.tab.evaluate(() => {
    globalThis.keeps = Storage.prototype.setItem;
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await answerOne(page, 1);
  assert.match((await told(page)).record, /no room/);
  await other.tab.bringToFront();
  await answerOne(other, 2);
  await page.tab.bringToFront();
  await page.part('idea-it_must_hook_up').getByText('2 cases').waitFor();
  await page.tab.evaluate(() => (Storage.prototype.setItem = globalThis.keeps));
  await answerOne(page, 3);
  assert.deepEqual(await told(page), { yard: '', record: '' });
  assert.equal(JSON.parse((await items(page))[RECORD]).answers.length, 3);
});
