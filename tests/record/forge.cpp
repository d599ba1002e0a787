#include "forge.hpp"

#include "base/encoding.hpp"
#include "base/hash.hpp"
#include "record/cms.hpp"

#include <cstdio>
#include <nlohmann/json.hpp>

namespace ambit::test {

std::string recordOf(const Json& content, const record::Signer& by) {
    return *record::signRecord(content, by);
}

const std::string& plainPdf() {
    static const std::string pdf = *record::signPdf(pages(false), recordOf(contentOf()), {}, signer());
    return pdf;
}

std::string photoPdf() {
    return *record::signPdf(pages(true), recordOf(contentWith(photoBytes())), photos(), signer());
}

record::pdf::Gap gapOf(const std::string& pdf) {
    const std::size_t begin = pdf.find(record::pdf::contentsKey) + record::pdf::contentsKey.size() - 1;
    return {begin, pdf.find('>', begin) + 1};
}

std::string signedAgain(std::string pdf, const record::Signer& by) {
    const auto gap = gapOf(pdf);
    const std::size_t key = pdf.find(record::pdf::byteRangeKey) + record::pdf::byteRangeKey.size();
    const std::string range = record::pdf::byteRange(pdf.size(), gap);
    pdf.replace(key, range.size(), range);
    const Digest digest = sha256(pdf.substr(0, gap.begin) + pdf.substr(gap.end));
    const std::string cms =
        *record::signCms({reinterpret_cast<const char*>(digest.data()), digest.size()}, by);
    std::string hex = toHex({reinterpret_cast<const std::uint8_t*>(cms.data()), cms.size()});
    hex.resize(gap.end - gap.begin - 2, '0');
    pdf.replace(gap.begin + 1, hex.size(), hex);
    return pdf;
}

std::string rebuilt(const std::function<void(QPDF&)>& change, qpdf_object_stream_e streams,
                    const record::Signer& by) {
    QPDF pdf;
    pdf.processMemoryFile("test", plainPdf().data(), plainPdf().size());
    auto value = pdf.getRoot().getKey("/AcroForm").getKey("/Fields").getArrayItem(0).getKey("/V");
    value.replaceKey("/Contents",
                     QPDFObjectHandle::newString(std::string(record::longestCms(by.certificate()), '\0')));
    for (int i = 1; i < 4; ++i)
        value.getKey("/ByteRange").setArrayItem(i, QPDFObjectHandle::newInteger(9'999'999'999));
    change(pdf);
    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    writer.setStaticID(true);
    writer.setObjectStreamMode(streams);
    writer.write();
    const auto buffer = writer.getBufferSharedPointer();
    return signedAgain({reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()}, by);
}

std::string shadowEdit(const std::string& sound) {
    QPDF pdf;
    pdf.processMemoryFile("test", sound.data(), sound.size());
    auto page = pdf.getAllPages().at(0);
    const auto contents = page.getKey("/Contents").getObjGen();
    const std::size_t at = sound.size();
    const std::string object =
        std::to_string(contents.getObj()) + " 0 obj\n<< /Length 0 >>\nstream\n\nendstream\nendobj\n";
    std::string offset = std::to_string(at);
    offset.insert(0, 10 - offset.size(), '0');
    const std::string last = sound.substr(sound.rfind("startxref\n") + 10);
    return sound + object + "xref\n" + std::to_string(contents.getObj()) + " 1\n" + offset +
           " 00000 n \ntrailer << /Size " + std::to_string(pdf.getObjectCount() + 1) + " /Root " +
           std::to_string(pdf.getRoot().getObjectID()) + " 0 R /Prev " + last.substr(0, last.find('\n')) +
           " >>\nstartxref\n" + std::to_string(at + object.size()) + "\n%%EOF\n";
}

bool refusedFor(std::string_view words, std::string_view pdf) {
    const auto report = record::verifyPdf(pdf);
    if (!report && toText(report.error()).find(words) != std::string::npos) return true;
    std::fprintf(stderr, "%s\n", report ? "accepted" : toText(report.error()).c_str());
    return false;
}

} // namespace ambit::test
