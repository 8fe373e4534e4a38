// Reads the page's tables for spreadsheets as RFC 4180 has it.

import assert from 'node:assert/strict';

/** The rows as objects with the headers for keys. */
export function table(bytes) {
  const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  assert.ok(text.startsWith('\uFEFF') && text.endsWith('\r\n'));
  // A cell, and what ends it.
  const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/y;
  const records = [[]];
  cell.lastIndex = 1;
  while (cell.lastIndex < text.length) {
    const at = cell.lastIndex;
    const found = cell.exec(text);
    assert.ok(found, `no cell at ${at}: ${text.slice(at, at + 40)}`);
    const [, quoted, plain, end] = found;
    records.at(-1).push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end !== ',') records.push([]);
  }
  records.pop();
  const [headers, ...rows] = records;
  return rows.map((row) => {
    assert.equal(row.length, headers.length);
    return Object.fromEntries(headers.map((header, place) => [header, row[place]]));
  });
}
