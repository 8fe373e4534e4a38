// Starts the page. An external file, so that the content security policy can refuse inline scripts.
// The page also starts it as a worker, with the addresses of the program behind a question mark.

const inWorker = typeof document === 'undefined';
const given = new URL(import.meta.url).searchParams;
const meta = (name) => document.querySelector(`meta[name="${name}"]`).content;
const address = (name) =>
  inWorker ? given.get(name) : new URL(meta(name), document.baseURI).href;

/** Loads the text of the language that is asked for: by the address, by an earlier choice, by the browser. */
async function loadText() {
  const [folder, ...languages] = meta('page-text').split(' ');
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

try {
  // What language.rs and start_script.rs expect.
  const [{ default: start }, text] = await Promise.all([
    import(address('page-code')),
    inWorker ? undefined : loadText(),
  ]);
  globalThis.farend = text;
  await start({ module_or_path: address('page-wasm') });
} catch (fault) {
  if (inWorker) throw fault;
  // Nothing of the page itself runs yet: what it would say is in the document.
  document.querySelector('#loading [role="status"]')?.remove();
  document.getElementById('failed')?.removeAttribute('hidden');
  throw fault;
}
