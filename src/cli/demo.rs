//! `kabla demo`

use std::path::Path;

use super::progress::Bar;
use crate::app::{self, Data, Error};

pub(super) fn run(data: &dyn Data, out: &Path) -> Result<(), Error> {
    let mut bar = Bar::new();
    let made = app::demo(data, out, &mut bar.callback())?;
    drop(bar);
    super::table(&made)
}
