// Opens a large yard in the release page and reckons all of it, as a person would: prints as JSON how
// long that took, how long the page was held up at most, and the page's memory.

import assert from 'node:assert/strict';

import { launch, pageUrl, watch } from '../e2e/chromium.mjs';

const browser = await launch();
try {
  const tab = await browser.newPage();
  const faults = watch(tab);
  await tab.addInitScript(() => {
    window.heldUp = [];
    const note = (list) => list.getEntries().forEach((it) => window.heldUp.push(it.duration));
    new PerformanceObserver(note).observe({ type: 'longtask' });
  });
  await tab.goto(pageUrl);
  await tab.getByTestId('open-file').setInputFiles(process.env.FAREND_LARGE_YARD);
  await tab.getByTestId('notice').waitFor();
  const reckoned = await tab.evaluate(async () => {
    window.heldUp.length = 0;
    const started = performance.now();
    document.querySelector('[data-testid="view-grid"]').click();
    const state = () => document.querySelector('[data-testid="grid-progress"]')?.dataset.done;
    const frame = () => new Promise((done) => { requestAnimationFrame(done); });
    while (state() !== 'true') await frame();
    return { 'page-ms': performance.now() - started, 'page-held-up-ms': Math.max(0, ...window.heldUp) };
  });
  const session = await tab.context().newCDPSession(tab);
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  assert.deepEqual(faults, []);
  console.log(JSON.stringify({ ...reckoned, 'page-heap-megabytes': usedSize / 1e6 }));
} finally {
  await browser.close();
}
