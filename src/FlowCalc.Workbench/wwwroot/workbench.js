// What only a browser can do for the page: keep the document, read and write files, listen to keys.

const most = 4; // desks of other tabs that are kept
const room = 2_000_000; // characters of history kept with a document; a host has about five million in all
const prefix = "flowcalc:desk:", last = "flowcalc:last", mark = "flowcalc:tab";

// A browser may refuse its stores to a page: then nothing is read, and the first attempt to keep something tells.
const read = (store, key) => { try { return window[store].getItem(key); } catch { return null; } };

const tab = read("sessionStorage", mark) ?? crypto.randomUUID?.() ?? String(Math.random()).slice(2);
let steps = [], at = 0, units = 0;

// A tab that is duplicated takes a copy of the session's store along. What tells tabs apart stands there only while this one is hidden or gone, so that the copy gets a name of its own.
const claim = () => { try { sessionStorage.removeItem(mark); } catch { /* nothing is kept */ } };
const lend = () => {
  try {
    sessionStorage.setItem(mark, tab);
    // Newer tabs may have taken the place of this one's desk.
    if (steps.length && localStorage.getItem(prefix + tab) === null) write();
  } catch { /* told when it was to be kept */ }
};
claim();
addEventListener("pagehide", lend);
addEventListener("pageshow", claim);
addEventListener("visibilitychange", () => document.hidden ? lend() : claim());

const bytes = text => new TextEncoder().encode(text);

/** The desk of this tab, or the one that was used last, as JSON; null for none. */
export function kept() {
  const text = read("localStorage", prefix + tab) ?? read("localStorage", prefix + read("localStorage", last)) ?? "null";
  try { ({ steps = [], at = 0, units = 0 } = JSON.parse(text) ?? {}); } catch { steps = []; }
  return bytes(text);
}

/** Drops steps at the start, keeps some, and adds what is new. */
export function keep(drop, same, added, now, shown) {
  steps = steps.slice(drop, drop + same).concat(added);
  [at, units] = [now, shown];
  write();
}

// The document as it is now goes before its history, and documents of other tabs before the history of any.
function write() {
  let [from, to] = [0, steps.length];
  let size = steps.reduce((sum, step) => sum + step.text.length, 0);
  while (from < at && size > room) size -= steps[from++].text.length;
  while (to > at + 1 && size > room) size -= steps[--to].text.length;
  for (;;) {
    try {
      localStorage.setItem(prefix + tab, JSON.stringify({ steps: steps.slice(from, to), at: at - from, units, when: Date.now() }));
      localStorage.setItem(last, tab);
      for (const other of others().slice(most)) localStorage.removeItem(other.key);
      return;
    } catch (full) {
      if (shorten()) continue;
      if (to - from > 1) {
        [from, to] = [at, at + 1];
        continue;
      }
      const oldest = others().at(-1);
      if (!oldest) throw full;
      localStorage.removeItem(oldest.key);
    }
  }
}

// Desks of other tabs, the newest first.
function others() {
  return Object.keys(localStorage).filter(key => key.startsWith(prefix) && key !== prefix + tab).map(key => {
    try { return { key, desk: JSON.parse(localStorage.getItem(key)) }; } catch { return { key, desk: null }; }
  }).sort((a, b) => (b.desk?.when ?? 0) - (a.desk?.when ?? 0));
}

// Leaves other tabs the document that they hold now, without its history; tells whether that made room.
function shorten() {
  const long = others().filter(other => other.desk?.steps?.length > 1);
  for (const { key, desk } of long) localStorage.setItem(key, JSON.stringify({ ...desk, steps: [desk.steps[desk.at]], at: 0 }));
  return long.length > 0;
}

/** The part of the address behind #, taken off it so that a reload brings back the work and not the link again. */
export function hash() {
  const text = location.hash;
  if (text) history.replaceState(null, "", location.pathname);
  return bytes(text || "#");
}

export const address = () => location.origin + location.pathname;

/** Calls back when somebody opens a link on the page that is open already. */
export function onHash(page) {
  addEventListener("hashchange", () => { if (location.hash) page.invokeMethodAsync("FollowLink"); });
}

/** The day that the browser's clock shows, ISO 8601. */
export function today() {
  const now = new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}

/** Saves a text as a file. */
export function saveText(name, text, type) {
  save(name, new Blob([text], { type }));
}

/** Sends the document to a call of the service and saves the answer as a file. Gives back what went wrong, or null. */
export async function saveAnswer(path, body, name) {
  const answer = await fetch(path, { method: "POST", headers: { "Content-Type": "application/json" }, body });
  if (!answer.ok) {
    const problem = await answer.json().catch(() => ({}));
    return [problem.title ?? answer.statusText, problem.detail].filter(Boolean).join(" ").slice(0, 2000);
  }
  save(name, await answer.blob());
  return null;
}

function save(name, blob) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/** Copies a text; tells whether the browser let it. */
export async function copy(text) {
  try { await navigator.clipboard.writeText(text); return true; } catch { return false; }
}

export function theme(name) {
  if (name) {
    try { localStorage.setItem("flowcalc:theme", name); } catch { /* holds for this visit only */ }
    document.documentElement.dataset.theme = name;
  }
  return document.documentElement.dataset.theme ?? (matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light");
}

/** Goes to the field of a place; where that has none, to the first field within it, or to that of the place around it. */
export async function focus(id, otherwise) {
  let field = null;
  // The page may still be drawing it.
  for (let tries = 0; !field && tries < 30; tries++) {
    field = document.getElementById(id) ?? document.querySelector(`[id^="${CSS.escape(id)}-"]:is(input, select, textarea)`);
    if (!field) await new Promise(requestAnimationFrame);
  }
  for (let around = id; !field && around.includes("-"); around = around.slice(0, around.lastIndexOf("-")))
    field = document.getElementById(around) ?? document.querySelector(`[id^="${CSS.escape(around)}-"]:is(input, select, textarea)`);
  field ??= document.getElementById(otherwise);
  for (let details = field?.closest("details"); details; details = details.parentElement?.closest("details")) details.open = true;
  field?.focus();
  field?.scrollIntoView({ block: "center" });
}

/** Undo and redo by keys wherever no text is being typed; a field undoes its own typing. */
export function listen(page) {
  addEventListener("keydown", press => {
    if (!(press.ctrlKey || press.metaKey) || press.altKey || press.target.matches?.("input, textarea, select")) return;
    const key = press.key.toLowerCase();
    const call = key === "z" && !press.shiftKey ? "UndoByKey" : key === "y" || (key === "z" && press.shiftKey) ? "RedoByKey" : null;
    if (!call) return;
    press.preventDefault();
    page.invokeMethodAsync(call);
  });
  // Keys that choose on the drawing or among tabs must not scroll the page away as well.
  addEventListener("keydown", press => {
    if (press.key === " " && press.target.matches?.("g[role=button]")) press.preventDefault();
    if ((press.key === "Home" || press.key === "End") && press.target.matches?.("[role=tab]")) press.preventDefault();
  });
}
