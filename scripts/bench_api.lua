-- Another boat with every request, each to be done once; percentiles as one line of JSON at the end.
local number, mark, key = 0, os.getenv("BENCH_MARK"), os.getenv("BENCH_KEY")
local models = { "Tarnholt 36", "Tarnholt 33", "Tarnholt 30", "Morwik 27", "Oxbarrow 32", "Selmarrow 340" }
local sterns = { "reverse", "raked", "plumb" }

function request()
  number = number + 1
  local n = number * 7919 % 100000
  local stern = sterns[n % 3 + 1]
  local rake = stern == "plumb" and 0 or (stern == "reverse" and -1 or 1) * (8 + n % 180 / 10)
  local body = string.format(
    '{"boat":{"model":"%s","year":%d,"loa_mm":%d,"displacement_kg":%d,"hull_material":"frp_solid","stern":"%s"},'
      .. '"transom":{"top_height_mm":%.1f,"rake_deg":%.1f,"width_top_mm":%d,"thickness_mm":%.1f},'
      .. '"main_rudder":{"hung":"inboard"},"methods":{"*":"tape"}}',
    models[n % 6 + 1], 1970 + n % 40, 8000 + n % 4000, 3000 + n % 5000, stern,
    700 + n % 5000 / 10, rake, 1300 + n % 700, 9 + n % 90 / 10)
  return wrk.format("POST", "/v1/enquiries", {
    ["Content-Type"] = "application/json", ["X-API-Key"] = key, ["Idempotency-Key"] = mark .. "-" .. number,
  }, body)
end

function done(summary, latency, requests)
  local errors = summary.errors
  io.write(string.format(
    '{"requests":%d,"seconds":%.3f,"p50":%.1f,"p95":%.1f,"p99":%.1f,"bad":%d}\n',
    summary.requests, summary.duration / 1e6, latency:percentile(50) / 1000, latency:percentile(95) / 1000,
    latency:percentile(99) / 1000, errors.status + errors.connect + errors.read + errors.write + errors.timeout))
end
