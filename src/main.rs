//! The `kabla` command.

use std::process::ExitCode;

fn main() -> ExitCode {
    kabla::cli::run()
}
