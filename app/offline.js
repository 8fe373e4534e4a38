// Asks the browser to keep the page for times without network, and tells the page what comes of it
// by an event `farend-offline`: kept, refused, or newer, where another version is ready. The page
// answers by `farend-reload`.

// A page in a frame is opened by the page around it; a boxed frame may not even ask for workers.
const isWhole = window === window.top;
const workers = isWhole ? navigator.serviceWorker : undefined;
const script = new URL('sw.js', document.baseURI).href;
let registration;

// Of a copy of this page in a folder further up, the worker may be in charge here as well.
const isKept = () => workers.controller?.scriptURL === script;

const tell = (detail) => dispatchEvent(new CustomEvent('farend-offline', { detail }));

async function keep() {
  if (!workers) return tell('refused');
  look();
  workers.addEventListener('controllerchange', look);
  try {
    registration = await workers.register('sw.js', { updateViaCache: 'none' });
  } catch {
    return isKept() || tell('refused');
  }
  // A page that was opened while the worker was being started isn't in its charge yet.
  registration.active?.postMessage('opened');
  watch();
  registration.addEventListener('updatefound', watch);
}

/** Follows a version that comes in. */
function watch() {
  look();
  const incoming = registration.installing;
  incoming?.addEventListener('statechange', () => {
    look();
    if (incoming.state === 'redundant' && !registration.active) tell('refused');
  });
}

/** Tells what there is. */
function look() {
  if (!isKept()) return;
  tell('kept');
  if (registration?.waiting) tell('newer');
}

function reload() {
  const { waiting } = registration;
  // Another tab may have brought the newer version in.
  if (!waiting) return location.reload();
  workers.addEventListener('controllerchange', () => location.reload(), { once: true });
  waiting.postMessage('take over');
}

if (isWhole) {
  addEventListener('farend-started', keep, { once: true });
  addEventListener('farend-reload', reload);
}
