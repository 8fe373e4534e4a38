// Going through the page without a mouse: by keys alone or by taps alone.

import assert from 'node:assert/strict';

/** More steps than any page of ours has stops. */
const MOST_STOPS = 400;

/** What has the focus: its test identifier and, of a group of radio buttons, the group's name. */
const focused = (page) =>
  page.tab.evaluate(() => {
    const { activeElement: it } = document;
    const inside = it?.querySelector?.('input');
    return [it?.dataset?.testid, inside?.dataset?.testid, it?.closest?.('[data-testid]')?.dataset?.testid];
  });

/** A reader who has only keys. */
export const byKeys = {
  /** Presses Tab until something with this test identifier has the focus. */
  async reach(page, id) {
    for (let stop = 0; stop < MOST_STOPS; stop += 1) {
      if ((await focused(page)).slice(0, 2).includes(id)) return;
      await page.tab.keyboard.press('Tab');
    }
    assert.fail(`${id} can't be reached by Tab`);
  },

  async press(page, id) {
    await this.reach(page, id);
    await page.tab.keyboard.press('Enter');
  },

  /** Opens a folded part; its summary is the stop within it. */
  async unfold(page, id) {
    for (let stop = 0; stop < MOST_STOPS; stop += 1) {
      const at = await page.tab.evaluate(() => {
        const { activeElement: it } = document;
        return it?.tagName === 'SUMMARY' ? it.parentElement.dataset.testid : null;
      });
      if (at === id) {
        await page.tab.keyboard.press('Enter');
        await page.part(id).locator(':scope > summary + *').first().waitFor();
        return;
      }
      await page.tab.keyboard.press('Tab');
    }
    assert.fail(`${id} can't be unfolded by keys`);
  },

  /** Types the beginning of an option's text into a closed list. */
  async choose(page, id, text) {
    await this.reach(page, id);
    await page.tab.keyboard.type(text);
  },

  async type(page, id, text) {
    await this.reach(page, id);
    await page.tab.keyboard.press('ControlOrMeta+a');
    await page.tab.keyboard.type(text);
    await page.tab.keyboard.press('Enter');
  },

  /** Moves within a group of radio buttons to the one that has this identifier. */
  async pick(page, group, id) {
    await page.part(group).locator('input').first().focus();
    for (let step = 0; step < 8; step += 1) {
      if ((await focused(page))[0] === id) return;
      await page.tab.keyboard.press('ArrowRight');
    }
    assert.fail(`${id} of ${group} can't be picked by keys`);
  },
};

/** A reader who has only a finger. The list that a tap opens is the system's own. */
export const byTaps = {
  async press(page, id) {
    await page.part(id).tap();
  },

  async unfold(page, id) {
    await page.part(id).locator('summary').first().tap();
    await page.part(id).locator(':scope > summary + *').first().waitFor();
  },

  async choose(page, id, text) {
    await page.part(id).tap();
    const options = await page.part(id).locator('option').allInnerTexts();
    await page.part(id).selectOption({ label: options.find((it) => it.startsWith(text)) });
  },

  async type(page, id, text) {
    await page.part(id).tap();
    await page.part(id).fill(text);
    await page.part(id).press('Enter');
  },

  async pick(page, group, id) {
    await page.part(group).locator('label', { has: page.part(id) }).tap();
  },
};
