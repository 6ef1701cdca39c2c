//! What this process has taken so far, with memory as the program has it.

use std::fs;

#[global_allocator]
static MEMORY: mimalloc::MiMalloc = mimalloc::MiMalloc;

/// CPU time of this process so far, where /proc tells it.
pub(crate) fn cpu_ms() -> f64 {
    let stat = fs::read_to_string("/proc/self/stat").unwrap_or_default();
    let fields: Vec<&str> = stat.rsplit(')').next().unwrap_or_default().split_whitespace().collect();
    let ticks = |at: usize| fields.get(at).and_then(|field| field.parse::<f64>().ok()).unwrap_or(0.0);
    // A tick is a hundredth of a second on every Linux that is met today.
    (ticks(11) + ticks(12)) * 10.0
}

/// The most memory it has had, in MB, where /proc tells it.
pub(crate) fn peak_mb() -> u64 {
    let status = fs::read_to_string("/proc/self/status").unwrap_or_default();
    let peak = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    peak.and_then(|kb| kb.split_whitespace().next()?.parse::<u64>().ok()).unwrap_or(0) / 1000
}
