#include "record/pdf_update.hpp"

#include "base/canonical.hpp"
#include "base/encoding.hpp"
#include "base/hash.hpp"
#include "record/cms.hpp"
#include "record/qpdf.hpp"
#include "record/xmp.hpp"

#include <nlohmann/json.hpp>
#include <stdexcept>

namespace ambit::record::pdf {

namespace {

using Object = QPDFObjectHandle;

std::string hexOf(std::string_view bytes) {
    return toHex({reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size()});
}

/// A text string: UTF-16BE with its mark, in hex, so that no letter needs an escape.
std::string textString(const std::string& utf8) {
    return '<' + hexOf(QUtil::utf8_to_utf16(utf8)) + '>';
}

std::string reference(int object) {
    return std::to_string(object) + " 0 R";
}

std::string numbered(int object, std::string_view content) {
    return std::to_string(object) + " 0 obj\n" + std::string(content) + "\nendobj\n";
}

/// What the update must know of the file before it.
struct Layout {
    std::vector<int>
        listing; ///< the objects that list the fields: the catalog, and what holds page 1's /Annots
    std::vector<std::string> texts; ///< of those, as they stand
    int lastField = 0;
    int page = 0;
    int next = 0; ///< the first object number that is free
    std::string root, info;
    std::string id;    ///< the first part of /ID, hex
    std::string table; ///< where the file's last cross-reference table stands
};

/// The text between "obj" and "endobj", as it stands in the file.
std::string textOf(QPDF& pdf, std::string_view file, int object) {
    const auto table = pdf.getXRefTable();
    const auto found = table.find(QPDFObjGen(object, 0));
    const std::string head = std::to_string(object) + " 0 obj\n";
    if (found == table.end() || found->second.getType() != 1)
        throw std::runtime_error("an object is missing");
    const std::string_view rest = file.substr(static_cast<std::size_t>(found->second.getOffset()));
    const std::size_t end = rest.find("\nendobj\n");
    if (!rest.starts_with(head) || end == std::string_view::npos)
        throw std::runtime_error("an object is not written as Ambit writes it");
    return std::string(rest.substr(head.size(), end - head.size()));
}

std::string lastTableOf(std::string_view file) {
    constexpr std::string_view key = "startxref\n";
    const std::size_t at = file.rfind(key);
    if (at == std::string_view::npos) throw std::runtime_error("its end is missing");
    const std::string_view rest = file.substr(at + key.size());
    return std::string(rest.substr(0, rest.find('\n')));
}

Layout layoutOf(std::string_view file) {
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.setAttemptRecovery(false);
    pdf.processMemoryFile("record.pdf", file.data(), file.size());
    Object trailer = pdf.getTrailer();
    Object page = QPDFPageDocumentHelper(pdf).getAllPages().at(0).getObjectHandle();
    Object fields = pdf.getRoot().getKey("/AcroForm").getKey("/Fields");
    Layout layout;
    layout.root = reference(pdf.getRoot().getObjectID());
    layout.info = reference(trailer.getKey("/Info").getObjectID());
    layout.next = static_cast<int>(trailer.getKey("/Size").getIntValue());
    layout.id = hexOf(trailer.getKey("/ID").getArrayItem(0).getStringValue());
    layout.table = lastTableOf(file);
    layout.page = page.getObjectID();
    layout.lastField = fields.getArrayItem(fields.getArrayNItems() - 1).getObjectID();
    const int annotations = page.getKey("/Annots").getObjectID();
    layout.listing = {pdf.getRoot().getObjectID(), annotations == 0 ? layout.page : annotations};
    for (const int object : layout.listing)
        layout.texts.push_back(textOf(pdf, file, object));
    return layout;
}

/// The new field stands right after the one before it, wherever that is listed.
std::string withField(std::string text, int before, int added) {
    const std::string known = ' ' + reference(before) + ' ';
    const std::size_t at = onlyPlaceOf(known, text);
    if (at == std::string::npos) throw std::runtime_error("its fields are not listed as Ambit lists them");
    return text.insert(at + known.size(), reference(added) + ' ');
}

std::string signatureText(const Json& entry, const SignatureReport& by, std::size_t room) {
    const std::string number =
        by.who.certificate.empty() ? "" : ", certificate " + oneLine(by.who.certificate);
    return "<< /Type /Sig /Filter " + std::string(filter) + " /SubFilter " + subFilter + " /Name " +
           textString(oneLine(by.who.name)) + " /Reason " +
           textString("Countersigned as " + by.who.role + number) + " /M (" + pdfDate({by.at.value(), 0}) +
           ") " + std::string(entryKey) + canonicalJson(entry) + ") " + std::string(byteRangeKey) +
           byteRange(0, {}) + ' ' + std::string(contentsKey) + std::string(room * 2, '0') + "> >>";
}

std::string fieldText(const Layout& layout, int signature, std::size_t number) {
    return "<< /Type /Annot /Subtype /Widget /FT /Sig /T (Signature" + std::to_string(number) + ") /V " +
           reference(signature) + " /Rect [ 0 0 0 0 ] /F " + std::to_string(widgetFlags) + " /P " +
           reference(layout.page) + " >>";
}

/// Objects as they are put at the end of a file, and where.
struct Appended {
    std::size_t fileSize;
    std::string bytes;
    std::string table = "xref\n";

    void add(int object, std::string_view content) {
        std::string offset = std::to_string(fileSize + bytes.size());
        if (offset.size() > 10) throw std::runtime_error("it is too large");
        offset.insert(0, 10 - offset.size(), '0');
        table += std::to_string(object) + " 1\n" + offset + " 00000 n \n";
        bytes += numbered(object, content);
    }
    void close(const Layout& layout, int size, const std::string& id) {
        const std::size_t start = fileSize + bytes.size();
        bytes += table + "trailer << /Info " + layout.info + " /Root " + layout.root + " /Size " +
                 std::to_string(size) + " /ID [<" + layout.id + "><" + id + ">] /Prev " + layout.table +
                 " >>\nstartxref\n" + std::to_string(start) + "\n%%EOF\n";
    }
};

Update make(std::string_view file, const Json& entry, const SignatureReport& by, std::size_t number) {
    const Layout layout = layoutOf(file);
    const int signature = layout.next;
    const int field = layout.next + 1;
    const std::size_t room = longestCms(by.certificate);
    Appended update{file.size(), {}};
    update.add(signature, signatureText(entry, by, room));
    update.add(field, fieldText(layout, signature, number));
    for (std::size_t i = 0; i < layout.listing.size(); ++i)
        update.add(layout.listing[i], withField(layout.texts[i], layout.lastField, field));
    update.close(layout, field + 1, sha256Hex(file).substr(0, 32));

    Gap gap;
    gap.begin = update.bytes.find(contentsKey) + contentsKey.size() - 1 + file.size();
    gap.end = gap.begin + 2 * room + 2;
    const std::string range = byteRange(file.size() + update.bytes.size(), gap);
    const std::size_t at = update.bytes.find(byteRangeKey) + byteRangeKey.size();
    if (range.size() != byteRange(0, {}).size()) throw std::runtime_error("it is too large");
    update.bytes.replace(at, range.size(), range);
    return {std::move(update.bytes), gap};
}

} // namespace

Result<Update> updateFor(std::string_view file, const Json& entry, const SignatureReport& by,
                         std::size_t number) {
    try {
        return make(file, entry, by, number);
    } catch (const std::exception& problem) {
        return fail(ErrorCode::invalid, say("This PDF can't be countersigned: %1.", problem.what()),
                    "record.pdf", say("Use the PDF as Ambit signed it."));
    }
}

std::string_view entryIn(std::string_view update) {
    const std::size_t key = update.find(entryKey);
    if (key == std::string_view::npos) return {};
    const std::string_view rest = update.substr(key + entryKey.size());
    const std::size_t end = rest.find(')');
    return end == std::string_view::npos ? std::string_view() : rest.substr(0, end);
}

Result<std::string> signGap(std::string file, Gap gap, const Signer& signer) {
    const Digest digest = sha256(std::string(before(file, gap)).append(after(file, gap)));
    const auto cms = signCms({reinterpret_cast<const char*>(digest.data()), digest.size()}, signer);
    if (!cms) return tl::unexpected(cms.error());
    const std::string hex = hexOf(*cms);
    file.replace(gap.begin + 1, hex.size(), hex);
    return file;
}

} // namespace ambit::record::pdf

namespace ambit::record {

Result<std::string> countersignPdf(std::string_view pdf, std::string_view recordJson, const Signer& signer) {
    const auto before = verifyPdf(pdf);
    if (!before) return tl::unexpected(before.error());
    const auto report = verifyRecord(recordJson);
    if (!report) return tl::unexpected(report.error());
    const SignatureReport& by = report->signatures.back();
    if (by.certificate.der != signer.certificate().der)
        return fail(ErrorCode::signature, say("The record's last countersignature is by another key."),
                    by.certificate.name, say("Countersign the record and its PDF with the same key."));
    Json record = *parseJson(recordJson);
    const Json entry = record["signatures"].back();
    record["signatures"].erase(record["signatures"].size() - 1);
    if (canonicalJson(record) != before->recordJson)
        return fail(ErrorCode::conflict, say("The PDF is not that of the record before its last signature."),
                    report->sha256, say("Give the PDF that belongs to the record."));
    auto update = pdf::updateFor(pdf, entry, by, report->signatures.size());
    if (!update) return tl::unexpected(update.error());
    return pdf::signGap(std::string(pdf) + update->bytes, update->gap, signer);
}

} // namespace ambit::record
