#include "cli/commands.hpp"

#include "base/files.hpp"
#include "cli/talk.hpp"
#include "record/pdf.hpp"

#include <algorithm>
#include <filesystem>
#include <iostream>
#include <nlohmann/json.hpp>

namespace ambit::cli {

namespace {

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

constexpr std::size_t largestFile = std::size_t{512} << 20;

Result<Verified> verifyBytes(const std::string& bytes) {
    constexpr const char* asSigned = "Give record.json or record.pdf as it was signed.";
    if (bytes.empty()) return fail(ErrorCode::syntax, "The file is empty.", "", asSigned);
    if (!bytes.starts_with("%PDF-") && !bytes.starts_with('{'))
        return fail(ErrorCode::syntax, "This is neither a record's JSON nor its PDF.", "", asSigned);
    if (!bytes.starts_with("%PDF-"))
        return record::verifyRecord(bytes).map([](record::RecordReport&& report) {
            return Verified{"JSON", std::move(report)};
        });
    return record::verifyPdf(bytes).map([](record::PdfReport&& report) {
        return Verified{"PDF", std::move(report.record)};
    });
}

Result<Verified> verifyOne(const std::string& file) {
    auto bytes = readFile(file, largestFile);
    if (!bytes) return tl::unexpected(bytes.error());
    return verifyBytes(*bytes);
}

Json toJson(const record::SignatureReport& signature) {
    Json json{{"name", signature.who.name},
              {"role", signature.who.role},
              {"certificate", signature.who.certificate},
              {"fingerprint", signature.certificate.sha256}};
    if (signature.at) json["at"] = toText(*signature.at);
    return json;
}

/// What a record says begins no line of its own: it could pass for one of Ambit's.
std::string oneLine(std::string text) {
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text;
}

/// "Alex Sample, mechanic, certificate X.66, countersigned 2026-06-20T07:30:30.500Z"
std::string words(const record::SignatureReport& signature) {
    std::string text = signature.who.name + ", " + signature.who.role;
    if (!signature.who.certificate.empty()) text += ", certificate " + oneLine(signature.who.certificate);
    if (signature.at) text += ", countersigned " + toText(*signature.at);
    return text;
}

void print(const std::string& file, const Verified& verified, bool json) {
    const Json& content = verified.report.content;
    const bool isRound = content.contains("conclusion");
    const bool fit = isRound && content.at("conclusion").at("fit").get<bool>();
    if (json) {
        Json signers = Json::array();
        for (const auto& signature : verified.report.signatures)
            signers.push_back(toJson(signature));
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
              << oneLine(content.at("aircraft").at("registration")) << "\n  what it is   "
              << content.at("kind").get<std::string>();
    if (isRound) std::cout << "\n  conclusion   " << (fit ? "fit" : "not fit") << ", by the pilot";
    std::cout << "\n  record       " << grouped(verified.report.sha256) << '\n';
    for (const auto& signature : verified.report.signatures)
        std::cout
            << "  signed by    " << words(signature) << "\n  key          "
            << grouped(signature.certificate.sha256)
            << "\n               self-made: compare this fingerprint with the one the signer gave you\n";
}

/// A file to be countersigned, and what it becomes.
struct Countersigning {
    std::string from;
    std::string to;
    std::string bytes;
};

/// Reads and checks the record and, if there is one, its PDF: nobody countersigns what doesn't hold.
Result<std::vector<Countersigning>> toCountersign(const SignOptions& options) {
    const std::filesystem::path out = options.out;
    std::vector<Countersigning> files{{options.record, (out / "record.json").string(), {}}};
    if (!options.pdf.empty()) files.push_back({options.pdf, (out / "record.pdf").string(), {}});
    for (Countersigning& file : files) {
        auto bytes = readFile(file.from, largestFile);
        if (!bytes) return tl::unexpected(bytes.error());
        if (bytes->starts_with("%PDF-") != (&file != &files.front()))
            return fail(ErrorCode::invalid, "The record's JSON is expected first, then its PDF.", file.from,
                        "Give record.json and record.pdf in this order.");
        if (auto verified = verifyBytes(*bytes); !verified)
            return tl::unexpected(inFile(verified.error(), file.from));
        if (std::filesystem::exists(file.to))
            return fail(ErrorCode::storage, "There is a file already; a record is never overwritten.",
                        file.to, "Choose another folder with --out.");
        file.bytes = std::move(*bytes);
    }
    return files;
}

/// Nothing is written before all of it is signed.
Result<void> countersign(std::vector<Countersigning>& files, const record::Signer& signer,
                         const SignOptions& options) {
    auto json =
        record::countersignRecord(files.front().bytes, signer,
                                  {signer.certificate().name, options.role, options.certificate}, now().at);
    if (!json) return tl::unexpected(inFile(json.error(), options.record));
    files.front().bytes = std::move(*json);
    if (options.pdf.empty()) return {};
    auto pdf = record::countersignPdf(files.back().bytes, files.front().bytes, signer);
    if (!pdf) return tl::unexpected(inFile(pdf.error(), options.pdf));
    files.back().bytes = std::move(*pdf);
    return {};
}

/// All of them, or none: the next try would find a file there.
Result<void> writeAll(const std::vector<Countersigning>& files) {
    for (auto file = files.begin(); file != files.end(); ++file) {
        auto written = writeFile(file->to, file->bytes);
        if (written) continue;
        std::error_code none;
        for (auto before = files.begin(); before != file; ++before)
            std::filesystem::remove(before->to, none);
        return written;
    }
    return {};
}

} // namespace

int sign(const SignOptions& options) {
    auto files = toCountersign(options);
    if (!files) return complain(files.error());
    const auto signer = signerOf(options.key, options.passphraseFile);
    if (!signer) return complain(signer.error());
    if (auto done = countersign(*files, *signer, options); !done) return complain(done.error());
    std::error_code failed;
    std::filesystem::create_directories(options.out, failed);
    if (failed)
        return complain({ErrorCode::storage, "The folder could not be made: " + failed.message() + ".",
                         options.out, "Choose another folder with --out."});
    if (auto done = writeAll(*files); !done) return complain(done.error());
    VerifyOptions written;
    written.json = options.json;
    for (const Countersigning& file : *files)
        written.files.push_back(file.to);
    return verify(written);
}

int keyNew(const KeyOptions& options) {
    if (std::filesystem::exists(options.file))
        return complain({ErrorCode::storage, "There is a file already; a key is never overwritten.",
                         options.file, "Choose another name."});
    auto word = passphrase(options.passphraseFile, true);
    if (!word) return complain(word.error());
    auto text = record::newKeyFile(options.name, *word, now().at);
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
    if (!certificate) return complain(inFile(certificate.error(), options.file));
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
        const Error error = inFile(verified.error(), file);
        if (options.json) {
            Json out = cli::toJson(error);
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
