// Starts the page. An external file, so that the content security policy can refuse inline scripts.
// The page also starts it as a worker, with the addresses of the program behind a question mark.

const inWorker = typeof document === 'undefined';
const given = new URL(import.meta.url).searchParams;
const address = (name) =>
  inWorker
    ? given.get(name)
    : new URL(document.querySelector(`meta[name="${name}"]`).content, document.baseURI).href;

try {
  const { default: start } = await import(address('page-code'));
  await start({ module_or_path: address('page-wasm') });
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
