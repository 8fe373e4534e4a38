// How the release page loads and answers on a slow phone and a slow network: prints JSON. What is slow
// is said in `SLOW`; the browser slows itself down.

import assert from 'node:assert/strict';

import { launch, pageUrl, watch } from '../e2e/chromium.mjs';

/** 1.6 Mbit/s with 150 ms of way, and a quarter of this machine's speed. */
const SLOW = { bytesPerSecond: 200_000, latency: 150, cpu: 4 };
/** Loads, of which the median counts. */
const LOADS = 3;
/** Steps of a drag from one end of a slider to the other, one each frame. */
const STEPS = 60;
/** Changes after which the memory is looked at: first when all has run once, then at the end. */
const CHANGES = [100, 1_000];

const median = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
const part = (values, share) => values[Math.min(values.length - 1, Math.floor(values.length * share))];

/** A fresh tab, with its network or its processor slowed down. */
async function slowed(browser, { network = false, cpu = 1 }) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  // What a worker keeps for later would be counted with what is loaded.
  await context.addInitScript(() => Object.defineProperty(navigator, 'serviceWorker', { value: undefined }));
  const tab = await context.newPage();
  const faults = watch(tab);
  const session = await context.newCDPSession(tab);
  await session.send('Network.enable');
  if (network) {
    await session.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: SLOW.latency,
      downloadThroughput: SLOW.bytesPerSecond,
      uploadThroughput: SLOW.bytesPerSecond,
    });
  }
  await session.send('Emulation.setCPUThrottlingRate', { rate: cpu });
  return { context, tab, session, faults };
}

async function load(browser) {
  const { context, tab, session, faults } = await slowed(browser, { network: true, cpu: SLOW.cpu });
  const files = new Map();
  let usable = false;
  session.on('Network.responseReceived', ({ requestId, response }) =>
    files.set(requestId, { name: new URL(response.url).pathname.split('/').pop() || 'index.html', first: !usable }),
  );
  session.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
    const file = files.get(requestId);
    if (file) file.bytes = encodedDataLength;
  });
  const started = performance.now();
  await tab.goto(pageUrl, { waitUntil: 'commit' });
  await tab.getByTestId('answer').waitFor();
  await tab.getByTestId('rear_shaft').waitFor();
  const usableAt = performance.now() - started;
  usable = true;
  await tab.getByTestId('ledger').waitFor();
  const wholeAt = performance.now() - started;
  assert.deepEqual(faults, []);
  await context.close();
  return { usable: usableAt, whole: wholeAt, files: [...files.values()] };
}

/** Drags each slider from end to end and back, a step each frame: the time between frames. */
async function drag(browser) {
  const { context, tab, faults } = await slowed(browser, { cpu: SLOW.cpu });
  await tab.goto(pageUrl);
  await tab.getByTestId('ledger').waitFor();
  const sliders = await tab.locator('.what-if input[type="range"]:visible').all();
  const frames = {};
  for (const slider of sliders) {
    const name = await slider.evaluate((it) => it.closest('[data-testid]:not(input)').dataset.testid);
    frames[name] = await slider.evaluate(async (it, steps) => {
      const frame = () => new Promise(requestAnimationFrame);
      const [min, max] = [Number(it.min), Number(it.max)];
      const times = [];
      let before = await frame();
      for (let step = 0; step <= 2 * steps; step += 1) {
        const share = step <= steps ? step / steps : 2 - step / steps;
        it.value = min + (max - min) * share;
        it.dispatchEvent(new InputEvent('input', { bubbles: true }));
        const now = await frame();
        times.push(now - before);
        before = now;
      }
      return times;
    }, STEPS);
  }
  assert.deepEqual(faults, []);
  await context.close();
  const all = Object.values(frames).flat().toSorted((a, b) => a - b);
  const slowest = Object.entries(frames).map(([name, times]) => [name, Math.max(...times)]);
  return {
    sliders: sliders.length,
    p50: part(all, 0.5),
    p95: part(all, 0.95),
    p99: part(all, 0.99),
    slowest: slowest.toSorted(([, a], [, b]) => b - a)[0],
  };
}

/** The memory of page and program, in MB, after some changes and after many. */
async function memory(browser) {
  const { context, tab, session } = await slowed(browser, {});
  await tab.goto(pageUrl);
  await tab.getByTestId('ledger').waitFor();
  const megabytes = [];
  let done = 0;
  for (const upTo of CHANGES) {
    await tab.evaluate(
      async ([from, to]) => {
        const choices = ['machine', 'implement'].map((id) => document.querySelector(`[data-testid="${id}"]`));
        for (let change = from; change < to; change += 1) {
          const choice = choices[change % choices.length];
          choice.selectedIndex = (choice.selectedIndex + 1) % choice.options.length;
          choice.dispatchEvent(new Event('change', { bubbles: true }));
          await new Promise(requestAnimationFrame);
        }
      },
      [done, upTo],
    );
    done = upTo;
    await session.send('HeapProfiler.collectGarbage');
    const { usedSize, backingStorageSize } = await session.send('Runtime.getHeapUsage');
    megabytes.push((usedSize + backingStorageSize) / 1e6);
  }
  await context.close();
  return megabytes;
}

const browser = await launch();
try {
  const loads = [];
  for (let times = 0; times < LOADS; times += 1) loads.push(await load(browser));
  console.log(
    JSON.stringify({
      usable: median(loads.map((it) => it.usable)),
      whole: median(loads.map((it) => it.whole)),
      files: loads[0].files,
      drag: await drag(browser),
      memory: await memory(browser),
    }),
  );
} finally {
  await browser.close();
}
