//! `kabla speak`

use std::path::Path;

use super::progress::Bar;
use crate::app::{self, Data, Error, SpeakRequest, Topic};

pub(super) fn run(
    data: &dyn Data,
    case: &Path,
    language: Option<&str>,
    voice: Option<&str>,
    topics: &[Topic],
    out: &Path,
) -> Result<(), Error> {
    let mut bar = Bar::new();
    let made = app::speak(data, SpeakRequest { case, language, voice, topics, out }, &mut bar.callback())?;
    drop(bar);
    super::demo::table(&made);
    Ok(())
}
