-- Calls as a busy shop sends them: mostly flows, some of everything else, some faults. Folder of bodies in the environment's BODIES.
local folder = os.getenv("BODIES")
local function text(name)
  local file = assert(io.open(folder .. "/" .. name, "rb"))
  local whole = file:read("*a")
  file:close()
  return whole
end

local demo = text("raid-pickup.json")
local broken = demo:gsub('"bore"', '"boer"', 1)
local json = { ["Content-Type"] = "application/json" }
local calls = {}
local function add(times, method, path, body)
  local request = wrk.format(method, path, body and json or {}, body)
  for _ = 1, times do calls[#calls + 1] = request end
end

local turn, threads = 0, {}

function setup(thread) table.insert(threads, thread) end

function init()
  add(60, "POST", "/v1/flow", demo)
  add(10, "POST", "/v1/flow", broken)
  add(6, "POST", "/v1/cut-list", demo)
  add(4, "POST", "/v1/discharge", demo)
  add(4, "POST", "/v1/check?today=2026-11-25", demo)
  add(4, "POST", "/v1/drawing", demo)
  add(4, "POST", "/v1/mount", demo)
  add(4, "POST", "/v1/circuit", demo)
  add(2, "GET", "/v1/examples")
  add(1, "GET", "/v1/agents")
  add(1, "GET", "/")
  statuses = ""
  counts = {}
end

function request()
  turn = (turn * 37 + 11) % #calls
  return calls[turn + 1]
end

function response(status)
  counts[status] = (counts[status] or 0) + 1
  local parts = {}
  for code, count in pairs(counts) do parts[#parts + 1] = code .. "=" .. count end
  statuses = table.concat(parts, " ")
end

function done(summary, latency)
  local total = {}
  for _, thread in ipairs(threads) do
    for code, count in thread:get("statuses"):gmatch("(%d+)=(%d+)") do total[code] = (total[code] or 0) + tonumber(count) end
  end
  local codes = {}
  for code in pairs(total) do codes[#codes + 1] = code end
  table.sort(codes)
  for _, code in ipairs(codes) do io.write(string.format("status %s: %d\n", code, total[code])) end
  io.write(string.format("p50 %.1f ms, p99 %.1f ms, worst %.0f ms\n", latency:percentile(50) / 1e3, latency:percentile(99) / 1e3, latency.max / 1e3))
  local failed = summary.errors
  io.write(string.format("connections: %d refused, %d read, %d write, %d timed out\n", failed.connect, failed.read, failed.write, failed.timeout))
end
