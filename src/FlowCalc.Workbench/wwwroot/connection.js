"use strict";
// When the service cannot be reached for a while, the page says so; when it comes back without memory of this page, the page starts anew from what the browser has kept.
const again = () => location.reload();
document.getElementById("components-reconnect-modal")?.addEventListener("components-reconnect-state-changed", change => {
  const dialog = change.target;
  const state = change.detail.state;
  if (state === "show" && !dialog.open) dialog.showModal();
  else if (state === "hide") dialog.close();
  else if (state === "rejected" || state === "resume-failed") again();
  else if (state === "failed") setInterval(() => fetch("/", { method: "HEAD", cache: "no-store" }).then(again, () => {}), 5_000);
});
document.getElementById("reload")?.addEventListener("click", again);
