// Pictures of every view at four widths, and the page as printed. Run by `cargo xtask shots`.

import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';

import { launch, pageUrl } from './chromium.mjs';
import { FarendPage } from './page.mjs';
import { VIEWS } from './views.mjs';

const folder = process.env.FAREND_SHOTS;
const sizes = [
  { width: 390, height: 844 },
  { width: 768, height: 1024 },
  { width: 1024, height: 768 },
  { width: 1920, height: 1080 },
];

await mkdir(folder, { recursive: true });
const browser = await launch();
for (const viewport of sizes) {
  const tab = await browser.newPage({ viewport });
  const page = new FarendPage(tab);
  await page.open(pageUrl);
  for (const [name, open] of Object.entries(VIEWS)) {
    await open(page);
    const path = join(folder, `${viewport.width}-${name}.png`);
    await tab.screenshot({ path, fullPage: true });
    console.log(path);
  }
  await tab.close();
}
const tab = await browser.newPage();
await new FarendPage(tab).open(pageUrl);
const path = join(folder, 'printed.pdf');
await tab.pdf({ path, format: 'A4', preferCSSPageSize: true });
console.log(path);
await browser.close();
