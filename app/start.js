// Starts the page. An external file, so that the content security policy can refuse inline scripts.
// The page also starts it as a worker, with the addresses of the program behind a question mark.

const inWorker = typeof document === 'undefined';
const given = new URL(import.meta.url).searchParams;
const named = (name) =>
  inWorker ? given.get(name) : document.querySelector(`meta[name="${name}"]`).content;
// The program lies beside this script.
const address = (name) => new URL(named(name), import.meta.url).href;

// All that the page may make of text: the still parts of its views, which are elements and
// attributes that can neither run nor load anything, and its two workers. No policy makes scripts.
const tags =
  'abbr|article|aside|b|br|button|caption|circle|code|col|colgroup|dd|defs|details|div|dl|dt|em|fieldset|figcaption|figure|footer|g|h[1-6]|header|hr|i|input|label|legend|li|line|main|nav|ol|optgroup|option|output|p|path|pattern|polygon|polyline|rect|section|select|small|span|strong|sub|summary|sup|svg|table|tbody|td|text|tfoot|th|thead|title|tr|tspan|ul';
const attributes =
  '(?:aria|data)-[a-z-]+|class|colspan|cx|cy|d|dx|dy|fill|focusable|for|height|hidden|id|lang|name|patternTransform|patternUnits|points|r|role|rowspan|rx|ry|scope|stroke|stroke-width|tabindex|text-anchor|title|transform|type|value|viewBox|width|x|x1|x2|y|y1|y2';
const stillParts = new RegExp(
  `^(?:[^<>]|<(?:${tags})(?: (?:${attributes})(?:="[^"<>]*")?)* ?/?>|</(?:${tags})>)*$`,
);
if (!inWorker) {
  globalThis.trustedTypes?.createPolicy('default', {
    createHTML: (text) => (stillParts.test(text) ? text : null),
    createScriptURL: (text) =>
      text === 'sw.js' || text.startsWith(`${import.meta.url}?`) ? text : null,
  });
}

try {
  const program = fetch(address('page-wasm'), { integrity: named('page-sum') });
  const { default: start } = await import(address('page-code'));
  await start({ module_or_path: program });
  if (!inWorker) dispatchEvent(new Event('farend-started'));
} catch (fault) {
  if (inWorker) throw fault;
  // Nothing of the page itself runs yet, so the message is made here.
  const message = document.createElement('p');
  message.setAttribute('role', 'alert');
  message.textContent =
    'Farend couldn’t start. Reload the page; if that doesn’t help, use a browser of 2023 or later.';
  document.getElementById('loading')?.replaceChildren(message);
  throw fault;
}
