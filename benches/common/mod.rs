//! What the benches share: the example farm and what is to be told of it.

use kabla::guidance::{Statement, tell};
use kabla::plan::{Case, make};

fn farm() -> Case {
    let nothing = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
    kabla::case::read("farm.toml", include_str!("../../examples/farm.toml"), &nothing)
        .expect("a right case")
        .0
}

/// Everything told of it.
pub(crate) fn statements() -> Vec<Statement> {
    let case = farm();
    tell(&case, &make(&case).expect("a plan"))
}
