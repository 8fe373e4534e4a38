// Runs page.mjs in Chromium and prints its times as JSON.

import assert from 'node:assert/strict';

import { launch, pageUrl, watch } from '../e2e/chromium.mjs';

// Relative: both sides search for the same most by the same equations.
const SAME = 1e-6;

const browser = await launch();
try {
  const tab = await browser.newPage();
  const faults = watch(tab);
  await tab.goto(pageUrl);
  const { times, program, port } = await tab.evaluate(async () => {
    const { run } = await import('./page.mjs');
    return run();
  });
  assert.deepEqual(faults, []);
  const off = Math.abs(port / program - 1);
  assert.ok(off <= SAME, `the program has ${program} kW, the port ${port} kW`);
  console.log(JSON.stringify(times));
} finally {
  await browser.close();
}
