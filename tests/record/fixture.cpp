#include "fixture.hpp"

#include "airframe/read.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"
#include "record/qpdf.hpp"

#include <cstdio>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <openssl/bn.h>

namespace ambit::test {

namespace {

using round::Outcome;
using round::Settled;

constexpr std::int64_t start = 1'781'933'400'000; // 2026-06-20T05:30:00Z
constexpr int photoWidth = 800;
constexpr int photoHeight = 600;

template<class T> T must(Result<T> result) {
    if (result) return std::move(*result);
    std::fprintf(stderr, "fixture: %s\n", toText(result.error()).c_str());
    std::abort();
}

class Log {
public:
    explicit Log(bool fitting) : fit(fitting) {}

    void add(round::What what) {
        const auto seq = static_cast<std::int64_t>(events.size()) + 1;
        events.push_back({seq, Instant{start + seq * 4'250}, std::move(what)});
    }
    void sound(const std::string& point, std::optional<std::string> value = {}) {
        Settled settled;
        settled.point = point;
        settled.outcome = Outcome::sound;
        settled.value = std::move(value);
        add(std::move(settled));
    }
    void finding(const std::string& point, const std::string& words, std::vector<round::Photo> photos = {},
                 std::optional<std::string> value = {}) {
        if (fit) return sound(point, value ? std::optional<std::string>("5.0") : std::nullopt);
        Settled settled;
        settled.point = point;
        settled.outcome = Outcome::finding;
        settled.value = std::move(value);
        settled.words = words;
        settled.severity = round::Severity::grounds;
        settled.photos = std::move(photos);
        add(std::move(settled));
    }

    std::vector<round::Event> events;
    bool fit;
};

std::vector<round::Event> walked(bool fit, const round::Photo& photo) {
    Log log(fit);
    round::Opened opened;
    opened.registration = "OX-TEST";
    opened.serial = "T-1";
    opened.airframe = recordedMachine().id;
    opened.airframeSha256 = recordedMachine().sha256;
    opened.walk = "short";
    opened.who = {signerName, "pilot", ""};
    opened.counters = {{"hours", "1284.6"}, {"landings", "4107"}};
    opened.offsetMinutes = 120;
    opened.position = round::Position{"50.0000", "-10.0000"};
    log.add(opened);
    log.add(round::StandReached{"left"});
    log.sound("cowl-open.left");
    log.sound("oil", "5.2");
    log.add(round::Note{"Dew; \"quotes\", back\\slash, a\nnew line, ünïcödé and \xF0\x9F\x9A\x81."});
    log.add(round::Paused{});
    log.add(round::Resumed{});
    log.add(round::Reopened{"oil", "Stick not wiped."});
    log.finding("oil", "Too much oil.", {}, "6.25");
    log.sound("cowl-close.left");
    log.finding("blade.a", "Bond line open for 40 mm at the tip.", {photo});
    log.add(round::StandReached{"right"});
    log.sound("cowl-open.right");
    Settled cowl;
    cowl.point = "cowl-close.right";
    cowl.outcome = Outcome::notInspected;
    cowl.why = "Hail.";
    cowl.basis = "Closed and locked; only its seal was not seen.";
    log.add(cowl);
    log.add(round::OpeningClosed{"cowl-right"});
    round::Concluded concluded;
    concluded.fit = fit;
    if (!fit) concluded.reasons = "Oil and blade A.";
    log.add(concluded);
    return log.events;
}

record::Signer remembering(const record::Signer& signer) {
    auto given = std::make_shared<std::map<std::string, std::string, std::less<>>>();
    return {signer.certificate(), [signer, given](std::string_view digest) -> Result<std::string> {
                const auto known = given->find(digest);
                if (known != given->end()) return known->second;
                auto signature = signer.signDigest(digest);
                if (signature) given->emplace(digest, *signature);
                return signature;
            }};
}

} // namespace

const airframe::Airframe& recordedMachine() {
    static const airframe::Airframe airframe = [] {
        auto read = airframe::readFrom(AMBIT_ROOT "/tests/airframe/good.json");
        if (!read) std::abort();
        return *read;
    }();
    return airframe;
}

std::vector<round::Event> roundOf(bool fit) {
    return walked(fit, {sha256Hex("photo"), "image/jpeg", 5});
}

Json contentOf(bool fit, const std::vector<std::string>& previous) {
    return must(record::roundContent(recordedMachine(), roundOf(fit), previous));
}

Json contentWith(const std::string& photoBytes) {
    const round::Photo photo{sha256Hex(photoBytes), "image/jpeg",
                             static_cast<std::int64_t>(photoBytes.size())};
    return must(record::roundContent(recordedMachine(), walked(false, photo), {}));
}

const std::string& keyFile() {
    static const std::string file = must(record::newKeyFile(signerName, passphrase, Instant{start}));
    return file;
}

const record::Signer& signer() {
    static const record::Signer one = remembering(must(record::unlock(keyFile(), passphrase)));
    return one;
}

record::Signer newSigner(const std::string& name) {
    return must(record::unlock(must(record::newKeyFile(name, passphrase, Instant{start})), passphrase));
}

const record::Signer& stranger() {
    static const record::Signer one = newSigner(signerName);
    return one;
}

const round::Person& mechanic() {
    static const round::Person one{"Alex “A” Sample 例", "mechanic", "X.66/12 (B1)"};
    return one;
}

const record::Signer& mechanicsKey() {
    static const record::Signer one = remembering(newSigner(mechanic().name));
    return one;
}

std::string twin(std::string signature) {
    BIGNUM* order = nullptr; // FIPS 186-4, D.1.2.3
    BN_hex2bn(&order, "FFFFFFFF00000000FFFFFFFFFFFFFFFFBCE6FAADA7179E84F3B9CAC2FC632551");
    auto* half = reinterpret_cast<unsigned char*>(signature.data()) + 32;
    BIGNUM* s = BN_bin2bn(half, 32, nullptr);
    BN_sub(s, order, s);
    BN_bn2binpad(s, half, 32);
    BN_free(s);
    BN_free(order);
    return signature;
}

const std::string& photoBytes() {
    static const std::string bytes =
        must(readFile(AMBIT_ROOT "/demo-aircraft/helicopter/photos/fairing-left-1.jpg"));
    return bytes;
}

record::DrawnPages pages(bool withPhoto) {
    QPDF pdf;
    pdf.emptyPDF();
    const std::string content =
        "BT /F1 18 Tf 60 700 Td (Not fit) Tj ET " + std::string(withPhoto ? "/I1 Do" : "");
    auto page = QPDFObjectHandle::parse(
        &pdf, "<< /Type /Page /MediaBox [0 0 595 842] /Resources << /Font << /F1 << /Type /Font"
              " /Subtype /Type1 /BaseFont /Helvetica >> >> >> >>");
    page.replaceKey("/Contents", pdf.newStream(content));
    record::DrawnPages drawn;
    if (withPhoto) {
        auto image = pdf.newStream(std::string("\xFF\x00\x00\x00\xFF\x00", 6));
        image.replaceDict(
            QPDFObjectHandle::parse("<< /Type /XObject /Subtype /Image /Width 2 /Height 1 /BitsPerComponent 8"
                                    " /ColorSpace /DeviceRGB >>"));
        page.getKey("/Resources").replaceKey("/XObject", QPDFObjectHandle::parse("<< >>"));
        page.getKey("/Resources").getKey("/XObject").replaceKey("/I1", image);
        drawn.placeholders.push_back({2, 1, sha256Hex(photoBytes()), photoWidth, photoHeight, 3});
    }
    QPDFPageDocumentHelper(pdf).addPage(QPDFPageObjectHelper(pdf.makeIndirectObject(page)), false);
    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    writer.setStaticID(true);
    writer.write();
    const auto buffer = writer.getBufferSharedPointer();
    drawn.pdf.assign(reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize());
    return drawn;
}

std::map<std::string, std::string> photos() {
    return {{sha256Hex(photoBytes()), photoBytes()}};
}

} // namespace ambit::test
