#include "archive/sealing.hpp"

#include "airframe/read.hpp"
#include "archive/import.hpp"
#include "base/files.hpp"

#include <nlohmann/json.hpp>

namespace ambit::archive {

namespace {

/// Every photo the round's findings name, by hash.
Result<std::map<std::string, std::string>> photosOf(const OpenRound& round) {
    std::map<std::string, std::string> photos;
    for (const round::Event& event : round.events()) {
        const auto* settled = std::get_if<round::Settled>(&event.what);
        if (settled == nullptr) continue;
        for (const round::Photo& photo : settled->photos) {
            if (photos.contains(photo.sha256)) continue;
            auto bytes = round.store().photo(photo.sha256);
            if (!bytes) return tl::unexpected(bytes.error());
            photos.emplace(photo.sha256, std::move(*bytes));
        }
    }
    return photos;
}

/// The description the aircraft goes by now, for names; nothing if there is none that can be read.
Result<std::optional<airframe::Airframe>> airframeOf(const Archive& archive,
                                                     const std::string& registration) {
    const auto all = archive.aircraft();
    if (!all) return tl::unexpected(all.error());
    for (const Aircraft& one : *all) {
        if (one.registration != registration || one.airframeSha256.empty()) continue;
        const auto text = archive.airframeText(one.airframeSha256);
        if (!text) return tl::unexpected(text.error());
        if (auto read = airframe::read(*text)) return std::optional(std::move(*read));
    }
    return std::optional<airframe::Airframe>();
}

} // namespace

Result<Incoming> signEntry(const Archive& archive, const record::Heading& heading, const record::Entry& entry,
                           const record::Signer& signer, const record::DrawPages& draw) {
    const auto content = record::entryContent(heading, entry);
    if (!content) return tl::unexpected(content.error());
    const auto json = record::signRecord(*content, signer);
    if (!json) return tl::unexpected(json.error());
    if (!draw) return verified(*json);
    const auto airframe = airframeOf(archive, heading.registration);
    if (!airframe) return tl::unexpected(airframe.error());
    const auto drawn = draw(*content, *airframe ? &**airframe : nullptr, {}, signer.certificate());
    if (!drawn) return tl::unexpected(drawn.error());
    return record::signPdf(drawn->pages, *json, drawn->jpeg, signer).and_then(verified);
}

Result<std::string> sealEntry(Archive& archive, const record::Heading& heading, const record::Entry& entry,
                              const record::Signer& signer, const record::DrawPages& draw) {
    auto incoming = signEntry(archive, heading, entry, signer, draw);
    if (!incoming) return tl::unexpected(incoming.error());
    const std::string sha256 = incoming->told.sha256;
    if (const auto kept = archive.keep({std::move(*incoming)}); !kept) return tl::unexpected(kept.error());
    return sha256;
}

Result<std::string> sealRound(OpenRound& round, const record::Signer& signer, const record::DrawPages& draw,
                              Instant at) {
    const round::State& state = round.state();
    if (state.phase != round::Phase::concluded)
        return fail(ErrorCode::refused, say("Only a concluded round is signed."), state.id,
                    say("Conclude it first."));
    const record::Certificate& certificate = signer.certificate();
    if (certificate.name != state.opened.who.name)
        return fail(ErrorCode::signature,
                    say("This key belongs to %1; the round was walked by %2.", certificate.name,
                        state.opened.who.name),
                    certificate.sha256, say("Sign with the key of the person who walked it."));
    auto previous = round.store().heads(state.opened.registration);
    if (!previous) return tl::unexpected(previous.error());
    auto content = record::roundContent(round.airframe(), round.events(), *previous);
    if (!content) return tl::unexpected(content.error());
    auto json = record::signRecord(*content, signer);
    if (!json) return tl::unexpected(json.error());
    auto photos = photosOf(round);
    if (!photos) return tl::unexpected(photos.error());
    auto drawn = draw(*content, &round.airframe(), *photos, certificate);
    if (!drawn) return tl::unexpected(drawn.error());
    auto pdf = record::signPdf(drawn->pages, *json, drawn->jpeg, signer);
    if (!pdf) return tl::unexpected(pdf.error());

    const std::string sha256 = record::identityOf(*content);
    const file::Told told = file::toldBy(sha256, *content, certificate.sha256);
    if (auto sealed = round.seal({sha256, certificate.sha256, certificate.name}, at, told, *json, *pdf);
        !sealed)
        return tl::unexpected(sealed.error());
    return sha256;
}

Result<void> countersign(Archive& archive, const std::string& recordSha256, const record::Signer& signer,
                         const record::Person& who, Instant at) {
    const auto before = archive.recordJson(recordSha256);
    if (!before) return tl::unexpected(before.error());
    auto json = record::countersignRecord(*before, signer, who, at);
    if (!json) return tl::unexpected(json.error());
    auto incoming = verified(*json);
    if (!incoming) return tl::unexpected(incoming.error());
    const auto pdfs = archive.recordPdfs(recordSha256);
    if (!pdfs) return tl::unexpected(pdfs.error());
    for (const std::string& pdf : *pdfs) {
        const auto report = record::verifyPdf(pdf);
        if (!report) return tl::unexpected(report.error());
        if (report->recordJson != *before) continue; // bears others' signatures: it stays as it is
        auto more = record::countersignPdf(pdf, *json, signer);
        if (!more) return tl::unexpected(more.error());
        incoming->pdfs.push_back(std::move(*more));
        break;
    }
    std::vector<Incoming> one;
    one.push_back(std::move(*incoming));
    const auto kept = archive.keep(one);
    if (!kept) return tl::unexpected(kept.error());
    return {};
}

Result<std::vector<std::filesystem::path>>
exportRecord(const Archive& archive, const std::string& recordSha256, const std::filesystem::path& folder) {
    auto json = archive.recordJson(recordSha256);
    if (!json) return tl::unexpected(json.error());
    auto pdf = archive.recordPdf(recordSha256);
    if (!pdf) return tl::unexpected(pdf.error());
    auto record = parseJson(*json);
    if (!record) return tl::unexpected(record.error());

    std::vector<std::pair<std::filesystem::path, std::string>> files{
        {folder / "record.json", std::move(*json)}};
    if (!pdf->empty()) files.emplace_back(folder / "record.pdf", std::move(*pdf)); // none: taken in as JSON
    bool photos = false;
    for (const Json& photo : record->at("content").value("photos", Json::array())) {
        photos = true;
        const auto hash = photo.at("sha256").get<std::string>();
        auto bytes = archive.photo(hash);
        if (!bytes) return tl::unexpected(bytes.error());
        const char* ending = photo.at("type") == "image/png" ? ".png" : ".jpg";
        files.emplace_back(folder / "photos" / (hash + ending), std::move(*bytes));
    }
    std::error_code failed;
    std::filesystem::create_directories(photos ? folder / "photos" : folder, failed);
    if (failed)
        return fail(ErrorCode::storage, say("The folder could not be made: %1.", failed.message()),
                    folder.string(), say("Choose another folder."));
    std::vector<std::filesystem::path> written;
    for (const auto& [path, bytes] : files) {
        if (auto done = writeFile(path, bytes); !done) return tl::unexpected(done.error());
        written.push_back(path);
    }
    return written;
}

} // namespace ambit::archive
