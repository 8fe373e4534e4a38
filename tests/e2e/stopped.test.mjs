// What happens when the program fails: by a panic, by a trap, with no memory left.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';

import { assertAccessible } from './accessibility.mjs';
import { pageUrl } from './chromium.mjs';
import { inTab } from './flow.mjs';
import { framed } from './host.mjs';
import { FarendPage } from './page.mjs';
import { keepPicture } from './paper.mjs';

/** What the browser tells of a failure. */
const FAILURE = /unreachable|null function|table index|memory access|panicked/;

/**
 * Runs `body` with the page opened, and with all that goes wrong: nothing may but what was
 * forced. What a page told just before it was loaded again may be lost on its way to the driver.
 */
function failing(name, { url = pageUrl, ...options }, body) {
  inTab(name, options, async (tab, faults) => {
    const page = new FarendPage(tab);
    await page.open(url);
    await body(page, faults);
    assert.deepEqual(faults.filter((fault) => !FAILURE.test(fault)), []);
  });
}

/** Does something with what the program exports, as its own glue calls it; `act` runs in the page. */
const withProgram = (page, act) =>
  page.tab.evaluate(`(async () => {
    const code = document.querySelector('meta[name="page-code"]').content;
    const { initSync } = await import(new URL(code, document.baseURI).href);
    setTimeout(() => (${act})(initSync()));
  })()`);

/** Calls back by a name of those that the program exports; `given` is what it is to find there. */
const callBack = (page, ...given) =>
  withProgram(page, `(program) => {
    const call = Object.keys(program).find((name) => /closure.*invoke/.test(name));
    program[call](${given});
  }`);

/** A trap: a callback is called that lies beyond all memory. */
const trap = (page) => callBack(page, 8, -16);

/** A panic: the browser refuses elements, and whoever builds a view counts on them. */
const panic = async (page) => {
  await page.tab.evaluate(() => {
    Node.prototype.cloneNode = document.createElement = () => {
      throw new DOMException('no', 'NotSupportedError');
    };
  });
  await page.part('view-practice').dispatchEvent('click');
};

/** All memory that the program could get is taken, and then it needs much. */
const useUpMemory = async (page) => {
  await withProgram(page, ({ memory }) => {
    for (let pages = 65_536; pages >= 1; ) {
      try {
        memory.grow(pages);
      } catch {
        pages = Math.floor(pages / 2);
      }
    }
  });
  await page.part('open-file').setInputFiles(process.env.FAREND_LARGE_YARD);
};

const message = (page) => page.part('stopped');
const inMessage = (page, name) => page.part(`stopped-${name}`);
const restarted = async (page) => {
  await message(page).getByText('Farend has started again').waitFor();
  await page.heading().waitFor();
};
const stopped = (page) => message(page).getByText('Farend has stopped').waitFor();

const change = async (page, power) => {
  await page.openEditor();
  await page.openEntry('Curlew 46');
  await page.enter('engine.net_kw', power);
};
const keptPower = (page, power) => page.kept('yard?.machines?.[2].engine.net_kw === expected', power);
const savedPower = async (page) => {
  const { name, bytes } = await page.saveBy('stopped-save');
  assert.equal(name, 'farend-yard.json');
  return JSON.parse(bytes).machines[2].engine.net_kw;
};
const store = (page) => page.tab.evaluate(() => JSON.stringify({ ...localStorage }));

/** Lets the page fail again soon, so that it doesn't start by itself. */
const failTwice = async (page) => {
  await trap(page);
  await restarted(page);
  await trap(page);
  await stopped(page);
};

/** The page's store refuses anything. */
const denied = () => {
  for (const store of ['localStorage', 'sessionStorage']) {
    Object.defineProperty(window, store, {
      get() {
        throw new DOMException('no', 'SecurityError');
      },
    });
  }
};

for (const [what, fail] of [['a panic', panic], ['a trap', trap], ['no memory left', useUpMemory]]) {
  failing(`after ${what} the page starts again with what was kept`, {}, async (page, faults) => {
    await page.choose('heron-68', 'broom-180');
    await change(page, '41');
    await keptPower(page, 41);
    await page.openView('pair');
    await page.until(() => document.querySelector('[data-testid="view-pair"][aria-current]'));
    const link = await page.linkAfter(page.link());
    await fail(page);
    await restarted(page);
    await page.part('answer').waitFor();
    assert.equal(page.link(), link);
    assert.equal(await page.machine().inputValue(), 'heron-68');
    await assertAccessible(page);
    assert.equal(await savedPower(page), 41);
    await keptPower(page, 41);
    await inMessage(page, 'close').click();
    await message(page).waitFor({ state: 'hidden' });
    await page.open(pageUrl);
    assert.ok(await message(page).isHidden());
    // The failure, and what a panic says before it.
    assert.ok(faults.length <= (what === 'a panic' ? 2 : 1), faults.join('\n'));
  });
}

failing('a second failure soon after is left to the user, and costs nothing that is kept', {}, async (page, faults) => {
  await change(page, '41');
  await keptPower(page, 41);
  const before = await store(page);
  await failTwice(page);
  assert.equal(await page.part('menu').count(), 0);
  assert.equal(await page.tab.evaluate(() => document.activeElement.id), 'stopped');
  assert.equal(await inMessage(page, 'link').inputValue(), page.tab.url());
  await assertAccessible(page);
  assert.equal(await savedPower(page), 41);
  assert.equal(await store(page), before);
  await inMessage(page, 'again').click();
  await restarted(page);
  await keptPower(page, 41);
  assert.ok(faults.length >= 1 && faults.length <= 2, faults.join('\n'));
});

failing('a program that has failed is not called any more', {}, async (page, faults) => {
  await trap(page);
  await restarted(page);
  await change(page, '41');
  await keptPower(page, 41);
  const before = await store(page);
  await page.enter('engine.net_kw', '42');
  await trap(page);
  await stopped(page);
  // It would keep the yard, draw, and answer to another tab.
  await page.tab.evaluate(() => {
    for (const kind of ['pagehide', 'visibilitychange', 'storage', 'hashchange', 'resize']) dispatchEvent(new Event(kind));
  });
  await trap(page);
  await page.until(() => new Promise((end) => setTimeout(() => end(true))));
  assert.equal(await store(page), before);
  assert.ok(faults.length >= 1 && faults.length <= 2, faults.join('\n'));
});

failing('a part that fails when it is handed over is a failure too', {}, async (page) => {
  await page.tab.evaluate(() => {
    setTimeout(() => Promise.reject(new WebAssembly.RuntimeError('unreachable')));
  });
  await restarted(page);
});

failing('a part that comes after the failure is not handed over', { before: denied }, async (page, faults) => {
  await page.tab.evaluate(() => {
    const bytes = new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0]);
    const file = new Response(bytes, { headers: { 'content-type': 'application/wasm' } });
    globalThis.load = () => WebAssembly.instantiateStreaming(file).then(() => (globalThis.handed = true));
  });
  await trap(page);
  await stopped(page);
  await page.tab.evaluate(() => void globalThis.load());
  await page.until(() => new Promise((end) => setTimeout(() => end(true), 0)));
  assert.equal(await page.tab.evaluate(() => globalThis.handed), undefined);
  assert.equal(faults.length, 1);
});

inTab('a callback that is refused is no failure', {}, async (tab, faults) => {
  const page = new FarendPage(tab);
  await page.open(pageUrl);
  const told = tab.waitForEvent('pageerror');
  await callBack(page, 0, 0);
  assert.match((await told).message, /closure invoked recursively/);
  await page.choose('heron-68', 'broom-180');
  assert.match(await page.text('answer'), /Heron 68/);
  assert.ok(await message(page).isHidden());
  assert.equal(faults.length, 1);
});

failing('the demo yard is a way out that leaves alone what is kept', {}, async (page) => {
  await change(page, '41');
  await keptPower(page, 41);
  const before = await store(page);
  await failTwice(page);
  await inMessage(page, 'demo').click();
  await restarted(page);
  await page.part('keeping').getByText(/The demo yard is open/).waitFor();
  assert.equal(await page.part('notice').count(), 0);
  await page.linkAfter('#demo');
  assert.equal(JSON.parse((await page.saveBy('save-own')).bytes).machines[2].engine.net_kw, 46);
  await change(page, '52');
  assert.match(await page.text('kept'), /aren't kept until/);
  await page.tab.evaluate(() => dispatchEvent(new Event('pagehide')));
  assert.equal(await store(page), before);
  await page.part('take-other').click();
  await page.openEntry('Curlew 46');
  assert.equal(await page.field('engine.net_kw').inputValue(), '41');
  await page.part('keeping').waitFor({ state: 'detached' });
  await page.part('undo').click();
  await keptPower(page, 52);
});

failing('what the browser had not kept, and what was being written, is handed over', {}, async (page) => {
  await page.tab.evaluate(() => {
    Storage.prototype.setItem = new Proxy(Storage.prototype.setItem, {
      apply(set, store, given) {
        if (store === localStorage) throw new DOMException('full', 'QuotaExceededError');
        return Reflect.apply(set, store, given);
      },
    });
  });
  await change(page, '41');
  await page.part('keeping').getByText(/is used up/).waitFor();
  await page.field('name').fill('Curlew 46 of the');
  await trap(page);
  await restarted(page);
  assert.match(await page.text('stopped'), /Save it before you go on/);
  assert.match(await page.text('stopped-typed'), /Curlew 46 of the/);
  await keepPicture(page, 'stopped-unkept');
  await page.tab.reload();
  await restarted(page);
  assert.equal(await savedPower(page), 41);
});

failing('where nothing can be kept there is the message and the yard as a file', { before: denied }, async (page) => {
  await change(page, '41');
  await page.part('keeping').waitFor();
  await trap(page);
  await stopped(page);
  assert.match(await page.text('stopped'), /Save it before you go on/);
  assert.equal(await savedPower(page), 41);
  await inMessage(page, 'again').click();
  await page.heading().waitFor();
  await trap(page);
  await stopped(page);
  await inMessage(page, 'demo').click();
  await page.heading().waitFor();
  assert.ok(await message(page).isHidden());
});

const withoutWorker = () => Object.defineProperty(Navigator.prototype, 'serviceWorker', { get: () => undefined });

failing('a page that could not be loaded again stays', { before: withoutWorker }, async (page) => {
  await page.tab.context().setOffline(true);
  await trap(page);
  await stopped(page);
  await page.tab.context().setOffline(false);
  await inMessage(page, 'again').click();
  await restarted(page);
});

const broken = () => {
  Node.prototype.cloneNode = () => {
    throw new DOMException('no', 'NotSupportedError');
  };
};
for (const [language, told] of [['es', 'Farend se ha detenido'], ['fr', 'Farend s’est arrêté'], ['pseudo', 'Farend has stopped']]) {
  inTab(`a program that fails at its start each time starts again once: ${language}`, { before: broken }, async (tab, faults) => {
    const page = new FarendPage(tab);
    let loads = 0;
    tab.on('load', () => (loads += 1));
    await tab.goto(new URL(`?lang=${language}`, pageUrl).href);
    await message(page).getByText(told).waitFor();
    assert.equal((await page.text('stopped')).split('\n')[0], told);
    await page.until(() => document.readyState === 'complete');
    assert.equal(loads, 2);
    await assertAccessible(page);
    assert.deepEqual(faults.filter((fault) => !FAILURE.test(fault)), []);
  });
}

framed('a box that keeps nothing shows the message too', { sandbox: 'allow-scripts' }, async (page, tab, faults) => {
  await page.openEditor();
  await change(page, '41');
  await page.part('keeping').waitFor();
  const code = await tab.locator('iframe').elementHandle();
  const frame = await code.contentFrame();
  await trap({ tab: frame });
  await stopped(page);
  await inMessage(page, 'save').click();
  const text = await message(page).locator('textarea').inputValue();
  assert.equal(JSON.parse(text).machines[2].engine.net_kw, 41);
  await assertAccessible({ tab: frame });
  assert.deepEqual(faults.filter((fault) => !FAILURE.test(fault) && !/Download is disallowed/.test(fault)), []);
});

for (const [width, language] of [[320, 'fr'], [390, 'en'], [390, 'es'], [1024, 'en'], [1024, 'es']]) {
  failing(`the message fits ${width} px in ${language}`, { viewport: { width, height: 844 }, url: new URL(`?lang=${language}`, pageUrl).href }, async (page) => {
    const fits = async (name) => {
      await page.until(() => document.documentElement.scrollWidth <= innerWidth);
      await keepPicture(page, `stopped-${width}-${language}-${name}`);
    };
    await change(page, '41');
    await keptPower(page, 41);
    await trap(page);
    await message(page).waitFor();
    await page.heading().waitFor();
    await inMessage(page, 'close').waitFor();
    await fits('restarted');
    await trap(page);
    await inMessage(page, 'again').waitFor();
    await fits('stopped');
  });
}
