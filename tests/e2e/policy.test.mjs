// What the page's policy keeps out, should anything of it ever get in.

import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { launch, pageUrl } from './chromium.mjs';
import { FarendPage } from './page.mjs';

const subFolder = new URL(`.${process.env.FAREND_SUB_FOLDER}/`, pageUrl).href;

let browser;
before(async () => {
  browser = await launch();
});
after(() => browser?.close());

/** Markup that becomes elements, and markup that doesn't. */
const markup = {
  '<p class="note">Plain &amp; <b>simple</b></p>': true,
  '<svg viewBox="0 0 1 1"><rect class="a" width="1" height="1"/></svg>': true,
  '<img src="x" onerror="alert(1)">': false,
  '<p onclick="alert(1)">x</p>': false,
  '<p class="a"onclick=alert(1)>x</p>': false,
  '<script>alert(1)</script>': false,
  '<p style="color:red">x</p>': false,
  '<a href="javascript:alert(1)">x</a>': false,
  '<iframe srcdoc="x"></iframe>': false,
  '<svg><use href="#x"/></svg>': false,
  '<p class="a': false,
  '<!-- x -->': false,
};

// Each policy tells what it keeps out: the page's own, and that of a host.
for (const [what, url, policies] of [['sends a policy', pageUrl, 2], ['sends none', subFolder, 1]]) {
  test(`from a host that ${what}, nothing from elsewhere runs, loads or is asked for`, async () => {
    const context = await browser.newContext();
    try {
      const tab = await context.newPage();
      await new FarendPage(tab).open(url);
      const taken = await tab.evaluate((each) => {
        const takes = (text) => {
          try {
            document.createElement('div').innerHTML = text;
            return true;
          } catch {
            return false;
          }
        };
        return Object.fromEntries(each.map((text) => [text, takes(text)]));
      }, Object.keys(markup));
      assert.deepEqual(taken, markup);

      const told = await tab.evaluate(async (policies) => {
        /** What of the policies a deed breaks. */
        const broken = async (deed) => {
          const told = [];
          const heard = new Promise((end) => {
            onsecuritypolicyviolation = ({ effectiveDirective }) => {
              told.push(effectiveDirective);
              if (told.length === policies) end();
            };
            setTimeout(end, 5_000);
          });
          await Promise.resolve().then(deed).catch(() => {});
          await heard;
          return [...new Set(told)].join();
        };
        // What the driver itself evaluates may make scripts of text, until it has to wait.
        await new Promise((next) => setTimeout(next));
        const put = (name, attributes) =>
          document.body.append(Object.assign(document.createElement(name), attributes));
        const far = 'https://elsewhere.invalid/x';
        return {
          text: await broken(() => new Function('return 1')()),
          timer: await broken(() => setTimeout('globalThis.ran = true', 0)),
          worker: await broken(() => new Worker('sw-off.js')),
          script: await broken(() => put('script', { text: '1' })),
          image: await broken(() => put('img', { src: far })),
          style: await broken(() => put('link', { rel: 'stylesheet', href: far })),
          attribute: await broken(() => document.body.setAttribute('style', 'color: red')),
          frame: await broken(() => put('iframe', { src: far })),
          plain: await broken(() => fetch('http://elsewhere.invalid/')),
        };
      }, policies);
      const script = 'require-trusted-types-for';
      assert.deepEqual(told, {
        text: script,
        timer: script,
        worker: script,
        script,
        image: 'img-src',
        style: 'style-src-elem',
        attribute: 'style-src-attr',
        frame: 'frame-src',
        plain: 'connect-src',
      });
    } finally {
      await context.close();
    }
  });
}

test('a careful host lets the page connect to nothing but itself', async () => {
  const { headers } = await fetch(pageUrl);
  assert.match(headers.get('content-security-policy'), /; connect-src 'self';/);
});
