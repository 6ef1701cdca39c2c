//! The `kabla` command.

use std::process::ExitCode;

/// A sheet is made of very many small pieces: with the system's own, a tenth more of its time goes to memory.
#[global_allocator]
static MEMORY: mimalloc::MiMalloc = mimalloc::MiMalloc;

fn main() -> ExitCode {
    kabla::cli::run()
}
