//! Ogg Opus (RFC 7845).

use std::io::{ErrorKind, Read, Seek};
use std::panic::{AssertUnwindSafe, catch_unwind};

use ogg::{OggReadError, PacketReader};
use opus_rs::OpusDecoder;

use super::file::{Kind, Problem, Sound};
use super::mixer::Mixer;

/// Opus counts in frames of 48 kHz, whatever was recorded.
const RATE: u32 = 48_000;
/// The most that a packet may last: 120 ms.
const LONGEST: usize = 5760;

fn broken(why: impl Into<String>) -> Problem {
    Problem::Broken(why.into())
}

fn damaged(error: &OggReadError) -> Problem {
    match error {
        OggReadError::ReadError(error) if error.kind() == ErrorKind::UnexpectedEof => {
            broken("its end is missing")
        }
        OggReadError::HashMismatch(..) => broken("its check sum does not match"),
        error => broken(error.to_string()),
    }
}

/// The identification header.
struct Head {
    channels: usize,
    pre_skip: u64,
    gain: f32,
}

impl Head {
    fn read(packet: &[u8]) -> Result<Head, Problem> {
        let [
            b'O',
            b'p',
            b'u',
            b's',
            b'H',
            b'e',
            b'a',
            b'd',
            version,
            channels,
            skip_low,
            skip_high,
            _,
            _,
            _,
            _,
            gain_low,
            gain_high,
            family,
            ..,
        ] = *packet
        else {
            return Err(broken("its Opus header is cut short"));
        };
        if version > 15 {
            return Err(broken("its Opus header is of a version not known yet"));
        }
        if family > 1 || !matches!(channels, 1 | 2) {
            return Err(Problem::Channels(usize::from(channels)));
        }
        let gain_db = f32::from(i16::from_le_bytes([gain_low, gain_high])) / 256.0;
        Ok(Head {
            channels: usize::from(channels),
            pre_skip: u64::from(u16::from_le_bytes([skip_low, skip_high])),
            gain: 10f32.powf(gain_db / 20.0),
        })
    }
}

/// Hands over the samples: without the pre-skip, up to the last granule position, with the output gain.
pub(super) fn stream(source: impl Read + Seek, mixer: &mut Mixer<'_>) -> Result<Sound, Problem> {
    let mut packets = PacketReader::new(source);
    let mut next = || packets.read_packet().map_err(|error| damaged(&error));
    let first = next()?.ok_or(Problem::Empty)?;
    let (head, serial) = (Head::read(&first.data)?, first.stream_serial());
    let tags = next()?.ok_or_else(|| broken("its end is missing"))?;
    if !tags.data.starts_with(b"OpusTags") {
        return Err(broken("it has no Opus comment header"));
    }
    let mut decoder = OpusDecoder::new(RATE as i32, head.channels).map_err(broken)?;
    let mut buffer = vec![0f32; LONGEST * head.channels];
    let (mut decoded, mut ended) = (0u64, false);
    while let Some(packet) = next()? {
        if packet.stream_serial() != serial {
            return Err(broken("it has more than one stream"));
        }
        if ended {
            return Err(broken("it goes on after its end"));
        }
        let length = duration(&packet.data)?;
        let output = buffer.get_mut(..length * head.channels).unwrap_or_default();
        output.fill(0.0);
        decode(&mut decoder, &packet.data, length, output)?;
        output.iter_mut().for_each(|sample| *sample *= head.gain);
        ended = packet.last_in_stream();
        // The last page's position says how much of its packets is meant to be heard.
        let until =
            if ended { packet.absgp_page().min(decoded + length as u64) } else { decoded + length as u64 };
        let from = head.pre_skip.clamp(decoded, decoded + length as u64) - decoded;
        let to = until.max(decoded) - decoded;
        let heard =
            output.get(from as usize * head.channels..to as usize * head.channels).unwrap_or_default();
        mixer.add(RATE, head.channels, heard)?;
        decoded += length as u64;
    }
    if !ended {
        return Err(broken("its end is missing"));
    }
    Ok(Sound { kind: Kind::Opus, rate: RATE, channels: head.channels, bits: None, frames: mixer.frames })
}

/// The decoder is written for sound packets; what fuzzing may still find in it must not end the program.
fn decode(
    decoder: &mut OpusDecoder,
    packet: &[u8],
    length: usize,
    output: &mut [f32],
) -> Result<(), Problem> {
    let decoded = catch_unwind(AssertUnwindSafe(|| decoder.decode(packet, length, output)));
    match decoded {
        Ok(Ok(frames)) if frames == length => Ok(()),
        Ok(Ok(_)) => Err(broken("an Opus packet is shorter than it says")),
        Ok(Err(why)) => Err(broken(why)),
        Err(_) => Err(broken("an Opus packet is damaged")),
    }
}

/// How many frames a packet lasts (RFC 6716, section 3.1).
fn duration(packet: &[u8]) -> Result<usize, Problem> {
    let &[toc, ..] = packet else { return Err(broken("an Opus packet is empty")) };
    let configuration = toc >> 3;
    let each = match configuration {
        0..12 => [480, 960, 1920, 2880].get(usize::from(configuration & 3)),
        12..16 => [480, 960].get(usize::from(configuration & 1)),
        _ => [120, 240, 480, 960].get(usize::from(configuration & 3)),
    };
    let count = match (toc & 3, packet.get(1)) {
        (0, _) => 1,
        (1 | 2, _) => 2,
        (_, Some(count)) => usize::from(count & 63),
        (_, None) => 0,
    };
    let length = each.copied().unwrap_or(0) * count;
    if (1..=LONGEST).contains(&length) {
        Ok(length)
    } else {
        Err(broken("an Opus packet has no possible length"))
    }
}
