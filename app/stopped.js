// What happens when the program fails, by a panic or by a trap. Nobody calls it any more, for what it
// holds may be half done; what it had last is put aside; and the page starts again by itself, once. If it
// fails again soon, or the browser keeps no mark, it says so and leaves the rest to the user.

/**
 * Where the tab keeps what happened: when, the yard where the browser hadn't kept it, what was being typed,
 * and whether the user has been told.
 */
const MARK = 'farend-stopped';
/** Milliseconds in which a second failure counts as the first one come back: this project's judgement. */
const SOON = 60_000;

const box = document.getElementById('stopped');
const part = (name) => box.querySelector(`[data-testid="stopped-${name}"]`);
const mark = marked();
let stopped = false;

function marked() {
  try {
    return JSON.parse(sessionStorage.getItem(MARK));
  } catch {
    // A browser that keeps nothing has kept no mark.
    return null;
  }
}

/** False where the browser doesn't keep it. */
function note(happened) {
  try {
    sessionStorage.setItem(MARK, JSON.stringify(happened));
    return true;
  } catch {
    return false;
  }
}

/** The edited yard as the browser keeps it. */
function kept() {
  try {
    return localStorage.getItem('farend-yard');
  } catch {
    return null;
  }
}

/** What stands in the field that has the focus: the program hears of it only when the field is left. */
function beingTyped() {
  const field = document.activeElement;
  return field?.matches('input[type="text"], textarea') && !field.readOnly ? field.value : '';
}

/** Whether the page can be loaded again. */
function isInReach() {
  try {
    return navigator.onLine || Boolean(navigator.serviceWorker.controller);
  } catch {
    // A boxed frame may not even ask for workers.
    return false;
  }
}

function stop() {
  if (stopped) return;
  stopped = true;
  const own = globalThis.farend?.yard;
  const happened = {
    at: Date.now(),
    yard: own && own !== kept() ? own : mark?.yard,
    typed: beingTyped() || mark?.typed,
  };
  const isNoted = note(happened);
  const isSoon = mark !== null && Date.now() - mark.at < SOON;
  box.setAttribute('role', 'main');
  document.body.replaceChildren(box);
  show('stopped', happened);
  if (isNoted && !isSoon && isInReach()) location.reload();
}

/** Shows the message: that the program has `stopped`, or has `restarted`. */
function show(state, happened) {
  const yard = happened.yard ?? globalThis.farend?.yard ?? kept();
  for (const it of box.querySelectorAll('[data-when]')) it.hidden = it.dataset.when !== state;
  part('link').value = location.href;
  part('typed').hidden = !happened.typed;
  part('typed').querySelector('q').textContent = happened.typed ?? '';
  part('unkept').hidden = !happened.yard;
  part('save').hidden = !yard;
  part('save').onclick = () => save(yard);
  box.hidden = false;
  if (state === 'stopped') box.focus();
}

/** Hands the yard over as a file; in a frame, which may keep files back, as text too. */
function save(kept) {
  let text = kept;
  try {
    text = JSON.stringify(JSON.parse(kept).yard, null, 2);
  } catch {
    // What can't be read is handed over as it is.
  }
  const href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  Object.assign(document.createElement('a'), { href, download: 'farend-yard.json' }).click();
  // Some browsers fetch the address long after the click.
  setTimeout(() => URL.revokeObjectURL(href), 60_000);
  part('file').hidden = window === window.top;
  part('file').querySelector('textarea').value = text;
}

/** Whether a callback was refused before anything of the program ran: one that runs, or is gone. */
const isRefusal = ({ message }) => /^closure invoked recursively/.test(message);

/** What a program exports; what the browser calls of it does nothing once a call hasn't come back. */
function guarded(exports) {
  const guard = (call) => (...given) => {
    // As much as the caller looks for.
    if (stopped) return [];
    try {
      return call(...given);
    } catch (fault) {
      if (!isRefusal(fault)) stop();
      throw fault;
    }
  };
  const isCalled = (name) => /closure|^__wbindgen_start$/.test(name);
  const entries = Object.entries(exports);
  return Object.fromEntries(entries.map(([name, it]) => [name, isCalled(name) ? guard(it) : it]));
}

const { instantiateStreaming } = WebAssembly;
WebAssembly.instantiateStreaming = async (...given) => {
  const { module, instance } = await instantiateStreaming.apply(WebAssembly, given);
  // There is nobody any more to whom a part could be handed.
  if (stopped) await new Promise(() => {});
  return { module, instance: { exports: guarded(instance.exports) } };
};

// What else of the program can fail: parts that are handed over, and all of it where a host sends it as
// another type, so that it is instantiated in another way.
for (const kind of ['error', 'unhandledrejection']) {
  addEventListener(kind, ({ error, reason }) => {
    if ((error ?? reason) instanceof WebAssembly.RuntimeError) stop();
  });
}

part('again').onclick = () => location.reload();
part('demo').onclick = () => {
  // What link.rs expects.
  location.hash = 'demo';
  location.reload();
};
part('close').onclick = () => {
  box.hidden = true;
  note({ at: mark.at, told: true });
};

if (mark && !mark.told) show('restarted', mark);
