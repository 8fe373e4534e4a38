// What comes out of the printer.

import assert from 'node:assert/strict';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import jsQR from 'jsqr';
import { PDFDocument } from 'pdf-lib';
import { PNG } from 'pngjs';

/** Points, and how far a format may be off by rounding. */
const FORMATS = { A4: [595.3, 841.9], Letter: [612, 792] };
const ROUNDING = 1;

/**
 * Stands in for the system's dialog, which a driver can't answer: from now on printing is only
 * noted. Tells whether it was asked for.
 */
export async function standInForDialog(page) {
  await page.tab.evaluate(() => {
    globalThis.print = () => {
      dispatchEvent(new Event('beforeprint'));
      globalThis.askedToPrint = true;
      dispatchEvent(new Event('afterprint'));
    };
  });
  return () => page.tab.evaluate(() => globalThis.askedToPrint === true);
}

/** Prints the page on either format and asserts that it is one sheet of it. */
export async function assertOneSheet(page, name) {
  for (const [format, size] of Object.entries(FORMATS)) {
    const bytes = await page.tab.pdf({ format, printBackground: true });
    const document = await PDFDocument.load(bytes);
    assert.equal(document.getPageCount(), 1, `${name} on ${format}`);
    const { width, height } = document.getPage(0).getSize();
    for (const [side, expected] of [[width, size[0]], [height, size[1]]]) {
      assert.ok(Math.abs(side - expected) <= ROUNDING, `${name} on ${format}: ${side} pt`);
    }
    await keep(`${name}-${format}.pdf`, bytes);
  }
}

/** What the code on the sheet says. */
export async function decodedCode(page) {
  const { data, width, height } = PNG.sync.read(await page.part('code').screenshot());
  return jsQR(new Uint8ClampedArray(data), width, height)?.data;
}

/** How many pixels of the sheet lie beyond its edge, as printed. */
export async function cutOff(page) {
  await page.tab.emulateMedia({ media: 'print' });
  const beyond = await page.part('sheet').evaluate((it) => {
    // A picture's own view cuts it, as it should.
    const boxes = [it, ...it.querySelectorAll('*:not(svg *)')];
    const edge = it.getBoundingClientRect();
    const ends = boxes.map((box) => box.getBoundingClientRect());
    return Math.max(
      it.scrollHeight - it.clientHeight,
      it.scrollWidth - it.clientWidth,
      ...ends.map((end) => end.bottom - edge.bottom),
      ...ends.map((end) => end.right - edge.right),
    );
  });
  await page.tab.emulateMedia({ media: null });
  return beyond;
}

/** Keeps a file to be looked at, where a folder is named for them. */
async function keep(name, bytes) {
  const folder = process.env.FAREND_SHOTS;
  if (folder === undefined) return;
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, name), bytes);
}

/** Keeps a picture of the screen. */
export async function keepPicture(page, name) {
  await keep(`${name}.png`, await page.tab.screenshot({ fullPage: true }));
}
