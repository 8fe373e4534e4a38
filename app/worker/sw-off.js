// Takes the place of sw.js on a host to be rid of it: what it kept is forgotten, and from the next
// visit on every page comes from the host. Pages that are open stay as they are.

addEventListener('install', () => skipWaiting());

addEventListener('activate', (event) => {
  event.waitUntil(off());
});

async function off() {
  const names = await caches.keys();
  const own = names.filter((name) => name.startsWith(`farend ${registration.scope} `));
  await Promise.all(own.map((name) => caches.delete(name)));
  await registration.unregister();
}
