// The rules of WCAG 2.2 A and AA that a program can judge.

import assert from 'node:assert/strict';
import axe from 'axe-core';

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

export const assertAccessible = (page) => assertHolds(page, { runOnly: tags });

/** Text has the contrast that level AAA asks for. */
export const assertStrong = (page) =>
  assertHolds(page, { runOnly: { type: 'rule', values: ['color-contrast-enhanced'] } });

async function assertHolds(page, options) {
  // Evaluated by the driver, so that the page's own policy need not allow it.
  await page.tab.evaluate(axe.source);
  const { violations } = await page.tab.evaluate((given) => globalThis.axe.run(given), options);
  const told = violations.flatMap(({ id, help, nodes }) =>
    nodes.map((node) => `${id}: ${help}: ${node.target.join(' ')}`),
  );
  assert.deepEqual(told, []);
}
