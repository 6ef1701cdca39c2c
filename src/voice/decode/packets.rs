//! All kinds but Opus.

use symphonia::core::codecs::audio::AudioDecoderOptions;
use symphonia::core::errors::Error;
use symphonia::core::formats::probe::Hint;
use symphonia::core::formats::{FormatOptions, TrackType};
use symphonia::core::io::{MediaSource, MediaSourceStream, MediaSourceStreamOptions};
use symphonia::core::meta::MetadataOptions;

use super::file::{Kind, Problem, Sound};
use super::mixer::Mixer;

const RATES: std::ops::RangeInclusive<u32> = 8_000..=192_000;
/// The length a WAV claims when it was written into a pipe, whose end nobody knew.
const UNKNOWN_BYTES: u64 = 0xFFFF_FF00;

pub(super) fn stream(source: impl MediaSource, kind: Kind, mixer: &mut Mixer<'_>) -> Result<Sound, Problem> {
    let broken = |error: Error| match error {
        Error::IoError(error) if error.kind() == std::io::ErrorKind::UnexpectedEof => {
            Problem::Broken("its end is missing".to_owned())
        }
        error => Problem::Broken(error.to_string()),
    };
    let stream = MediaSourceStream::new(Box::new(source), MediaSourceStreamOptions::default());
    let mut format = symphonia::default::get_probe()
        .probe(&Hint::new(), stream, FormatOptions::default(), MetadataOptions::default())
        .map_err(|_| {
            Problem::Broken(format!("it begins like {}, and goes on like nothing known", kind.name()))
        })?;
    let track = format.default_track(TrackType::Audio).ok_or(Problem::Empty)?;
    let (id, promised) = (track.id, track.num_frames);
    let parameters = track.codec_params.as_ref().and_then(|parameters| parameters.audio());
    let parameters =
        parameters.ok_or_else(|| Problem::Broken("it does not say how it is coded".to_owned()))?;
    let stated = parameters.sample_rate.unwrap_or(0);
    if !RATES.contains(&stated) {
        return Err(Problem::Rate(stated));
    }
    let bits = parameters.bits_per_sample;
    let options = AudioDecoderOptions::default().verify(true);
    let mut decoder =
        symphonia::default::get_codecs().make_audio_decoder(parameters, &options).map_err(broken)?;
    let mut interleaved: Vec<f32> = Vec::new();
    let (mut rate, mut channels) = (stated, 1);
    while let Some(packet) = format.next_packet().map_err(broken)? {
        if packet.track_id != id {
            continue;
        }
        let buffer = decoder.decode(&packet).map_err(broken)?;
        let now = (buffer.spec().rate(), buffer.num_planes());
        if mixer.frames > 0 && now != (rate, channels) {
            return Err(Problem::Broken("its rate or channels change on the way".to_owned()));
        }
        (rate, channels) = now;
        if !RATES.contains(&rate) {
            return Err(Problem::Rate(rate));
        }
        buffer.copy_to_vec_interleaved(&mut interleaved);
        mixer.add(rate, channels, &interleaved)?;
    }
    let frame_bytes = u64::from(bits.unwrap_or(8)) / 8 * channels as u64;
    let promised = promised.filter(|frames| frames.saturating_mul(frame_bytes) < UNKNOWN_BYTES);
    if promised.is_some_and(|promised| falls_short(kind, mixer.frames, promised, rate)) {
        return Err(Problem::Broken("its end is missing".to_owned()));
    }
    if decoder.finalize().verify_ok == Some(false) {
        return Err(Problem::Broken("its check sum does not match".to_owned()));
    }
    Ok(Sound { kind, rate, channels, bits, frames: mixer.frames })
}

/// Lossy files state their length roughly: some count the coder's padding, some estimate.
fn falls_short(kind: Kind, frames: u64, promised: u64, rate: u32) -> bool {
    let slack = if kind.is_exact() { 0 } else { u64::from(rate) / 5 + promised / 50 };
    frames + slack < promised
}
