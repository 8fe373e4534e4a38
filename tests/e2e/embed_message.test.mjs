// What embed.js makes of messages: any origin, any sender, any content. No browser takes part.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import test from 'node:test';
import vm from 'node:vm';

const SCRIPT = new URL('../../app/embed.js', import.meta.url);
const PAGE = 'https://page.example';
const HOST = 'https://dealer.example';
const HIGHEST = 100_000;
const MESSAGES = 20_000;

/** The script on a host's page with one place for the frame. */
async function hosted() {
  const listeners = [];
  const frame = {
    style: {},
    dataset: {},
    contentWindow: {},
    sandbox: { contains: () => true },
    setAttribute() {},
  };
  const place = { attributes: [], getAttribute: () => null, replaceChildren() {} };
  vm.runInNewContext(await readFile(SCRIPT, 'utf8'), {
    URL,
    location: { origin: HOST },
    addEventListener: (kind, listener) => kind === 'message' && listeners.push(listener),
    document: {
      currentScript: { src: `${PAGE}/embed.js` },
      baseURI: `${HOST}/`,
      readyState: 'complete',
      querySelectorAll: () => [place],
      createElement: () => frame,
    },
  });
  assert.equal(listeners.length, 1);
  return { frame, tell: listeners[0] };
}

/** The same draws each time: a linear congruential generator (Numerical Recipes, from memory). */
function draws(seed) {
  let state = seed;
  return (list) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return list[Math.floor((state / 2 ** 32) * list.length)];
  };
}

const ANY = [
  undefined, null, true, false, 0, -0, -1, 1, 1e-9, 640, 99_999.5, HIGHEST, 1e308, NaN, Infinity, '', '1',
  '640', '640px', '1;color:red', '1e3', [], [640], [1, 2], {}, { farend: 1 }, 'x'.repeat(10_000), 7n,
];

test('only the page itself sets the height, and only to one that a page can have', async () => {
  const { frame, tell } = await hosted();
  const draw = draws(540);
  let taken = 0;
  for (let count = 0; count < MESSAGES; count += 1) {
    const origin = draw([PAGE, PAGE, PAGE, HOST, 'null', `${PAGE}.evil.example`, '']);
    const source = draw([frame.contentWindow, frame.contentWindow, frame.contentWindow, null, {}]);
    const content = { farend: draw([1, 1, 1, '1', 2, true, null]), height: draw(ANY), ready: draw(ANY) };
    const data = draw([content, content, content, draw(ANY)]);
    delete frame.style.height;
    delete frame.dataset.ready;
    tell({ origin, source, data });
    const ours = origin === PAGE && source === frame.contentWindow && data?.farend === 1;
    if (frame.dataset.ready !== undefined) {
      assert.ok(ours && data.ready === true, 'ready by somebody else');
    }
    if (frame.style.height !== undefined) {
      assert.ok(ours, 'a height by somebody else');
      assert.ok(data.height > 0 && data.height < HIGHEST, `a height of ${frame.style.height}`);
      assert.ok(!/[;:}]/.test(frame.style.height), frame.style.height);
      taken += 1;
    }
  }
  assert.ok(taken > MESSAGES / 100, `${taken} heights`);
});
