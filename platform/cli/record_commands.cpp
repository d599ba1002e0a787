#include "cli/commands.hpp"

#include "base/files.hpp"
#include "cli/talk.hpp"
#include "record/pdf.hpp"

#include <chrono>
#include <filesystem>
#include <iostream>

namespace ambit::cli {

namespace {

Instant now() {
    using namespace std::chrono;
    return {duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count()};
}

/// "AB12 CD34 …": as people compare it.
std::string grouped(const std::string& hex) {
    std::string text;
    for (std::size_t i = 0; i < hex.size(); i += 4)
        text += (i > 0 ? " " : "") + hex.substr(i, 4);
    return text;
}

int show(const record::Certificate& certificate, const std::string& file, bool json) {
    if (json)
        std::cout << Json{{"file", file},
                          {"name", certificate.name},
                          {"fingerprint", certificate.sha256},
                          {"notBefore", toText(certificate.notBefore)},
                          {"notAfter", toText(certificate.notAfter)}}
                         .dump()
                  << '\n';
    else
        std::cout << "name         " << certificate.name << "\nfingerprint  " << grouped(certificate.sha256)
                  << "\nvalid        " << toText(certificate.notBefore) << " to "
                  << toText(certificate.notAfter) << '\n';
    return Exit::done;
}

struct Verified {
    const char* kind;
    record::RecordReport report;
};

Result<Verified> verifyOne(const std::string& file) {
    auto bytes = readFile(file, std::size_t{512} << 20);
    if (!bytes) return tl::unexpected(bytes.error());
    if (!bytes->starts_with("%PDF-"))
        return record::verifyRecord(*bytes).map([](record::RecordReport&& report) {
            return Verified{"JSON", std::move(report)};
        });
    return record::verifyPdf(*bytes).map([](record::PdfReport&& report) {
        return Verified{"PDF", std::move(report.record)};
    });
}

void print(const std::string& file, const Verified& verified, bool json) {
    const Json& content = verified.report.content;
    const bool isRound = content.contains("conclusion");
    const bool fit = isRound && content.at("conclusion").at("fit").get<bool>();
    if (json) {
        Json signers = Json::array();
        for (const auto& signature : verified.report.signatures)
            signers.push_back(
                {{"name", signature.certificate.name}, {"fingerprint", signature.certificate.sha256}});
        Json out{{"file", file},
                 {"ok", true},
                 {"kind", verified.kind},
                 {"of", content.at("kind")},
                 {"record", verified.report.sha256},
                 {"signers", signers},
                 {"aircraft", content.at("aircraft").at("registration")}};
        if (isRound) out["fit"] = fit;
        std::cout << out.dump() << '\n';
        return;
    }
    std::cout << file << ": " << verified.kind << " record, everything holds\n  aircraft     "
              << content.at("aircraft").at("registration").get<std::string>() << "\n  what it is   "
              << content.at("kind").get<std::string>();
    if (isRound) std::cout << "\n  conclusion   " << (fit ? "fit" : "not fit") << ", by the pilot";
    std::cout << "\n  record       " << grouped(verified.report.sha256) << '\n';
    for (const auto& signature : verified.report.signatures)
        std::cout
            << "  signed by    " << signature.certificate.name << "\n  key          "
            << grouped(signature.certificate.sha256)
            << "\n               self-made: compare this fingerprint with the one the signer gave you\n";
}

} // namespace

int keyNew(const KeyOptions& options) {
    if (std::filesystem::exists(options.file))
        return complain({ErrorCode::storage, "There is a file already; a key is never overwritten.",
                         options.file, "Choose another name."});
    auto word = passphrase(options.passphraseFile, true);
    if (!word) return complain(word.error());
    auto text = record::newKeyFile(options.name, *word, now());
    if (!text) return complain(text.error());
    if (auto written = writeFile(options.file, *text, true); !written) return complain(written.error());
    auto certificate = record::certificateOf(*text);
    if (!certificate) return complain(certificate.error());
    return show(*certificate, options.file, options.json);
}

int keyShow(const KeyOptions& options) {
    auto text = readFile(options.file, 65536);
    if (!text) return complain(text.error());
    auto certificate = record::certificateOf(*text);
    if (!certificate) return complain(certificate.error());
    return show(*certificate, options.file, options.json);
}

int verify(const VerifyOptions& options) {
    int code = Exit::done;
    for (const std::string& file : options.files) {
        auto verified = verifyOne(file);
        if (verified) {
            print(file, *verified, options.json);
            continue;
        }
        Error error = verified.error();
        if (error.where != file) error.where = file + (error.where.empty() ? "" : ": " + error.where);
        if (options.json) {
            Json out = toJson(error);
            out["file"] = file;
            out["ok"] = false;
            std::cout << out.dump() << '\n';
            code = std::max(code, exitCodeOf(error));
        } else {
            code = std::max(code, complain(error));
        }
    }
    return code;
}

} // namespace ambit::cli
