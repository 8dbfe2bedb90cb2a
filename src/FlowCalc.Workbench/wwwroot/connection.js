"use strict";
// When the service cannot be reached for a while, the page says so; when it comes back without memory of this page, the page starts anew from what the browser has kept.
document.getElementById("components-reconnect-modal")?.addEventListener("components-reconnect-state-changed", change => {
  const dialog = change.target;
  if (change.detail.state === "show") dialog.showModal();
  else if (change.detail.state === "hide") dialog.close();
  else if (change.detail.state === "failed") document.addEventListener("visibilitychange", () => location.reload(), { once: true });
  else if (change.detail.state === "rejected") location.reload();
});
document.getElementById("reload")?.addEventListener("click", () => location.reload());
