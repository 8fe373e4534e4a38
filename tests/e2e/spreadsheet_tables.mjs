// Tables of the yard as LibreOffice saves them in several languages. Run by `cargo xtask test --full`;
// FAREND_WRITE_TABLES=1 renews the committed ones, which the native tests read.

import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { promisify } from 'node:util';

const tables = fileURLToPath(new URL('../yards/tables/', import.meta.url));
// Commas, double quotes, UTF-8, American numbers; TRUE and FALSE are taken for flags.
const AS_OPENED = 'CSV:44,34,76,1,,1033,false,true';

/** Between cells stands `separator`; numbers and flags follow the language. */
const SAVED = [
  { list: 'machines', language: 'en-US', separator: ',' },
  { list: 'machines', language: 'de-DE', separator: ';' },
  { list: 'implements', language: 'de-DE', separator: ';' },
  { list: 'kits', language: 'fr-FR', separator: '\t' },
  { list: 'kits', language: 'es-ES', separator: ';' },
];

/** What LibreOffice keeps of a user who speaks a language. */
const settings = (language) => `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>${language}</value></prop></item>
</oor:items>`;

/** A table as LibreOffice saves it, its flags typed by a user as the spreadsheet's own. */
async function saved(folder, { list, language, separator }) {
  const profile = join(folder, 'profile');
  await mkdir(join(profile, 'user'), { recursive: true });
  await writeFile(join(profile, 'user', 'registrymodifications.xcu'), settings(language));
  const table = await readFile(join(tables, `${list}.csv`), 'utf8');
  const typed = table.replaceAll(/(?<=,)(yes|no)(?=[,\r])/g, (word) => (word === 'yes' ? 'TRUE' : 'FALSE'));
  await writeFile(join(folder, `${list}.csv`), typed);
  const filter = `csv:Text - txt - csv (StarCalc):${separator.charCodeAt(0)},34,76,1,,0,false,true,false`;
  await promisify(execFile)(process.env.SOFFICE, [
    `-env:UserInstallation=${pathToFileURL(profile).href}`, '--headless', `--infilter=${AS_OPENED}`,
    '--convert-to', filter, '--outdir', join(folder, 'saved'), join(folder, `${list}.csv`),
  ]);
  return readFile(join(folder, 'saved', `${list}.csv`), 'utf8');
}

for (const each of SAVED) {
  const name = `${each.list}.${each.language}.csv`;
  test(`LibreOffice saves ${name}`, async () => {
    const folder = await mkdtemp(join(tmpdir(), 'farend-'));
    try {
      const made = await saved(folder, each);
      if (process.env.FAREND_WRITE_TABLES) await writeFile(join(tables, name), made);
      assert.equal(made, await readFile(join(tables, name), 'utf8'));
    } finally {
      await rm(folder, { recursive: true });
    }
  });
}
