#include "base/canonical.hpp"
#include "record/cms.hpp"
#include "record/der.hpp"
#include "record/pdf.hpp"
#include "record/pdf_update.hpp"
#include "record/qpdf.hpp"

#include <charconv>
#include <nlohmann/json.hpp>
#include <openssl/evp.h>
#include <stdexcept>

namespace ambit::record {

namespace {

using Object = QPDFObjectHandle;

constexpr std::size_t largestFile = std::size_t{512} << 20;
constexpr std::size_t largestRecord = ParseLimits{}.bytes;

tl::unexpected<Error> refuse(Sentence what, std::string where = {}) {
    return fail(ErrorCode::signature, std::move(what), std::move(where));
}

std::string rangeText(std::size_t from, std::size_t to) {
    return "bytes " + std::to_string(from) + " to " + std::to_string(to);
}

tl::unexpected<Error> notCovered(std::size_t from, std::size_t to) {
    return refuse(say("The signature doesn't cover the file from its first byte to its last: something was "
                      "added or cut off."),
                  rangeText(from, to));
}

// --- by bytes
// -----------------------------------------------------------------------------------------------

/// Three numbers of a /ByteRange as Ambit writes it: the gap, and how much is signed after it. Zeros where
/// it isn't written so.
struct Range {
    pdf::Gap gap;
    std::size_t rest = 0;
};

Range rangeAt(std::string_view text) {
    const std::string_view start = "[ 0 ";
    Range range;
    if (!text.starts_with(start)) return range;
    const char* at = text.data() + start.size();
    const char* end = text.data() + text.size();
    for (std::size_t* number : {&range.gap.begin, &range.gap.end, &range.rest}) {
        at = std::from_chars(at, end, *number).ptr;
        if (at != end) ++at;
    }
    return range;
}

/// What the first signature covers, from the file's first byte on. What it says of itself is believed here
/// and checked later; where it says what can't be, it is held against the whole file.
std::string_view firstRevision(std::string_view file) {
    const std::size_t key = file.find(pdf::byteRangeKey);
    if (key == std::string_view::npos) return file;
    const Range range = rangeAt(file.substr(key + pdf::byteRangeKey.size()));
    const bool within = range.gap.end <= file.size() && range.rest <= file.size() - range.gap.end;
    return within && range.rest > 0 ? file.substr(0, range.gap.end + range.rest) : file;
}

/// The gap that the one /ByteRange names, if it is written as Ambit writes it and leaves out nothing but the
/// text of /Contents.
Result<pdf::Gap> gapOf(std::string_view file) {
    const std::size_t key = pdf::onlyPlaceOf(pdf::byteRangeKey, file);
    if (key == std::string_view::npos)
        return refuse(say("The file doesn't bear exactly one signature of Ambit's form."),
                      rangeText(0, file.size()));
    const std::string_view range = file.substr(key + pdf::byteRangeKey.size());
    const pdf::Gap gap = rangeAt(range).gap;
    const bool inside = gap.begin >= pdf::contentsKey.size() && gap.begin < gap.end && gap.end < file.size();
    if (!inside || !range.starts_with(pdf::byteRange(file.size(), gap)))
        return notCovered(gap.end, file.size());
    const std::string_view upTo = file.substr(0, gap.begin + 1);
    if (!upTo.ends_with(pdf::contentsKey) || file[gap.end - 1] != '>')
        return refuse(say("The signature leaves out more than itself."), rangeText(gap.begin, gap.end));
    return gap;
}

/// The bytes between < and >, lower-case hex only.
Result<std::string> contentsOf(std::string_view file, pdf::Gap gap) {
    const std::string_view hex = file.substr(gap.begin + 1, gap.end - gap.begin - 2);
    const auto value = [](char c) {
        return c >= '0' && c <= '9' ? c - '0' : c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
    };
    std::string bytes;
    for (std::size_t i = 0; i + 1 < hex.size(); i += 2) {
        const int high = value(hex[i]);
        const int low = value(hex[i + 1]);
        if (high < 0 || low < 0) break;
        bytes += static_cast<char>(high * 16 + low);
    }
    if (bytes.size() * 2 != hex.size())
        return refuse(say("The signature is not written in lower-case hex."), rangeText(gap.begin, gap.end));
    return bytes;
}

Result<std::string> digestOf(std::string_view file, pdf::Gap gap) {
    const std::unique_ptr<EVP_MD_CTX, decltype(&EVP_MD_CTX_free)> context(EVP_MD_CTX_new(), EVP_MD_CTX_free);
    std::string digest(32, '\0');
    const auto first = pdf::before(file, gap);
    const auto second = pdf::after(file, gap);
    const bool done =
        context && EVP_DigestInit_ex(context.get(), EVP_sha256(), nullptr) == 1 &&
        EVP_DigestUpdate(context.get(), first.data(), first.size()) == 1 &&
        EVP_DigestUpdate(context.get(), second.data(), second.size()) == 1 &&
        EVP_DigestFinal_ex(context.get(), reinterpret_cast<unsigned char*>(digest.data()), nullptr) == 1;
    if (!done) return refuse(say("The file's digest could not be computed."));
    return digest;
}

struct Signature {
    Certificate certificate;
    std::string contents; ///< CMS and padding
};

/// The signature in the gap over all the rest of `file`.
Result<Signature> checkSignature(std::string_view file, pdf::Gap gap) {
    auto contents = contentsOf(file, gap);
    if (!contents) return tl::unexpected(contents.error());
    const std::size_t size = der::sizeOfFirst(*contents);
    if (size == 0 || contents->find_first_not_of('\0', size) != std::string::npos)
        return refuse(say("The signature breaks off, or its padding isn't empty."),
                      rangeText(gap.begin, gap.end));
    const auto digest = digestOf(file, gap);
    if (!digest) return tl::unexpected(digest.error());
    auto certificate = verifyCms(std::string_view(*contents).substr(0, size), *digest);
    if (!certificate) {
        return refuse(certificate.error().what, rangeText(0, gap.begin) + " and " + std::to_string(gap.end) +
                                                    " to " + std::to_string(file.size()));
    }
    if (contents->size() != longestCms(*certificate))
        return refuse(say("The signature's padding is not as long as Ambit makes it."),
                      rangeText(gap.begin, gap.end));
    return Signature{std::move(*certificate), std::move(*contents)};
}

// --- by objects
// ----------------------------------------------------------------------------------------------

/// Is the field the very signature that was checked?
bool bears(Object field, const Signature& signature) {
    Object value = field.getKey("/V");
    return field.getKey("/FT").isNameAndEquals("/Sig") && !field.hasKey("/Kids") &&
           value.isDictionaryOfType("/Sig") && value.getKey("/Filter").isNameAndEquals(pdf::filter) &&
           value.getKey("/SubFilter").isNameAndEquals(pdf::subFilter) &&
           value.getKey("/Contents").isString() &&
           value.getKey("/Contents").getStringValue() == signature.contents;
}

/// A reader of the PDF must find the very signatures that were checked, and no others.
Result<void> checkFields(QPDF& pdf, const std::vector<Signature>& checked) {
    Object fields = pdf.getRoot().getKey("/AcroForm").getKey("/Fields");
    if (!fields.isArray() || static_cast<std::size_t>(fields.getArrayNItems()) != checked.size())
        return refuse(say("The file doesn't have exactly one field for each signature."), "/AcroForm");
    for (std::size_t i = 0; i < checked.size(); ++i)
        if (!bears(fields.getArrayItem(static_cast<int>(i)), checked[i]))
            return refuse(say("The file's field is not the signature that was checked."), "/AcroForm");
    std::size_t signatures = 0;
    for (Object& object : pdf.getAllObjects())
        if (object.isDictionary() && (object.isDictionaryOfType("/Sig") || object.hasKey("/ByteRange")))
            ++signatures;
    if (signatures != checked.size())
        return refuse(say("The file holds more signatures than its fields show."), "/AcroForm");
    for (const auto& [object, entry] : pdf.getXRefTable())
        if (entry.getType() == 2)
            return refuse(say("The file hides objects in streams, which Ambit never does."),
                          "cross-reference table");
    return {};
}

/// Takes what a stream unpacks to, up to a size: a small file can unpack to a huge one.
class Bounded : public Pipeline {
public:
    Bounded() : Pipeline("record", nullptr) {}
    void write(unsigned char const* data, std::size_t size) override {
        if (text.size() + size > largestRecord) throw std::length_error("the attached record is too large");
        text.append(reinterpret_cast<const char*>(data), size);
    }
    void finish() override {}
    std::string text;
};

Result<std::string> attachedRecord(QPDF& pdf) {
    const auto files = QPDFEmbeddedFileDocumentHelper(pdf).getEmbeddedFiles();
    Object associated = pdf.getRoot().getKey("/AF");
    const bool one = files.size() == 1 && files.begin()->first == pdf::attachment && associated.isArray() &&
                     associated.getArrayNItems() == 1;
    if (!one)
        return refuse(say("The file doesn't carry exactly one attachment, record.json."), "/EmbeddedFiles");
    Object file = files.begin()->second->getObjectHandle();
    Object streams = file.getKey("/EF");
    Object stream = streams.getKey("/F");
    const bool same = associated.getArrayItem(0).getObjGen() == file.getObjGen() && stream.isStream() &&
                      streams.getKey("/UF").getObjGen() == stream.getObjGen();
    if (!same)
        return refuse(say("The attachment is not one and the same for every reader."), "/EmbeddedFiles");
    Bounded record;
    if (!stream.pipeStreamData(&record, 0, qpdf_dl_generalized, true))
        return refuse(say("The attached record can't be unpacked."), "record.json");
    return std::move(record.text);
}

/// The attached record's bytes, where a reader of the PDF finds in it what was checked by bytes.
Result<std::string> checkObjects(std::string_view bytes, const std::vector<Signature>& signatures) {
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.setAttemptRecovery(false);
    pdf.processMemoryFile("record.pdf", bytes.data(), bytes.size());
    if (auto good = checkFields(pdf, signatures); !good) return tl::unexpected(good.error());
    auto json = attachedRecord(pdf);
    if (!json) return json;
    if (pdf.anyWarnings())
        return refuse(say("The file is not a sound PDF: readers could see different things."), "record.pdf");
    return json;
}

// --- revision by revision
// --------------------------------------------------------------------------------------

/// What holds so far.
struct Checked {
    std::size_t end = 0; ///< of the bytes looked at
    std::string attached;
    std::vector<Signature> signatures;
    PdfReport report;
};

/// The record with the signatures found so far.
Result<void> checkRecord(Checked& checked, std::string json) {
    auto record = verifyRecord(json);
    if (!record) {
        Error error = record.error();
        error.where = "record.json" + (error.where.empty() ? "" : ": " + error.where);
        return tl::unexpected(error);
    }
    checked.report.record = std::move(*record);
    checked.report.recordJson = std::move(json);
    return {};
}

/// The PDF's latest signature must be by the same key as the record's.
Result<void> checkKeys(const Checked& checked) {
    const Certificate& signer = checked.signatures.back().certificate;
    if (checked.report.record.signatures.back().certificate.der == signer.der) return {};
    return refuse(say("The PDF and the record in it were signed with two keys."), signer.name);
}

Result<Checked> checkFirst(std::string_view bytes) {
    const std::string_view file = firstRevision(bytes);
    const auto gap = gapOf(file);
    if (!gap) return tl::unexpected(gap.error());
    auto signature = checkSignature(file, *gap);
    if (!signature) return tl::unexpected(signature.error());
    Checked checked;
    checked.end = file.size();
    checked.report.signer = signature->certificate;
    checked.signatures.push_back(std::move(*signature));
    auto json = checkObjects(file, checked.signatures);
    if (!json) return tl::unexpected(json.error());
    checked.attached = *json;
    if (auto good = checkRecord(checked, std::move(*json)); !good) return tl::unexpected(good.error());
    if (checked.report.record.signatures.size() != 1)
        return refuse(say("The attached record bears more signatures than the PDF that it was attached to."),
                      "record.json");
    if (auto good = checkKeys(checked); !good) return tl::unexpected(good.error());
    return checked;
}

/// Are these the bytes of the update, but for what its gap leaves open?
bool isUpdate(std::string_view tail, const pdf::Update& update, std::size_t start) {
    const std::string_view made = update.bytes;
    const std::size_t begin = update.gap.begin - start;
    const std::size_t end = update.gap.end - start;
    return tail.size() >= made.size() && tail.substr(0, begin + 1) == made.substr(0, begin + 1) &&
           tail.substr(end - 1, made.size() - end + 1) == made.substr(end - 1);
}

/// The next countersignature. All of what it added follows from the file before and the JWS in it, so it is
/// made again and compared: no other change finds room.
Result<void> checkUpdate(std::string_view bytes, Checked& checked) {
    const std::size_t start = checked.end;
    const std::string_view tail = bytes.substr(start);
    const auto entry = parseJson(pdf::entryIn(tail), {.bytes = 131072, .depth = 2});
    if (!entry) return notCovered(start, bytes.size());
    Json record = *parseJson(checked.report.recordJson);
    record["signatures"].push_back(*entry);
    if (auto good = checkRecord(checked, canonicalJson(record)); !good) return good;
    const SignatureReport& by = checked.report.record.signatures.back();
    const auto update = pdf::updateFor(bytes.substr(0, start), *entry, by, checked.signatures.size() + 1);
    if (!update) return tl::unexpected(update.error());
    if (!isUpdate(tail, *update, start))
        return refuse(say("What follows the signature is not exactly what a countersignature adds: something "
                          "else was changed, added or cut off."),
                      rangeText(start, bytes.size()));
    checked.end = start + update->bytes.size();
    auto signature = checkSignature(bytes.substr(0, checked.end), update->gap);
    if (!signature) return tl::unexpected(signature.error());
    checked.signatures.push_back(std::move(*signature));
    return checkKeys(checked);
}

Result<PdfReport> check(std::string_view bytes) {
    auto checked = checkFirst(bytes);
    if (!checked) return tl::unexpected(checked.error());
    while (checked->end < bytes.size())
        if (auto good = checkUpdate(bytes, *checked); !good) return tl::unexpected(good.error());
    if (checked->signatures.size() > 1) {
        const auto json = checkObjects(bytes, checked->signatures);
        if (!json) return tl::unexpected(json.error());
        if (*json != checked->attached)
            return refuse(say("Another record is attached than the first signature covers."), "record.json");
    }
    return std::move(checked->report);
}

} // namespace

Result<PdfReport> verifyPdf(std::string_view bytes) {
    if (bytes.size() > largestFile || !bytes.starts_with("%PDF-1."))
        return fail(ErrorCode::syntax, say("This is not a PDF that Ambit makes."));
    try {
        return check(bytes);
    } catch (const std::exception& problem) {
        return refuse(say("The file is not a sound PDF: %1", problem.what()), "record.pdf");
    }
}

} // namespace ambit::record
