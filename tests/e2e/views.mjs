// Every view of the page, and the way there from any other but the page to take home.

import { Practising } from './practising.mjs';

const DETAILS = ['fit', 'choose', 'wanted', 'claims', 'cost', 'beside', 'work', 'heat', 'influences', 'sources'];

const reading = async (page, id) => {
  await page.openView('grid');
  await page.part(id).click();
  await page.reckoned();
};

export const VIEWS = {
  pair: async (page) => {
    await page.openView('pair');
    await page.part('ledger').waitFor();
  },
  details: async (page) => {
    await page.openView('pair');
    for (const part of DETAILS) await page.unfold(part);
  },
  'whole-yard': (page) => reading(page, 'reading-whole'),
  'by-machine': (page) => reading(page, 'reading-machines'),
  editor: (page) => page.openEditor(),
  walk: async (page) => {
    await new Practising(page).open('walk');
    await page.part('walk-more').click();
    await page.part('walk-say').click();
    await page.part('walk-result').waitFor();
  },
  case: async (page) => {
    const practising = new Practising(page);
    await practising.open('alone');
    await practising.find('route', 20);
  },
  group: async (page) => {
    await new Practising(page).open('group');
    await page.part('show-large').waitFor();
  },
  record: (page) => new Practising(page).open('record'),
  sheet: async (page) => {
    await page.openView('pair');
    await page.part('take-home').click();
    await page.part('sheet').waitFor();
  },
};
