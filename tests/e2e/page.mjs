// What a person finds on the page. Flows speak in these words and know no selectors.

export class FarendPage {
  constructor(tab) {
    this.tab = tab;
  }

  async open(url) {
    await this.tab.goto(url);
    await this.heading().waitFor();
  }

  heading() {
    return this.tab.getByRole('heading', { level: 1 });
  }
}
