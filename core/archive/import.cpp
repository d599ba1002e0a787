#include "archive/import.hpp"

#include "record/record.hpp"

namespace ambit::archive {

namespace {

RecordInfo infoOf(const record::RecordReport& report) {
    const Json& content = report.content;
    RecordInfo info;
    info.sha256 = report.sha256;
    info.registration = content["aircraft"]["registration"];
    info.kind = content["kind"];
    info.signer = content["signer"]["name"];
    const bool isRound = info.kind == "round";
    info.concludedAt = *parseInstant(content[isRound ? "concludedAt" : "at"].get<std::string>());
    if (!isRound) return info;
    info.conclusion = content["conclusion"]["fit"].get<bool>() ? "fit" : "not fit";
    for (const Json& point : content["points"])
        info.findings += point.contains("finding") ? 1 : 0;
    return info;
}

file::Known knownOf(record::RecordReport&& report) {
    return {report.sha256, std::move(report.content), report.signatures.front().certificate.sha256};
}

/// Verified from what is kept; `broken` gets what doesn't hold.
Result<std::vector<file::Known>> readAll(const Archive& archive, const std::vector<RecordInfo>& list,
                                         std::vector<Broken>& broken) {
    std::vector<file::Known> records;
    for (const RecordInfo& info : list) {
        auto json = archive.recordJson(info.sha256);
        if (!json) {
            broken.push_back({info.sha256, json.error()});
            continue;
        }
        auto report = record::verifyRecord(*json);
        if (!report)
            broken.push_back({info.sha256, report.error()});
        else if (report->sha256 != info.sha256)
            broken.push_back({info.sha256,
                              {ErrorCode::signature, "Another record is kept in its place.", report->sha256,
                               "Go on with a backup."}});
        else
            records.push_back(knownOf(std::move(*report)));
    }
    return records;
}

} // namespace

Result<Imported> importRecord(Archive& archive, std::string_view recordJson) {
    const auto report = record::verifyRecord(recordJson);
    if (!report) return tl::unexpected(report.error());
    const RecordInfo info = infoOf(*report);
    const auto isNew = archive.addRecord(info, recordJson);
    if (!isNew) return tl::unexpected(isNew.error());
    return Imported{info.sha256, info.registration, info.kind, *isNew};
}

Result<file::AircraftFile> fileOf(const Archive& archive, const std::string& registration) {
    const auto list = archive.records(registration);
    if (!list) return tl::unexpected(list.error());
    if (list->empty())
        return fail(ErrorCode::notFound, "The archive has no record of this aircraft.", registration,
                    "Look at its registration, or import its records.");
    std::vector<Broken> broken;
    const auto records = readAll(archive, *list, broken);
    if (!records) return tl::unexpected(records.error());
    if (!broken.empty()) return tl::unexpected(broken.front().error);
    return file::fold(*records);
}

Result<Verification> verify(const Archive& archive, const std::string& registration) {
    const auto list = archive.records(registration);
    if (!list) return tl::unexpected(list.error());
    Verification verification;
    verification.records = list->size();
    std::map<std::string, std::vector<RecordInfo>> byAircraft;
    for (const RecordInfo& info : *list)
        byAircraft[info.registration].push_back(info);
    for (const auto& [aircraft, its] : byAircraft) {
        const auto records = readAll(archive, its, verification.broken);
        if (!records) return tl::unexpected(records.error());
        for (file::Hole& hole : file::fold(*records).holes)
            verification.holes.push_back(std::move(hole));
    }
    return verification;
}

} // namespace ambit::archive
