"use strict";
// The theme is set before anything is painted. Without a choice of one's own the browser's holds.
try {
  const kept = localStorage.getItem("flowcalc:theme");
  if (kept === "light" || kept === "dark") document.documentElement.dataset.theme = kept;
} catch {
  // A browser that refuses its store to pages has nothing kept.
}
