// The saved tables as LibreOffice reads them. Run by `cargo xtask test --full`.

import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';

import { table } from './csv.mjs';
import { flow } from './flow.mjs';

const ownYard = await readFile(new URL('../yards/hand-written.json', import.meta.url), 'utf8');
// Commas, double quotes and UTF-8 from the first line on: what its dialogue offers for such a file.
const AS_OPENED = 'CSV:44,34,76,1';
const FORMULA = '=1+1';

/** A file as LibreOffice's own flat XML. */
async function converted(folder, name) {
  const profile = pathToFileURL(join(folder, 'profile')).href;
  await promisify(execFile)(process.env.SOFFICE, [
    `-env:UserInstallation=${profile}`, '--headless', `--infilter=${AS_OPENED}`, '--convert-to', 'fods',
    '--outdir', folder, join(folder, name),
  ]);
  return readFile(join(folder, name.replace(/\.csv$/, '.fods')), 'utf8');
}

/** The cells of its sheet, row by row: type, value, words and formula. */
const cells = (tab, xml) =>
  tab.evaluate((text) => {
    const sheet = new DOMParser().parseFromString(text, 'text/xml');
    const at = (element, name) => element.getAttribute(name);
    return [...sheet.getElementsByTagName('table:table-row')].map((row) =>
      [...row.getElementsByTagName('table:table-cell')].flatMap((cell) => {
        const each = {
          type: at(cell, 'office:value-type'),
          value: at(cell, 'office:value'),
          words: cell.textContent.trim(),
          formula: at(cell, 'table:formula'),
        };
        return Array(Number(at(cell, 'table:number-columns-repeated') ?? 1)).fill(each);
      }),
    );
  }, xml);

flow('LibreOffice takes numbers for numbers and text for text', {}, async (page) => {
  const yard = JSON.parse(ownYard.replace(/^\uFEFF/, ''));
  for (const kit of yard.kits) kit.name = FORMULA;
  await page.openFile('own.json', JSON.stringify(yard));
  await page.choose(yard.machines[0].id, yard.implements[0].id);
  // The page's own policy lets nothing parse.
  const reader = await page.tab.context().newPage();
  const folder = await mkdtemp(join(tmpdir(), 'farend-'));
  try {
    let [numbers, guarded] = [0, 0];
    for (const button of ['save-routes', 'save-ledger']) {
      const { name, bytes } = await page.save(button);
      await writeFile(join(folder, name), bytes);
      const [headers, ...rows] = await cells(reader, await converted(folder, name));
      for (const [place, written] of table(bytes).entries()) {
        for (const [header, text] of Object.entries(written)) {
          const column = headers.findIndex((it) => it.words === header);
          assert.notEqual(column, -1, header);
          const { type = null, value, words, formula } = rows[place][column] ?? {};
          const where = `${name}, ${header}, row ${place + 1}: ${text}`;
          assert.equal(formula ?? null, null, where);
          if (text === '') {
            assert.equal(type, null, where);
          } else if (/^-?\d+(\.\d+)?$/.test(text)) {
            assert.equal(type, 'float', where);
            assert.ok(Math.abs(value - text) <= 1e-12 * Math.abs(text), `${where}: ${value}`);
            numbers += 1;
          } else {
            assert.equal(type, 'string', where);
            if (words.endsWith(FORMULA)) guarded += 1;
          }
        }
      }
    }
    assert.ok(numbers > 50 && guarded > 0, `${numbers} numbers, ${guarded} formulas`);
  } finally {
    await rm(folder, { recursive: true });
  }
});
