// What a learner and a trainer do on the page. Flows speak in these words.

/** A page's whole text as a machine reads it: source, accessibility tree, address. */
export async function everything(page) {
  const tree = await page.tab.locator('body').ariaSnapshot();
  const html = await page.tab.content();
  // The program itself is code, not what it says.
  return plain([html, tree, decodeURIComponent(page.tab.url())].join('\n'));
}

/** Without the differences that no reader sees. */
export const plain = (text) => text.replaceAll('&nbsp;', ' ').replaceAll('\u00a0', ' ').replaceAll('&amp;', '&');

export class Practising {
  constructor(page) {
    this.page = page;
  }

  part(id) {
    return this.page.part(id);
  }

  async open(part) {
    await this.part('view-practice').click();
    await this.part(`practice-${part}`).click();
  }

  /** Asks a case by its number. */
  async find(kind, seed) {
    if (!(await this.part('find').evaluate((it) => it.open))) await this.part('find').locator('summary').click();
    await this.part('find-kind').selectOption(kind);
    await this.part('find-number').fill(String(seed));
    await this.part('find-number').press('Enter');
    await this.part('find-case').click();
    await this.part('case').getByText(`Case ${seed},`).waitFor();
    await this.part('answer-form').waitFor();
  }

  help() {
    return this.part('case').getAttribute('data-help');
  }

  async sure(word = 'sure') {
    await this.page.pick(word);
  }

  async choose(place) {
    await this.page.pick(`choice-${place}`);
  }

  async commit() {
    await this.part('commit').click();
    await this.part('outcome').waitFor();
    return (await this.part('outcome').getAttribute('data-right')) === 'true';
  }

  /** Answers by a choice. */
  async answer(place, word) {
    await this.choose(place);
    await this.sure(word);
    return this.commit();
  }

  /** Answers anything, so as to see the truth. */
  async giveUp() {
    const power = this.part('guess-power');
    if (await power.count()) {
      await power.fill('0.1');
      await power.press('Enter');
    }
    if (await this.part('choice-0').count()) await this.choose(0);
    await this.sure('guessing');
    await this.commit();
  }

  /** How many choices there are. */
  choices() {
    return this.part('choices').locator('input').count();
  }

  /** The place of the right choice, found by trying. */
  async rightChoice(kind, seed) {
    await this.find(kind, seed);
    const count = await this.choices();
    for (let place = 0; place < count; place += 1) {
      await this.find(kind, seed);
      if (await this.answer(place)) return place;
    }
    throw new Error(`no choice of ${kind} ${seed} is right`);
  }

  /** The cases of the set as they are shown large. */
  async shownLarge() {
    await this.part('show-large').click();
    const cases = [];
    for (;;) {
      await this.part('show-question').waitFor();
      cases.push(await this.part('show').locator('.pair, [data-testid="show-question"], .fine, .facts').allInnerTexts());
      if (await this.part('show-next').isDisabled()) break;
      const place = await this.page.text('show-place');
      await this.part('show-next').click();
      await this.page.until(
        (before) => document.querySelector('[data-testid="show-place"]').innerText !== before, place);
    }
    await this.part('show-close').click();
    await this.part('show-large').waitFor();
    return cases;
  }
}
