#include "base/encoding.hpp"
#include "base/hash.hpp"
#include "record/cms.hpp"
#include "record/der.hpp"
#include "record/pdf.hpp"
#include "record/pdf_marks.hpp"
#include "record/qpdf.hpp"

#include <charconv>
#include <openssl/evp.h>
#include <stdexcept>

namespace ambit::record {

namespace {

using Object = QPDFObjectHandle;

constexpr std::size_t largestFile = std::size_t{512} << 20;
constexpr std::size_t largestRecord = ParseLimits{}.bytes;

tl::unexpected<Error> refuse(std::string what, std::string where = {}) {
    return fail(ErrorCode::signature, std::move(what), std::move(where));
}

std::string rangeText(std::size_t from, std::size_t to) {
    return "bytes " + std::to_string(from) + " to " + std::to_string(to);
}

// --- by bytes
// -----------------------------------------------------------------------------------------------

/// The gap that the one /ByteRange names, if it is written as Ambit writes it and leaves out nothing but the
/// text of /Contents.
Result<pdf::Gap> gapOf(std::string_view file) {
    const std::size_t key = pdf::onlyPlaceOf(pdf::byteRangeKey, file);
    if (key == std::string_view::npos)
        return refuse("The file doesn't bear exactly one signature of Ambit's form.",
                      rangeText(0, file.size()));
    const std::string_view range = file.substr(key + pdf::byteRangeKey.size());
    const std::string_view start = "[ 0 ";
    pdf::Gap gap;
    if (range.starts_with(start)) {
        const char* end = range.data() + range.size();
        const auto first = std::from_chars(range.data() + start.size(), end, gap.begin);
        if (first.ptr != end) std::from_chars(first.ptr + 1, end, gap.end);
    }
    const bool inside = gap.begin >= pdf::contentsKey.size() && gap.begin < gap.end && gap.end < file.size();
    if (!inside || !range.starts_with(pdf::byteRange(file.size(), gap)))
        return refuse("The signature doesn't cover the file from its first byte to its last: something was "
                      "added or cut off.",
                      rangeText(gap.end, file.size()));
    const std::string_view upTo = file.substr(0, gap.begin + 1);
    if (!upTo.ends_with(pdf::contentsKey) || file[gap.end - 1] != '>')
        return refuse("The signature leaves out more than itself.", rangeText(gap.begin, gap.end));
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
        return refuse("The signature is not written in lower-case hex.", rangeText(gap.begin, gap.end));
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
    if (!done) return refuse("The file's digest could not be computed.");
    return digest;
}

struct Signature {
    Certificate certificate;
    std::string contents; ///< CMS and padding
};

Result<Signature> checkBytes(std::string_view file) {
    const auto gap = gapOf(file);
    if (!gap) return tl::unexpected(gap.error());
    auto contents = contentsOf(file, *gap);
    if (!contents) return tl::unexpected(contents.error());
    const std::size_t size = der::sizeOfFirst(*contents);
    if (size == 0 || contents->find_first_not_of('\0', size) != std::string::npos)
        return refuse("The signature breaks off, or its padding isn't empty.",
                      rangeText(gap->begin, gap->end));
    const auto digest = digestOf(file, *gap);
    if (!digest) return tl::unexpected(digest.error());
    auto certificate = verifyCms(std::string_view(*contents).substr(0, size), *digest);
    if (!certificate) {
        return refuse(certificate.error().what, rangeText(0, gap->begin) + " and " +
                                                    std::to_string(gap->end) + " to " +
                                                    std::to_string(file.size()));
    }
    if (contents->size() != longestCms(*certificate))
        return refuse("The signature's padding is not as long as Ambit makes it.",
                      rangeText(gap->begin, gap->end));
    return Signature{std::move(*certificate), std::move(*contents)};
}

// --- by objects
// ----------------------------------------------------------------------------------------------

/// A reader of the PDF must find the very signature that was checked, and no other.
Result<void> checkField(QPDF& pdf, const Signature& signature) {
    Object fields = pdf.getRoot().getKey("/AcroForm").getKey("/Fields");
    if (!fields.isArray() || fields.getArrayNItems() != 1)
        return refuse("The file doesn't have exactly one field.", "/AcroForm");
    Object field = fields.getArrayItem(0);
    Object value = field.getKey("/V");
    const bool ours =
        field.getKey("/FT").isNameAndEquals("/Sig") && !field.hasKey("/Kids") &&
        value.isDictionaryOfType("/Sig") && value.getKey("/Filter").isNameAndEquals(pdf::filter) &&
        value.getKey("/SubFilter").isNameAndEquals(pdf::subFilter) && value.getKey("/Contents").isString() &&
        value.getKey("/Contents").getStringValue() == signature.contents;
    if (!ours) return refuse("The file's field is not the signature that was checked.", "/AcroForm");
    int signatures = 0;
    for (Object& object : pdf.getAllObjects())
        if (object.isDictionary() && (object.isDictionaryOfType("/Sig") || object.hasKey("/ByteRange")))
            ++signatures;
    if (signatures != 1) return refuse("The file holds more than one signature.", "/AcroForm");
    for (const auto& [object, entry] : pdf.getXRefTable())
        if (entry.getType() == 2)
            return refuse("The file hides objects in streams, which Ambit never does.",
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
    if (!one) return refuse("The file doesn't carry exactly one attachment, record.json.", "/EmbeddedFiles");
    Object file = files.begin()->second->getObjectHandle();
    Object streams = file.getKey("/EF");
    Object stream = streams.getKey("/F");
    const bool same = associated.getArrayItem(0).getObjGen() == file.getObjGen() && stream.isStream() &&
                      streams.getKey("/UF").getObjGen() == stream.getObjGen();
    if (!same) return refuse("The attachment is not one and the same for every reader.", "/EmbeddedFiles");
    Bounded record;
    if (!stream.pipeStreamData(&record, 0, qpdf_dl_generalized, true))
        return refuse("The attached record can't be unpacked.", "record.json");
    return std::move(record.text);
}

Result<RecordReport> checkObjects(std::string_view bytes, const Signature& signature) {
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.setAttemptRecovery(false);
    pdf.processMemoryFile("record.pdf", bytes.data(), bytes.size());
    if (auto good = checkField(pdf, signature); !good) return tl::unexpected(good.error());
    const auto json = attachedRecord(pdf);
    if (!json) return tl::unexpected(json.error());
    if (pdf.anyWarnings())
        return refuse("The file is not a sound PDF: readers could see different things.", "record.pdf");
    auto record = verifyRecord(*json);
    if (record) return record;
    Error error = record.error();
    error.where = "record.json" + (error.where.empty() ? "" : ": " + error.where);
    return tl::unexpected(error);
}

} // namespace

Result<PdfReport> verifyPdf(std::string_view bytes) {
    if (bytes.size() > largestFile || !bytes.starts_with("%PDF-1."))
        return fail(ErrorCode::syntax, "This is not a PDF that Ambit makes.");
    auto signature = checkBytes(bytes);
    if (!signature) return tl::unexpected(signature.error());
    try {
        auto record = checkObjects(bytes, *signature);
        if (!record) return tl::unexpected(record.error());
        if (record->signatures.front().certificate.der != signature->certificate.der)
            return refuse("The PDF and the record in it were signed with two keys.",
                          signature->certificate.name);
        return PdfReport{std::move(*record), std::move(signature->certificate)};
    } catch (const std::exception& problem) {
        return refuse(std::string("The file is not a sound PDF: ") + problem.what(), "record.pdf");
    }
}

} // namespace ambit::record
