//! `kabla speak`

use std::path::Path;

use super::progress::Bar;
use crate::app::{self, Data, Error, Overrides, SpeakRequest, Topic};

pub(super) fn run(
    data: &dyn Data,
    (case, overrides): (&Path, Overrides),
    language: Option<&str>,
    voice: Option<&str>,
    topics: &[Topic],
    out: &Path,
) -> Result<(), Error> {
    let mut bar = Bar::new();
    let request = SpeakRequest { case, overrides, language, voice, topics, out };
    let made = app::speak(data, request, &mut bar.callback())?;
    drop(bar);
    super::demo::table(&made)
}
