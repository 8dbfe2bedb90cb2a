// What only a browser can do for the page: keep the document, read and write files, listen to keys.

const most = 4; // desks of other tabs that are kept
const prefix = "flowcalc:desk:";
const tab = (sessionStorage["flowcalc:tab"] ??= crypto.randomUUID?.() ?? String(Math.random()).slice(2));
let steps = [];

const bytes = text => new TextEncoder().encode(text);

/** The desk of this tab, or the one that was used last, as JSON; empty text for none. */
export function kept() {
  const text = localStorage.getItem(prefix + tab) ?? localStorage.getItem(prefix + localStorage.getItem("flowcalc:last")) ?? "";
  try { steps = JSON.parse(text).steps ?? []; } catch { steps = []; }
  return bytes(text || "null");
}

/** Drops steps at the start, keeps some, and adds what is new. */
export function keep(drop, same, added, at, file, units) {
  steps = steps.slice(drop, drop + same).concat(added);
  for (;;) {
    try {
      localStorage.setItem(prefix + tab, JSON.stringify({ steps, at, file, units, when: Date.now() }));
      localStorage.setItem("flowcalc:last", tab);
      return forget(most);
    } catch (full) {
      // The store is full: other tabs' old desks go first, then this one's oldest steps, but never the text as it is now.
      if (forget(0)) continue;
      if (at === 0) throw full;
      steps = steps.slice(1);
      at--;
    }
  }
}

function forget(keepNewest) {
  const others = Object.keys(localStorage).filter(key => key.startsWith(prefix) && key !== prefix + tab)
    .map(key => ({ key, when: JSON.parse(localStorage.getItem(key)).when ?? 0 })).sort((a, b) => b.when - a.when);
  for (const other of others.slice(keepNewest)) localStorage.removeItem(other.key);
  return others.length > keepNewest;
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
    localStorage.setItem("flowcalc:theme", name);
    document.documentElement.dataset.theme = name;
  }
  return document.documentElement.dataset.theme ?? (matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light");
}

export function focus(id) {
  const field = document.getElementById(id);
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
  // The space bar chooses on the drawing; it must not scroll the page away as well.
  addEventListener("keydown", press => { if (press.key === " " && press.target.matches?.("g[role=button]")) press.preventDefault(); });
}
