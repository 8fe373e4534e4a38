// What a person finds on the page. Flows speak in these words and know no selectors.

import { readFile } from 'node:fs/promises';

export class FarendPage {
  constructor(tab) {
    this.tab = tab;
  }

  /** Opens a page, and waits until its address holds what it shows. */
  async open(url) {
    await this.tab.goto(url);
    await this.heading().waitFor();
    await this.linkAfter('');
  }

  /** Waits until the browser keeps the page for times without network. */
  async keptForOffline() {
    await this.tab.locator('[data-testid="page-kept"][data-kept="true"]').waitFor({ state: 'attached' });
  }

  /**
   * Waits until `holds` is true of a value in the page. The driver's own way to wait makes a function
   * of text each time, which the page's policy refuses; this one does so once, from outside.
   */
  async until(holds, value) {
    const waits = `(async () => {
      const holds = ${holds};
      while (!(await holds(${JSON.stringify(value)}))) await new Promise(requestAnimationFrame);
    })()`;
    let timer;
    const late = new Promise((_, fail) => {
      timer = setTimeout(() => fail(new Error(`never true: ${holds} with ${value}`)), 10_000);
    });
    await Promise.race([this.tab.evaluate(waits), late]).finally(() => clearTimeout(timer));
  }

  heading() {
    return this.tab.getByRole('heading', { level: 1 });
  }

  part(id) {
    return this.tab.getByTestId(id);
  }

  text(id) {
    return this.part(id).innerText();
  }

  /** Picks one of several, where its words lie still, and waits until it is picked. */
  async pick(id) {
    const one = this.part(id);
    await this.tab.locator('label', { has: one }).click();
    await one.and(this.tab.locator(':checked')).waitFor({ state: 'attached' });
  }

  /** Opens a part that is folded, and waits for what is in it. */
  async unfold(id) {
    const part = this.part(id);
    await part.locator('summary').first().click();
    await part.locator(':scope > summary + *').first().waitFor();
  }

  /** Waits until the whole yard is reckoned. */
  async reckoned() {
    await this.tab.locator('[data-testid="grid-progress"][data-done="true"]').waitFor({ state: 'attached' });
  }

  // Choices

  machine() {
    return this.part('machine');
  }

  implement() {
    return this.part('implement');
  }

  async choose(machine, implement) {
    await this.machine().selectOption(machine);
    await this.implement().selectOption(implement);
  }

  // Routes

  route(id) {
    return this.part(id);
  }

  async openRoute(id) {
    await this.route(id).click();
  }

  openedRoute() {
    return this.tab.locator('input[name="route"]:checked').locator('..').getAttribute('data-testid');
  }

  delivered(id) {
    return this.route(id).getByTestId('delivered').innerText();
  }

  standing(id) {
    return this.route(id).locator('.standing').innerText();
  }

  /** Width of what arrives, in the picture's own pixels. */
  async barWidth(id) {
    const box = await this.route(id).locator('.bar .arrives').boundingBox();
    return box.width;
  }

  // Controls

  control(id) {
    const row = this.part(id);
    const inRow = (part) => row.getByTestId(part);
    return {
      slider: inRow('slider'),
      number: inRow('number'),
      less: inRow('less'),
      more: inRow('more'),
      back: inRow('back'),
      complaint: inRow('complaint'),
      value: () => inRow('number').inputValue(),
      async type(text) {
        await inRow('number').fill(text);
        await inRow('number').press('Enter');
      },
      /** Drags the thumb to a part of the slider's length, by the mouse. */
      drag: async (part) => {
        const slider = inRow('slider');
        await slider.scrollIntoViewIfNeeded();
        const box = await slider.boundingBox();
        const [min, max, now] = await slider.evaluate((it) => [it.min, it.max, it.value].map(Number));
        const y = box.y + box.height / 2;
        const at = (share) => box.x + 8 + (box.width - 16) * share;
        await this.tab.mouse.move(at((now - min) / (max - min)), y);
        await this.tab.mouse.down();
        await this.tab.mouse.move(at(part), y, { steps: 10 });
        await this.tab.mouse.up();
      },
    };
  }

  // The yard's editor

  async openView(id) {
    await this.part(`view-${id}`).click();
  }

  async openEditor() {
    await this.openView('yard');
    await this.part('entry').waitFor();
  }

  field(path) {
    return this.part(`field-${path}`);
  }

  async enter(path, text) {
    await this.field(path).fill(text);
    await this.field(path).press('Enter');
  }

  /** What is told at a field. */
  async complaint(path) {
    return this.tab.locator(`[id="field-${path}-fault"]`).innerText();
  }

  async openList(id) {
    await this.tab.locator('label', { has: this.part(id) }).click();
  }

  entries() {
    return this.part('entries').getByRole('button');
  }

  async openEntry(name) {
    await this.entries().filter({ hasText: name }).click();
    await this.tab.getByRole('heading', { level: 3, name }).waitFor();
  }

  /** Waits until the browser keeps a yard of which something holds. */
  async kept(holds, value) {
    const yard = `JSON.parse(localStorage.getItem('farend-yard'))?.yard ?? null`;
    await this.until(`(expected, yard = ${yard}) => ${holds}`, value);
  }

  // Files and links

  async openFile(name, text) {
    const file = { name, mimeType: 'application/json', buffer: Buffer.from(text) };
    await this.part('open-file').setInputFiles(file);
    await this.part('notice').waitFor();
  }

  /** Picks a table, and waits for what it would change. */
  async openTable(name, text) {
    await this.part('open-file').setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
    await this.tab.getByRole('heading', { name: `What ${name} would change` }).waitFor();
  }

  /** Holds files over the page. */
  async drag(files) {
    const dataTransfer = await this.tab.evaluateHandle((each) => {
      const data = new DataTransfer();
      for (const { name, text } of each) data.items.add(new File([text], name));
      return data;
    }, files);
    await this.part('answer').dispatchEvent('dragover', { dataTransfer });
    await this.part('drop-hint').waitFor();
    return dataTransfer;
  }

  /** Drops files on the page. */
  async drop(files) {
    const dataTransfer = await this.drag(files);
    await this.part('answer').dispatchEvent('drop', { dataTransfer });
    await this.part('drop-hint').waitFor({ state: 'detached' });
  }

  /** Saves by a button of the menu: the file's name and content. */
  async save(id) {
    await this.openSaveMenu();
    return this.saveBy(id);
  }

  async saveBy(id) {
    const download = this.tab.waitForEvent('download');
    await this.part(id).click();
    const file = await download;
    return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
  }

  /** Shows the buttons for tables, beside the yard's entries. */
  async showTables() {
    await this.part('view-yard').click();
    await this.unfold('tables');
  }

  /** Saves one of the yard's tables, and comes back to the pair. */
  async saveTable(id) {
    await this.showTables();
    const file = await this.saveBy(id);
    await this.part('view-pair').click();
    return file;
  }

  async openSaveMenu() {
    await this.openMenuOf('save-menu');
  }

  async openMenuOf(id) {
    const menu = this.part(id);
    if (!(await menu.evaluate((it) => it.open))) await menu.locator('summary').click();
  }

  async openMenu() {
    await this.part('menu').locator('summary').click();
  }

  link() {
    return new URL(this.tab.url()).hash;
  }

  /** Waits until the address has followed the last change. */
  async linkAfter(before) {
    await this.until((old) => location.hash !== old, before);
    return this.link();
  }

  /** All that the page shows of its state, for comparing. */
  async shown() {
    return {
      machine: await this.machine().inputValue(),
      implement: await this.implement().inputValue(),
      route: await this.openedRoute(),
      answer: await this.text('answer'),
      ledger: await this.text('ledger'),
      relief: await this.control('ownrelief').value(),
    };
  }
}
