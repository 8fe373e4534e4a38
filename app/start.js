// Starts the page. An external file, so that the content security policy can refuse inline scripts.

const address = (name) =>
  new URL(document.querySelector(`meta[name="${name}"]`).content, document.baseURI).href;

const { default: start } = await import(address('page-code'));
await start({ module_or_path: address('page-wasm') });
