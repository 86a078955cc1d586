// SPDX-License-Identifier: MIT
// What a file is that cannot be read as a score. Private to the library.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace vowelway::io {

struct OtherFormat {
    std::string what;   ///< "this is a MIDI file"
    std::string remedy; ///< how to get a score from it
};

/// By the first bytes, whatever the file is called; nothing for MusicXML, archives, and what is not known.
/// Sources of the signatures: Standard MIDI Files 1.0; MEI 5; ABC notation 2.1; Humdrum; MNX (W3C draft); PDF
/// (ISO 32000); PNG (W3C), JPEG, GIF, TIFF, RIFF, FLAC, Ogg; gzip (RFC 1952); LilyPond's manual; from memory.
std::optional<OtherFormat> other_format(std::string_view bytes);

/// The same for bytes that are no text and no archive: a file that only the program that wrote it can read.
std::optional<OtherFormat> own_format(std::string_view bytes);

} // namespace vowelway::io
