-- Posts the file that BODY names as JSON, and prints requests a second and the 50th and 99th percentile in microseconds.
local file = assert(io.open(assert(os.getenv("BODY")), "rb"))
wrk.method = "POST"
wrk.body = file:read("*a")
wrk.headers["content-type"] = "application/json"
file:close()

function done(summary, latency)
    local errors = summary.errors
    local failed = errors.connect + errors.read + errors.write + errors.status + errors.timeout
    io.stderr:write(string.format("%.0f %.0f %.0f %d\n", summary.requests / (summary.duration / 1e6),
        latency:percentile(50), latency:percentile(99), failed))
end
