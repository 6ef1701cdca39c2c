//! The texts that a pack must have, by their ids.
//!
//! Steps, cautions, tables and quantities declare the ids of their messages themselves; here stand
//! those of labels and of the parts that dates, spans and measures are told by.

use crate::catalogue::catalogue;
use crate::guidance::{Column, Measure, Subject};
use crate::plan::{AmountRow, DateSpan, Quantity};

/// Declares the labels in groups, each with the most letters that its labels may have.
macro_rules! labels {
    ($($most:expr => { $($Label:ident = $id:literal;)+ })+) => {
        catalogue! {
            /// A wording that belongs to no statement: a heading, a note or the name of something.
            pub enum Label: LabelEntry {
                /// The most letters that fit where it stands; any number where there is room.
                most_letters: Option<usize>,
            }
            $($(#[doc = concat!("The message `", $id, "`.")] $Label = $id { most_letters: $most };)+)+
        }
    };
}

labels! {
    // Of sheets.
    Some(60) => {
        SheetTitle = "sheet-title";
        SheetFor = "sheet-for";
        SheetPlace = "sheet-place";
        SheetRains = "sheet-rains";
        SheetHarvest = "sheet-harvest";
        SheetAmounts = "sheet-amounts";
        SheetSteps = "sheet-steps";
        SheetCautions = "sheet-cautions";
        SheetWhen = "sheet-when";
        SheetPage = "sheet-page";
        SheetGroup = "sheet-group";
        SheetTogether = "sheet-together";
        SheetConsequences = "sheet-consequences";
        SheetTip = "sheet-tip";
        StepDone = "step-done";
        StepNow = "step-now";
        StepNext = "step-next";
    }
    None => {
        Colon = "colon";
        Semicolon = "semicolon";
        SheetMade = "sheet-made";
        StatusDraft = "status-draft";
        StatusRead = "status-read";
        StatusApproved = "status-approved";
        CalendarTitle = "calendar-title";
        GuideTitle = "guide-title";
        GuideShow = "guide-show";
        GuideAsk = "guide-ask";
        CardFold = "card-fold";
        RecordTitle = "record-title";
        RecordHow = "record-how";
        RecordPlanned = "record-planned";
        RecordDone = "record-done";
        RecordHealthy = "record-healthy";
        RecordThrownAway = "record-thrown-away";
        RecordSprouted = "record-sprouted";
        RecordRemark = "record-remark";
        RecordStored = "record-stored";
        BookletIndex = "booklet-index";
    }
    // Of cue sheets and voices.
    Some(60) => {
        CueTitle = "cue-title";
        CueLanguage = "cue-language";
        CueVoice = "cue-voice";
        CueRights = "cue-rights";
        CueStatus = "cue-status";
        CueLength = "cue-length";
        CueLoudness = "cue-loudness";
        CueTruePeak = "cue-true-peak";
        CueFrom = "cue-from";
        CueTo = "cue-to";
        CueWords = "cue-words";
        CueClip = "cue-clip";
        CueActiveLevel = "cue-active-level";
        CueChapter = "cue-chapter";
        CueTalk = "cue-talk";
    }
    None => {
        VoiceStandIn = "voice-stand-in";
        VoiceDraft = "voice-draft";
        VoiceApproved = "voice-approved";
        VoiceStandInRemark = "voice-stand-in-remark";
    }
    // Of drawings.
    None => {
        SizeCm = "size-cm";
        SizeM = "size-m";
        DrawingSeason = "drawing-season";
        DrawingSeasonAlt = "drawing-season-alt";
        SeasonStore = "season-store";
        SeasonBed = "season-bed";
        SeasonField = "season-field";
        SeasonOnHarvest = "season-on-harvest";
        SeasonOnSprout = "season-on-sprout";
        SeasonOnRains = "season-on-rains";
        SeasonOnFood = "season-on-food";
        DrawingStore = "drawing-store";
        DrawingStoreAlt = "drawing-store-alt";
        DrawingLayers = "drawing-layers";
        DrawingLayersAlt = "drawing-layers-alt";
        DrawingBed = "drawing-bed";
        DrawingBedAlt = "drawing-bed-alt";
        DrawingRows = "drawing-rows";
        DrawingRowsAlt = "drawing-rows-alt";
    }
    // Of recording scripts.
    None => {
        ScriptTitle = "script-title";
        ScriptNewVoice = "script-new-voice";
        ScriptLines = "script-lines";
        ScriptTime = "script-time";
        ScriptTimeMeasured = "script-time-measured";
        ScriptMinutes = "script-minutes";
        ScriptReady = "script-ready";
        ScriptHow = "script-how";
        ScriptHowRoom = "script-how-room";
        ScriptHowDistance = "script-how-distance";
        ScriptHowTone = "script-how-tone";
        ScriptHowPause = "script-how-pause";
        ScriptHowOrder = "script-how-order";
        ScriptHowSlip = "script-how-slip";
        ScriptHowGrey = "script-how-grey";
        ScriptHowBrackets = "script-how-brackets";
        ScriptHowMedial = "script-how-medial";
        ScriptHowFinal = "script-how-final";
        ScriptMedial = "script-medial";
        ScriptFinal = "script-final";
        ScriptPart = "script-part";
        ScriptPartLines = "script-part-lines";
        ScriptRest = "script-rest";
        ScriptOpening = "script-opening";
        ScriptClosing = "script-closing";
        ScriptSentences = "script-sentences";
        ScriptParts = "script-parts";
        ScriptNumbers = "script-numbers";
        ScriptDates = "script-dates";
        ScriptMonths = "script-months";
        ScriptUnits = "script-units";
        ScriptUnlocks = "script-unlocks";
        ScriptComplete = "script-complete";
        ScriptStale = "script-stale";
        ScriptOtherEnding = "script-other-ending";
        ScriptRecorded = "script-recorded";
        ScriptUnsaid = "script-unsaid";
        ScriptNothing = "script-nothing";
    }
    // Of recordings that are checked.
    None => {
        ClipsTitle = "clips-title";
        ClipsIntro = "clips-intro";
        ClipsAgain = "clips-again";
        ClipsUsable = "clips-usable";
        ClipsGood = "clips-good";
        ClipsUnused = "clips-unused";
        ClipsMissing = "clips-missing";
        ClipsPicture = "clips-picture";
        ClipsLength = "clips-length";
        ClipsLevel = "clips-level";
        ClipsNoise = "clips-noise";
        ClipsHum = "clips-hum";
        ClipsPace = "clips-pace";
        ClipClipped = "clip-clipped";
        ClipCutStart = "clip-cut-start";
        ClipCutEnd = "clip-cut-end";
        ClipNoise = "clip-noise";
        ClipHum = "clip-hum";
        ClipRoom = "clip-room";
        ClipQuiet = "clip-quiet";
        ClipLoud = "clip-loud";
        ClipFast = "clip-fast";
        ClipSlow = "clip-slow";
        ClipOffset = "clip-offset";
        ClipBroken = "clip-broken";
        ClipStale = "clip-stale";
        ClipUnused = "clip-unused";
    }
    // Of radio segments.
    None => {
        SegmentTitle = "segment-title";
        SegmentSeason = "segment-season";
        SegmentWeek = "segment-week";
        SegmentTopics = "segment-topics";
        SegmentNothing = "segment-nothing";
        SegmentDue = "segment-due";
        SegmentPast = "segment-past";
        SegmentSoon = "segment-soon";
        SegmentOpening = "segment-opening";
        SegmentClosing = "segment-closing";
        SegmentBed = "segment-bed";
        SegmentBedValue = "segment-bed-value";
        SegmentSaid = "segment-said";
        SegmentReadBefore = "segment-read-before";
        SegmentReadAfter = "segment-read-after";
        SegmentIntro = "segment-intro";
        SegmentOutro = "segment-outro";
        SegmentReadingTime = "segment-reading-time";
        SegmentReadLive = "segment-read-live";
        SegmentPauses = "segment-pauses";
        SegmentNoSound = "segment-no-sound";
        SegmentNoVoice = "segment-no-voice";
        SegmentLeftOut = "segment-left-out";
        SegmentMissing = "segment-missing";
    }
}

catalogue! {
    /// A message through which days, spans, events and measures are told.
    pub(crate) enum Part: PartEntry {
        /// Whether it is spoken as well as written.
        is_spoken: bool,
        /// The most letters that fit where it stands; any number where there is room.
        most_letters: Option<usize>,
    }
    /// A month's name.
    Month = "month" { is_spoken: true, most_letters: None };
    /// A day.
    Date = "date" { is_spoken: true, most_letters: Some(40) };
    /// A week of a month.
    Week = "week" { is_spoken: true, most_letters: None };
    /// From a day to another.
    Span = "span" { is_spoken: true, most_letters: Some(40) };
    /// A span of two days.
    SpanTwoDays = "span-two-days" { is_spoken: true, most_letters: Some(40) };
    /// A span of one day.
    SpanDay = "span-day" { is_spoken: true, most_letters: Some(40) };
    /// Kilograms.
    UnitKilogram = "unit-kilogram" { is_spoken: true, most_letters: Some(40) };
    /// Litres.
    UnitLitre = "unit-litre" { is_spoken: true, most_letters: Some(40) };
    /// Metres.
    UnitMetre = "unit-metre" { is_spoken: true, most_letters: Some(40) };
    /// Centimetres.
    UnitCentimetre = "unit-centimetre" { is_spoken: true, most_letters: Some(40) };
    /// Hands.
    UnitHand = "unit-hand" { is_spoken: true, most_letters: Some(40) };
    /// Thumb joints.
    UnitThumbJoint = "unit-thumb-joint" { is_spoken: true, most_letters: Some(40) };
    /// Buckets.
    UnitBucket = "unit-bucket" { is_spoken: true, most_letters: Some(40) };
    /// Jerrycans.
    UnitJerrycan = "unit-jerrycan" { is_spoken: true, most_letters: Some(40) };
    /// Bundles.
    UnitBundle = "unit-bundle" { is_spoken: true, most_letters: Some(40) };
    /// A span without years.
    SpanBrief = "span-brief" { is_spoken: false, most_letters: Some(40) };
    /// A day without its year.
    DateShort = "date-short" { is_spoken: false, most_letters: Some(40) };
    /// A month's name, shortened.
    MonthShort = "month-short" { is_spoken: false, most_letters: None };
    /// A month and its year.
    MonthYear = "month-year" { is_spoken: false, most_letters: None };
    /// A weekday's name.
    Weekday = "weekday" { is_spoken: false, most_letters: None };
    /// Days before an event.
    EventBefore = "event-before" { is_spoken: false, most_letters: None };
    /// On the day of an event.
    EventOn = "event-on" { is_spoken: false, most_letters: None };
    /// Days after an event.
    EventAfter = "event-after" { is_spoken: false, most_letters: None };
}

catalogue! {
    /// A further text of a subject: an attribute of its message.
    pub(crate) enum Attribute: AttributeEntry {
        /// The most letters that fit where it stands; any number where there is room.
        most_letters: Option<usize>,
    }
    /// The sentences below the title.
    Text = "text" { most_letters: Some(700) };
    /// The same in a few words.
    Short = "short" { most_letters: None };
    /// The picture in words.
    Alt = "alt" { most_letters: Some(150) };
    /// What a meeting is shown.
    Show = "show" { most_letters: None };
    /// What a meeting is asked.
    Ask = "ask" { most_letters: None };
    /// The text message for phones.
    Sms = "sms" { most_letters: Some(160) };
}

impl Part {
    /// The part by which a span is told.
    pub(crate) fn of_span(span: &DateSpan) -> Part {
        match (span.to - span.from).num_days() {
            0 => Part::SpanDay,
            1 => Part::SpanTwoDays,
            _ => Part::Span,
        }
    }
}

impl Attribute {
    /// Whether it is told to farmers at one length or another.
    pub(crate) fn is_told(self) -> bool {
        matches!(self, Attribute::Text | Attribute::Short | Attribute::Sms)
    }

    /// Whether the message of a subject has it.
    pub(crate) fn is_of(self, subject: Subject) -> bool {
        match (self, subject) {
            (_, Subject::Opening | Subject::Question(_)) => false,
            (_, Subject::Step(_)) => true,
            (Attribute::Text | Attribute::Short | Attribute::Alt, Subject::Caution(_)) => true,
            (Attribute::Sms, Subject::Caution(caution)) => caution.sms_with().is_some(),
            (Attribute::Text, Subject::Table(_)) => true,
            (Attribute::Alt, Subject::Table(table)) => table.is_pictured(),
            (Attribute::Sms, Subject::Closing) => true,
            _ => false,
        }
    }
}

/// The id of a message that every pack has.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct MessageId(&'static str);

impl MessageId {
    /// The id as it stands in packs.
    pub fn name(self) -> &'static str {
        self.0
    }

    /// What holds the value of an amount's row, where the bare number does not do.
    pub fn value_of(row: AmountRow) -> Option<MessageId> {
        row.message.map(|(id, _)| MessageId(id))
    }

    /// What holds a column's value, where the bare value does not do.
    pub fn cell_of(column: Column) -> Option<MessageId> {
        column.message().map(MessageId)
    }

    /// All but those of subjects: labels, what derives from other catalogues, and the parts.
    pub(super) fn written() -> impl Iterator<Item = MessageId> {
        let rows = Quantity::ALL.into_iter().filter_map(|quantity| quantity.in_messages()?.row);
        let rows = rows.flat_map(|row| [Some(row.into()), MessageId::value_of(row)]);
        let columns =
            Column::ALL.into_iter().flat_map(|column| [Some(column.into()), MessageId::cell_of(column)]);
        let labels = Label::ALL.into_iter().map(MessageId::from);
        let parts = Part::ALL.into_iter().map(MessageId::from);
        labels.chain(rows.chain(columns).flatten()).chain(parts)
    }

    /// The parts that are spoken as well.
    pub(super) fn spoken() -> impl Iterator<Item = MessageId> {
        Part::ALL.into_iter().filter(|part| part.is_spoken()).map(MessageId::from)
    }
}

impl From<Label> for MessageId {
    fn from(label: Label) -> MessageId {
        MessageId(label.name())
    }
}

impl From<Part> for MessageId {
    fn from(part: Part) -> MessageId {
        MessageId(part.name())
    }
}

impl From<Subject> for MessageId {
    fn from(subject: Subject) -> MessageId {
        MessageId(subject.name())
    }
}

impl From<Column> for MessageId {
    fn from(column: Column) -> MessageId {
        MessageId(column.name())
    }
}

impl From<AmountRow> for MessageId {
    fn from(row: AmountRow) -> MessageId {
        MessageId(row.label)
    }
}

impl From<Measure> for MessageId {
    fn from(measure: Measure) -> MessageId {
        MessageId(measure.message())
    }
}

/// How long a text may be, in letters, so that it fits where it stands; by its id, such as `harvest.sms`.
pub(super) fn most_letters(id: &str) -> Option<usize> {
    const OF_COLUMN: usize = 40;
    const OF_AMOUNT: usize = 60;
    if let Some((_, attribute)) = id.split_once('.') {
        return Attribute::from_name(attribute)?.most_letters();
    }
    let is_row = |quantity: Quantity| {
        quantity.in_messages().and_then(|value| value.row).is_some_and(|row| row.label == id)
    };
    Label::from_name(id)
        .and_then(Label::most_letters)
        .or_else(|| Part::from_name(id)?.most_letters())
        .or_else(|| Column::from_name(id).map(|_| OF_COLUMN))
        .or_else(|| Quantity::ALL.into_iter().any(is_row).then_some(OF_AMOUNT))
}
