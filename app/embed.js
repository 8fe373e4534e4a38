// Puts the page into a dealer's own, where an element with data-farend stands: see
// docs/embedding.md. Every attribute that begins with data-farend- is an option of the page, but for
// the frame's own title and sandbox.

(() => {
  const here = new URL('.', document.currentScript.src);
  const PREFIX = 'data-farend-';
  const OF_THE_FRAME = ['title', 'sandbox'];
  const TITLE = 'What really drives the implement';
  // Tabs that it opens are free of the sandbox, so that what a frame may not do can be done there. A
  // frame of the page's own origin could take it off itself, so it has none.
  const SANDBOX =
    'allow-scripts allow-same-origin allow-downloads allow-modals allow-popups allow-popups-to-escape-sandbox';
  // No more than a page can be: a height that is out of this isn't one.
  const HIGHEST = 100_000;

  const whole = (address) => {
    try {
      return new URL(address, document.baseURI).href;
    } catch {
      // The page says what is wrong with it.
      return address;
    }
  };

  const source = (place) => {
    const address = new URL(place.getAttribute('data-farend') || here, document.baseURI);
    for (const { name, value } of place.attributes) {
      const option = name.startsWith(PREFIX) && name.slice(PREFIX.length);
      if (!option || OF_THE_FRAME.includes(option)) continue;
      address.searchParams.set(option, option === 'yard' ? whole(value) : value);
    }
    // A page from a disk has no origin, and can't be told anything.
    if (location.origin !== 'null') address.searchParams.set('origin', location.origin);
    return address;
  };

  const embed = (place) => {
    const own = (name, otherwise) => place.getAttribute(PREFIX + name) ?? otherwise;
    const address = source(place);
    const frame = document.createElement('iframe');
    frame.title = own('title', TITLE);
    const sandbox = own('sandbox', address.origin === location.origin ? null : SANDBOX);
    if (sandbox !== null) frame.setAttribute('sandbox', sandbox);
    frame.allow = 'clipboard-write';
    Object.assign(frame.style, {
      boxSizing: 'content-box',
      display: 'block',
      width: '100%',
      height: '60rem',
      padding: '0',
      border: '0',
    });
    addEventListener('message', ({ origin, source: sender, data }) => {
      // Without allow-same-origin a frame's own origin is null.
      const hasOrigin = sandbox === null || frame.sandbox.contains('allow-same-origin');
      const expected = hasOrigin ? address.origin : 'null';
      if (origin !== expected || sender !== frame.contentWindow || data?.farend !== 1) return;
      if (data.ready === true) frame.dataset.ready = 'true';
      if (data.height > 0 && data.height < HIGHEST) frame.style.height = `${data.height}px`;
    });
    frame.src = address.href;
    place.replaceChildren(frame);
  };

  const embedAll = () => document.querySelectorAll('[data-farend]').forEach(embed);
  if (document.readyState === 'loading') addEventListener('DOMContentLoaded', embedAll);
  else embedAll();
})();
