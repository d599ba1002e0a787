// The record as a signed PDF: takes drawn pages, attaches the JSON, puts the photos' own bytes in, signs
// (PAdES B-B), and checks such a file.
#pragma once

#include "record/record.hpp"

#include <functional>
#include <map>

namespace ambit::record {

/// Pages drawn without their pictures: each photo is a placeholder image of its own (distinct) size in
/// pixels.
struct DrawnPages {
    std::string pdf;
    struct Placeholder {
        int width = 0; ///< pixels of the placeholder image; the pair is unique in the file
        int height = 0;
        std::string photoSha256;
        int photoWidth = 0; ///< pixels of the photo that takes its place
        int photoHeight = 0;
        int channels = 3; ///< 1 or 3
    };
    std::vector<Placeholder> placeholders;
};

/// What draws the pages of a content (platform/paper): the pages and, by hash, the JPEG bytes that take the
/// placeholders' places.
struct Drawn {
    DrawnPages pages;
    std::map<std::string, std::string> jpeg;
};
using DrawPages =
    std::function<Result<Drawn>(const Json& content, const airframe::Airframe* airframe,
                                const std::map<std::string, std::string>& photos, const Certificate& signer)>;

/// The signed PDF. `recordJson` is attached as record.json (associated file, source). `photos`: bytes by
/// hash; JPEG only goes in as it is. Dates and ID come from the content: same input, same bytes but for the
/// signature (and what it signs in the attachment).
[[nodiscard]] Result<std::string> signPdf(const DrawnPages& pages, std::string_view recordJson,
                                          const std::map<std::string, std::string>& photos,
                                          const Signer& signer);

/// The PDF with a countersignature more, as an incremental update that leaves every byte before it.
/// `recordJson`: the record as countersignRecord gave it, with the same key; `pdf`: that of the record
/// before, with all its signatures but that last one. Source: RECORD.md, “The PDF”.
[[nodiscard]] Result<std::string> countersignPdf(std::string_view pdf, std::string_view recordJson,
                                                 const Signer& signer);

struct PdfReport {
    RecordReport record;    ///< of the attached JSON, with the countersignatures that stand in the updates
    std::string recordJson; ///< the very bytes of that: record.json, countersigned
    Certificate signer;     ///< of the PDF's first signature; the same as the JSON's first
};

/// Everything must hold: each signature's two byte ranges cover the file from its first byte to the end of
/// what it signed, but exactly its /Contents; the CMS is, byte for byte, the only encoding of its own parts;
/// digest, signature and signing-certificate-v2 hold; what follows the first signature's end is, byte for
/// byte, the updates Ambit makes for the countersignatures in them, and nothing follows the last; the record
/// verifies, and each of its signatures is by the same certificate as the PDF's. `where` names the byte range
/// or the signer that failed.
[[nodiscard]] Result<PdfReport> verifyPdf(std::string_view bytes);

/// The photos that stand in such a file with their own bytes, by hash: those that `content` names.
[[nodiscard]] Result<std::map<std::string, std::string>> photosIn(std::string_view pdf, const Json& content);

} // namespace ambit::record
