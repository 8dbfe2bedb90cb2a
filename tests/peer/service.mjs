import { spawn } from "node:child_process";
import { createServer } from "node:net";
import { setTimeout as wait } from "node:timers/promises";

/**
 * Starts the built service on a free loopback port, does the work with its address, and ends the process whatever happens.
 * @param {string} library Path to FlowCalc.Api.dll.
 * @param {(address: string) => Promise<T>} work
 * @returns {Promise<T>} what the work gives.
 * @template T
 */
export async function withService(library, work) {
  const address = `http://127.0.0.1:${await freePort()}`;
  const service = spawn("dotnet", [library], {
    env: { ...process.env, ASPNETCORE_URLS: address, Startup__Demo: "false", Logging__LogLevel__Default: "Warning" },
    stdio: ["ignore", "inherit", "inherit"],
  });
  // A child that cannot start is reported by an event; without a listener it would be lost.
  let ending = null;
  const ended = new Promise((resolve) => {
    service.once("error", (error) => resolve((ending = error.message)));
    service.once("exit", (code, signal) => resolve((ending = `it ended with ${code ?? signal}`)));
  });
  const stop = () => service.kill("SIGKILL");
  const interrupted = () => { stop(); process.exit(130); };
  process.once("exit", stop);
  process.once("SIGINT", interrupted);
  process.once("SIGTERM", interrupted);
  try {
    await untilReady(address, () => ending);
    return await work(address);
  } finally {
    service.kill("SIGTERM");
    await Promise.race([ended, wait(5_000, null, { ref: false })]);
    stop();
    process.off("exit", stop);
    process.off("SIGINT", interrupted);
    process.off("SIGTERM", interrupted);
  }
}

async function untilReady(address, ending) {
  for (const start = Date.now(); Date.now() - start < 60_000; await wait(100)) {
    if (ending()) throw new Error(`The service did not start: ${ending()}.`);
    // Refused connections are what waiting for a start looks like.
    const answer = await fetch(`${address}/health/ready`).catch(() => null);
    if (answer?.ok) return;
  }
  throw new Error(`The service at ${address} was not ready within 60 s.`);
}

function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}
