#include "record/cms.hpp"
#include "record/pdf.hpp"
#include "record/pdf_update.hpp"
#include "record/photo.hpp"
#include "record/qpdf.hpp"
#include "record/xmp.hpp"

#include <stdexcept>

namespace ambit::record {

namespace {

using Object = QPDFObjectHandle;
using Photos = std::map<std::string, std::string>;
using Placeholder = DrawnPages::Placeholder;

constexpr long long unknownOffset = 9'999'999'999; ///< holds a place in /ByteRange

tl::unexpected<Error> refuse(Sentence what, std::string where = {}) {
    return fail(ErrorCode::invalid, std::move(what), std::move(where));
}

// --- photos
// ---------------------------------------------------------------------------------------------------

std::vector<Object> imagesOf(QPDF& pdf, const Placeholder& size) {
    std::vector<Object> found;
    for (Object& object : pdf.getAllObjects()) {
        if (!object.isStream() || !object.getDict().getKey("/Subtype").isNameAndEquals("/Image")) continue;
        Object dictionary = object.getDict();
        const auto is = [&](const char* key, int value) {
            return dictionary.getKey(key).isInteger() && dictionary.getKey(key).getIntValue() == value;
        };
        if (is("/Width", size.width) && is("/Height", size.height)) found.push_back(object);
    }
    return found;
}

/// The photo's own bytes: what was found is not blurred by a second compression.
Result<void> putPhoto(QPDF& pdf, const Placeholder& placeholder, const Photos& photos) {
    const auto photo = photos.find(placeholder.photoSha256);
    if (photo == photos.end())
        return fail(ErrorCode::notFound, say("The bytes of this photo are missing."),
                    placeholder.photoSha256);
    const auto frame = jpegFrame(photo->second);
    const bool fits = frame && frame->width == placeholder.photoWidth &&
                      frame->height == placeholder.photoHeight && frame->channels == placeholder.channels &&
                      (frame->channels == 1 || frame->channels == 3);
    if (!fits)
        return refuse(say("This photo is not a JPEG in grey or colour of the size it was drawn for."),
                      placeholder.photoSha256);
    std::vector<Object> images = imagesOf(pdf, placeholder);
    if (images.size() != 1)
        return refuse(say("The drawn pages don't have exactly one place for this photo."),
                      placeholder.photoSha256);
    Object dictionary = Object::newDictionary();
    dictionary.replaceKey("/Type", Object::newName("/XObject"));
    dictionary.replaceKey("/Subtype", Object::newName("/Image"));
    dictionary.replaceKey("/Width", Object::newInteger(frame->width));
    dictionary.replaceKey("/Height", Object::newInteger(frame->height));
    dictionary.replaceKey("/BitsPerComponent", Object::newInteger(8));
    dictionary.replaceKey("/ColorSpace",
                          Object::newName(frame->channels == 3 ? "/DeviceRGB" : "/DeviceGray"));
    images[0].replaceDict(dictionary);
    images[0].replaceStreamData(photo->second, Object::newName("/DCTDecode"), Object::newNull());
    return {};
}

// --- what the file says of itself, and what it carries
// --------------------------------------------------------------

void describe(QPDF& pdf, const About& about) {
    Object info = Object::newDictionary();
    info.replaceKey("/Title", Object::newUnicodeString(about.title));
    info.replaceKey("/Author", Object::newUnicodeString(about.author));
    info.replaceKey("/Creator", Object::newString("Ambit"));
    info.replaceKey("/Producer", Object::newUnicodeString(about.producer));
    info.replaceKey("/CreationDate", Object::newString(pdfDate(about.at)));
    info.replaceKey("/ModDate", Object::newString(pdfDate(about.at)));
    pdf.getTrailer().replaceKey("/Info", pdf.makeIndirectObject(info));
    pdf.getTrailer().removeKey("/ID");

    Object metadata = pdf.newStream(xmpOf(about));
    metadata.getDict().replaceKey("/Type", Object::newName("/Metadata"));
    metadata.getDict().replaceKey("/Subtype", Object::newName("/XML"));
    Object root = pdf.getRoot();
    root.replaceKey("/Metadata", metadata);
    root.replaceKey("/Lang", Object::newString("en"));
    Object preferences = Object::newDictionary();
    preferences.replaceKey("/DisplayDocTitle", Object::newBool(true));
    root.replaceKey("/ViewerPreferences", preferences);
}

void attach(QPDF& pdf, std::string_view json, const About& about) {
    Object stream = QPDFEFStreamObjectHelper::createEFStream(pdf, std::string(json))
                        .setSubtype("application/json")
                        .setCreationDate(pdfDate(about.at))
                        .setModDate(pdfDate(about.at))
                        .getObjectHandle();
    Object files = Object::newDictionary();
    files.replaceKey("/F", stream);
    files.replaceKey("/UF", stream);
    Object file = Object::newDictionary();
    file.replaceKey("/Type", Object::newName("/Filespec"));
    file.replaceKey("/F", Object::newString(pdf::attachment));
    file.replaceKey("/UF", Object::newUnicodeString(pdf::attachment));
    file.replaceKey("/Desc", Object::newUnicodeString("The record itself, signed: what these pages show"));
    file.replaceKey("/AFRelationship", Object::newName("/Source"));
    file.replaceKey("/EF", files);
    file = pdf.makeIndirectObject(file);

    Object tree = Object::newDictionary();
    tree.replaceKey("/Names", Object::newArray({Object::newString(pdf::attachment), file}));
    Object names = Object::newDictionary();
    names.replaceKey("/EmbeddedFiles", tree);
    pdf.getRoot().replaceKey("/Names", names);
    pdf.getRoot().replaceKey("/AF", Object::newArray({file}));
}

/// An invisible field with room for the signature: /ByteRange and /Contents are filled in once the file is
/// written.
void addField(QPDF& pdf, const About& about, std::size_t room) {
    Object signature = Object::newDictionary();
    signature.replaceKey("/Type", Object::newName("/Sig"));
    signature.replaceKey("/Filter", Object::newName(pdf::filter));
    signature.replaceKey("/SubFilter", Object::newName(pdf::subFilter));
    signature.replaceKey("/Name", Object::newUnicodeString(about.author));
    signature.replaceKey("/M", Object::newString(pdfDate(about.at)));
    const Object later = Object::newInteger(unknownOffset);
    signature.replaceKey("/ByteRange", Object::newArray({Object::newInteger(0), later, later, later}));
    signature.replaceKey("/Contents", Object::newString(std::string(room, '\0')));

    Object page = QPDFPageDocumentHelper(pdf).getAllPages().at(0).getObjectHandle();
    Object field = Object::newDictionary();
    field.replaceKey("/Type", Object::newName("/Annot"));
    field.replaceKey("/Subtype", Object::newName("/Widget"));
    field.replaceKey("/FT", Object::newName("/Sig"));
    field.replaceKey("/T", Object::newString("Signature1"));
    field.replaceKey("/V", pdf.makeIndirectObject(signature));
    field.replaceKey("/Rect", Object::newArray(std::vector<Object>(4, Object::newInteger(0))));
    field.replaceKey("/F", Object::newInteger(pdf::widgetFlags));
    field.replaceKey("/P", page);
    field = pdf.makeIndirectObject(field);

    if (!page.getKey("/Annots").isArray()) page.replaceKey("/Annots", Object::newArray());
    page.getKey("/Annots").appendItem(field);
    Object form = Object::newDictionary();
    form.replaceKey("/Fields", Object::newArray({field}));
    form.replaceKey("/SigFlags", Object::newInteger(3));
    pdf.getRoot().replaceKey("/AcroForm", form);
}

// --- bytes
// ------------------------------------------------------------------------------------------------------

std::string write(QPDF& pdf) {
    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    writer.setMinimumPDFVersion("1.7");
    writer.setObjectStreamMode(qpdf_o_disable);
    writer.setNewlineBeforeEndstream(true);
    writer.setDeterministicID(true);
    writer.write();
    const auto buffer = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

Result<std::string> sign(std::string file, std::size_t room, const Signer& signer) {
    const std::size_t key = pdf::onlyPlaceOf(pdf::byteRangeKey, file);
    const std::size_t contents =
        pdf::onlyPlaceOf(std::string(pdf::contentsKey) + std::string(room * 2, '0') + '>', file);
    if (key == std::string::npos || contents == std::string::npos)
        return refuse(say("The drawn pages hold a signature already."));
    pdf::Gap gap;
    gap.begin = contents + pdf::contentsKey.size() - 1;
    gap.end = gap.begin + 2 * room + 2;
    const std::size_t range = key + pdf::byteRangeKey.size();
    const std::string text = pdf::byteRange(file.size(), gap);
    if (file.find(']', range) + 1 - range != text.size())
        return refuse(say("The file is too large to be signed."));
    file.replace(range, text.size(), text);
    return pdf::signGap(std::move(file), gap, signer);
}

Result<std::string> assemble(const DrawnPages& pages, std::string_view recordJson, const Photos& photos,
                             const Signer& signer, const About& about) {
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.processMemoryFile("pages", pages.pdf.data(), pages.pdf.size());
    if (pdf.getRoot().hasKey("/AcroForm")) return refuse(say("The drawn pages hold a form already."));
    for (const Placeholder& placeholder : pages.placeholders)
        if (auto put = putPhoto(pdf, placeholder, photos); !put) return tl::unexpected(put.error());
    const std::size_t room = longestCms(signer.certificate());
    describe(pdf, about);
    attach(pdf, recordJson, about);
    addField(pdf, about, room);
    return sign(write(pdf), room, signer);
}

} // namespace

Result<std::string> signPdf(const DrawnPages& pages, std::string_view recordJson, const Photos& photos,
                            const Signer& signer) {
    const auto report = verifyRecord(recordJson);
    if (!report) return tl::unexpected(report.error());
    if (report->signatures.size() > 1)
        return fail(ErrorCode::refused,
                    say("The record is countersigned already; a PDF carries it as first signed."),
                    report->sha256, say("Make the PDF first, then countersign both."));
    if (report->signatures.front().certificate.der != signer.certificate().der)
        return fail(ErrorCode::signature, say("The record was signed with another key."),
                    signer.certificate().name, say("Sign the record and its PDF with the same key."));
    try {
        return assemble(pages, recordJson, photos, signer, About::of(report->content));
    } catch (const std::exception& problem) {
        return refuse(say("The drawn pages can't be used: %1", problem.what()));
    }
}

} // namespace ambit::record
