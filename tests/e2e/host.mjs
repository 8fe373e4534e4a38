// Another page with Farend in a frame, on a server of its own: a page that a driver makes up counts as
// one of the open net, which may not reach into this machine.

import { createServer } from 'node:http';
import { after, before } from 'node:test';

import { pageUrl, required } from './chromium.mjs';
import { inTab } from './flow.mjs';
import { FarendPage } from './page.mjs';

/** Answers by path: functions that take request and response. */
const answers = new Map();
const server = createServer((request, response) => {
  const answer = answers.get(request.url) ?? (() => response.writeHead(404).end());
  answer(request, response);
});
before(() => new Promise((listens) => server.listen(0, '127.0.0.1', listens)));
after(() => {
  server.close();
  server.closeAllConnections();
});

/** The page's own origin. */
export const own = new URL(pageUrl).origin;

/** The origin of the other server, which is of another site than the page. */
export const other = () => {
  const name = new URL(pageUrl).hostname === 'localhost' ? '127.0.0.1' : 'localhost';
  return `http://${name}:${server.address().port}`;
};

/** Lets the other server answer a path; gives the whole address. */
export function answering(path, answer) {
  answers.set(path, answer);
  return other() + path;
}

/** A page whose body is this. */
const html = (body) => `<!doctype html><html lang="en">
  <head><title>A host</title><link rel="icon" href="data:,"></head>
  <body style="margin: 0">${body}</body></html>`;

/** Lets an origin have a page. */
export async function havePage(tab, origin, path, body) {
  const page = { contentType: 'text/html', body: html(body) };
  if (origin === own) return tab.route(own + path, (route) => route.fulfill(page));
  return answering(path, (_, response) => {
    response.writeHead(200, { 'content-type': page.contentType }).end(page.body);
  });
}

/** Opens a page with such a body, at an origin. */
export async function openHost(tab, origin, body) {
  await havePage(tab, origin, '/host.html', body);
  await tab.goto(`${origin}/host.html`);
}

/** The page as sent by a host that lets it connect to other addresses. */
const open = new URL(`${required('FAREND_SUB_FOLDER')}/`, pageUrl);

/** The address of the framed page with options. */
export const framedAddress = (query) => `${query.yard?.includes(':') ? open : pageUrl}?${new URLSearchParams(query)}`;

const escaped = (text) => text.replaceAll('&', '&amp;').replaceAll('"', '&quot;');

/** The tag of a frame. */
export const frameTag = (address, { sandbox, allow = '' } = {}) => {
  const boxed = sandbox === undefined ? '' : `sandbox="${sandbox}"`;
  return `<iframe src="${escaped(address)}" ${boxed} allow="${allow}" title="Farend"
    style="width: 100%; height: 900px; border: 0"></iframe>`;
};

/** The page in the frame, as soon as its frame is there. */
export async function inFrame(tab, selector = 'iframe') {
  const frame = await tab.waitForSelector(selector);
  return new FarendPage(await frame.contentFrame());
}

/**
 * Runs `body` with a page that has Farend in a frame, of another site or of Farend's own: with Farend,
 * its tab and all that goes wrong.
 */
export function framed(name, { fromOwn = false, sandbox, allow, query = {}, ...options }, body) {
  inTab(name, options, async (tab, faults) => {
    await openHost(tab, fromOwn ? own : other(), frameTag(framedAddress(query), { sandbox, allow }));
    const page = await inFrame(tab);
    await page.heading().waitFor();
    await body(page, tab, faults);
  });
}
