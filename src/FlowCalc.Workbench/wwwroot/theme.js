"use strict";
// The theme is set before anything is painted. Without a choice of one's own the browser's holds.
{
  const kept = localStorage.getItem("flowcalc:theme");
  if (kept === "light" || kept === "dark") document.documentElement.dataset.theme = kept;
}
