//! Messages for systems that stitch clips themselves: a VoiceXML 2.1 document
//! and an extended M3U playlist.

/// A piece of a stitched message.
#[derive(Debug, Clone, PartialEq)]
pub struct Stitch {
    /// Its file, relative to the document, with `/` between folders.
    pub file: String,
    /// How long it is, in milliseconds.
    pub millis: u64,
    /// Its words; `None` for a pause.
    pub words: Option<String>,
}

/// What a document says of its message.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct StitchOptions {
    /// The form's name: a name in XML, such as `fill-container`.
    pub id: String,
    /// The language's tag.
    pub language: String,
    /// The message's title.
    pub title: String,
    /// What whoever opens the document must know; none where empty.
    pub remark: String,
}

/// A VoiceXML document that says the message once and hangs up. Where a file
/// is missing, the platform's own voice says the words, or keeps the pause.
pub fn voicexml(stitches: &[Stitch], options: &StitchOptions) -> String {
    let StitchOptions { id, language, title, remark } = options;
    let mut lines = vec![
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>".to_owned(),
        format!(
            "<vxml version=\"2.1\" xmlns=\"http://www.w3.org/2001/vxml\" xml:lang=\"{}\">",
            xml(language)
        ),
        format!("  <meta name=\"title\" content=\"{}\"/>", xml(title)),
    ];
    if !remark.is_empty() {
        lines.push(format!("  <meta name=\"description\" content=\"{}\"/>", xml(remark)));
    }
    lines.push(format!("  <form id=\"{}\">\n    <block>\n      <prompt>", xml(id)));
    lines.extend(stitches.iter().map(|stitch| {
        let inside = match &stitch.words {
            Some(words) => xml(words),
            None => format!("<break time=\"{}ms\"/>", stitch.millis),
        };
        format!("        <audio src=\"{}\">{inside}</audio>", uri(&stitch.file))
    }));
    lines.push("      </prompt>\n      <exit/>\n    </block>\n  </form>\n</vxml>\n".to_owned());
    lines.join("\n")
}

/// A playlist in UTF-8.
pub fn playlist(stitches: &[Stitch], title: &str) -> String {
    let mut lines = vec!["#EXTM3U".to_owned(), format!("#PLAYLIST:{}", one_line(title))];
    for Stitch { file, millis, words } in stitches {
        let words = words.as_deref().map(one_line).unwrap_or_default();
        lines.push(format!("#EXTINF:{}.{:03},{words}", millis / 1000, millis % 1000));
        lines.push(file.clone());
    }
    lines.join("\n") + "\n"
}

fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A text inside an element or an attribute; characters that XML does not know are left out.
fn xml(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            '\n' | '\t' | '\r' => safe.push(' '),
            '\u{0}'..='\u{1f}' | '\u{fffe}' | '\u{ffff}' => {}
            c => safe.push(c),
        }
    }
    safe
}

/// A file's name in a reference: what is no letter, digit or plain sign is written as its bytes.
fn uri(file: &str) -> String {
    let plain = |byte: u8| byte.is_ascii_alphanumeric() || b"-._~/".contains(&byte);
    let write = |byte: u8| if plain(byte) { char::from(byte).to_string() } else { format!("%{byte:02X}") };
    file.bytes().map(write).collect()
}
