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

/** Loads the text of the language that is asked for: by the address, by an earlier choice, by the browser. */
async function loadText() {
  const [folder, ...languages] = named('page-text').split(' ');
  const version = folder.split('/').pop();
  const textOf = async (tag) => {
    const answer = await fetch(new URL(`${folder}/${tag}.txt`, document.baseURI));
    const text = await answer.text();
    // Some hosts answer with a page of their own where there is no such file.
    if (!answer.ok || !text.startsWith(`${version}\n`)) throw new Error(`no text for ${tag}`);
    return text;
  };
  let kept;
  try {
    kept = localStorage.getItem('farend-language');
  } catch {
    // A browser that keeps nothing has kept no choice.
  }
  const asked = [new URLSearchParams(location.search).get('lang'), kept, ...navigator.languages];
  const language =
    asked.map((tag) => tag?.toLowerCase().split('-')[0]).find((tag) => languages.includes(tag)) ?? 'en';
  document.documentElement.lang = language;
  try {
    return { language, text: await textOf(language), textOf };
  } catch {
    return { language: 'en', text: await textOf('en'), missed: language, textOf };
  }
}

/** Lets the style of what isn't seen at first count: it keeps nothing waiting. */
function styleLater() {
  for (const later of document.querySelectorAll('link[media="not all"]')) {
    const count = () => (later.media = 'all');
    if (later.sheet) count();
    else later.addEventListener('load', count);
  }
}

try {
  const program = fetch(address('page-wasm'), { integrity: named('page-sum') });
  // What language.rs and start_script.rs expect.
  const [{ default: start }, text] = await Promise.all([
    import(address('page-code')),
    inWorker ? undefined : loadText(),
  ]);
  globalThis.farend = text;
  if (!inWorker) styleLater();
  await start({ module_or_path: program });
  if (!inWorker) dispatchEvent(new Event('farend-started'));
} catch (fault) {
  if (inWorker) throw fault;
  // Nothing of the page itself runs yet: what it would say is in the document.
  document.querySelector('#loading [role="status"]')?.remove();
  document.getElementById('failed')?.removeAttribute('hidden');
  throw fault;
}
