// Keeps the page for times without network. One cache holds one version, whole or not at all, and
// a page gets its files from one version. Nothing but the page's own files is touched.

const { version, files } = self.LIST;

// Caches belong to the whole host, on which several copies of this page may stand.
const own = `farend ${registration.scope} `;
const page = registration.scope;
const addresses = new Set(files.map(({ path }) => new URL(path, page).href));
// Files of earlier versions, for pages that still run them. Their names go with their content.
const earlier = /^(?:[^/]*[-_][0-9a-f]{8,}[^/]*\.(?:css|js|wasm)|text\/[0-9a-f]{8,}\/\w+\.txt)$/;

addEventListener('install', (event) => {
  const requests = files.map(
    ({ path, integrity, cache }) => new Request(new URL(path, page), { integrity, cache }),
  );
  event.waitUntil(caches.open(own + version).then((cache) => cache.addAll(requests)));
});

addEventListener('activate', (event) => {
  event.waitUntil(take());
});

addEventListener('message', (event) => {
  // A newer version waits until no page of the older one is open, or until the user says so.
  if (event.data === 'take over') skipWaiting();
  if (event.data === 'opened') event.waitUntil(take(event.source.id));
});

addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET') return;
  const address = addressOf(request);
  if (address) event.respondWith(answer(request, address));
});

/** The address under which an own file is kept; nothing for what isn't ours. */
function addressOf({ url }) {
  const { origin, pathname } = new URL(url);
  const address = origin + pathname;
  if (address === `${page}index.html`) return page;
  const isEarlier = address.startsWith(page) && earlier.test(address.slice(page.length));
  return addresses.has(address) || isEarlier ? address : null;
}

async function answer(request, address) {
  const found = await kept(address);
  if (!found) return fetch(request);
  // An answer tells its own address, which a module or a worker would take for its own.
  return found.url === request.url.split('#')[0] ? found : new Response(found.body, found);
}

async function kept(address) {
  const options = { ignoreVary: true };
  const cache = await caches.open(own + version);
  const found = await cache.match(address, options);
  if (found || addresses.has(address)) return found;
  for (const name of await others()) {
    const older = await (await caches.open(name)).match(address, options);
    if (older) return older;
  }
}

const others = async () =>
  (await caches.keys()).filter((name) => name.startsWith(own) && name !== own + version);

/** Takes charge of all pages, and forgets other versions where none is on its way and no page but a
    new one is open. */
async function take(newcomer) {
  await clients.claim();
  const names = await others();
  if (!names.length || registration.installing || registration.waiting) return;
  const open = await clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (open.some(({ id, url }) => id !== newcomer && url.startsWith(page))) return;
  await Promise.all(names.map((name) => caches.delete(name)));
}
