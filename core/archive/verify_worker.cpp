#include "archive/verify_worker.hpp"

#include "base/encoding.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::archive {

namespace {

std::string hexOf(std::string_view digest) {
    return toHex({reinterpret_cast<const std::uint8_t*>(digest.data()), digest.size()});
}
std::string jsonText(const std::string& text) {
    const std::string quoted = Json(text).dump();
    return quoted.substr(1, quoted.size() - 2);
}
std::string listed(const std::string& digests) {
    std::string list;
    for (std::size_t at = 0; at + 32 <= digests.size(); at += 32)
        list += (at == 0 ? "\"" : ",\"") + hexOf(std::string_view(digests).substr(at, 32)) + '"';
    return list;
}

/// All that the archive keeps beside a record, so that lists and searches needn't read it.
std::vector<std::string> beside(const file::Told& told) {
    const file::RoundTold* round = told.round();
    return {told.kind(),
            round == nullptr ? ""
            : round->fit     ? "fit"
                             : "not fit",
            std::to_string(told.findings()),
            told.signer.name,
            told.signer.role,
            told.signer.certificate,
            told.key,
            round == nullptr ? "" : file::toJson(*round->walked).dump(),
            file::packed(told)};
}

} // namespace

std::string hexOf(const Bytes& digest) {
    return toHex(digest);
}
Bytes bytesOf(std::string_view digest) {
    Bytes bytes{};
    std::transform(digest.begin(),
                   digest.begin() + static_cast<std::ptrdiff_t>(std::min(digest.size(), bytes.size())),
                   bytes.begin(), [](char c) { return static_cast<std::uint8_t>(c); });
    return bytes;
}

Error changed(Sentence what) {
    return {ErrorCode::signature, std::move(what), "", say("Go on with a backup.")};
}

struct Worker::Row {
    std::int64_t key = 0;
    std::string sha256;
    std::string registration;
    std::string pageSha256;
    std::string previous;
    std::string kind, conclusion, findings;
};

Result<void> Worker::look(std::int64_t from, std::int64_t to) {
    if (auto read = readSignatures(from, to); !read) return read;
    Statement select = connection->prepare(
        "SELECT record.key, record.sha256, file.registration, page.sha256, page.previous, page.kind,"
        " page.conclusion, page.findings, record.dictionary, record.content,"
        // A record whose words are gone would never be found again by searching.
        " EXISTS(SELECT 1 FROM words_docsize WHERE id = record.key) FROM record"
        " LEFT JOIN file ON file.id = record.file"
        " LEFT JOIN page ON page.file = record.file AND page.record = record.key"
        " WHERE record.key BETWEEN ?1 AND ?2 AND (?3 = '' OR file.registration = ?3) ORDER BY "
        "record.key");
    select.integer(from).integer(to).text(what.registration);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW) {
        const Row row{select.integerAt(0), select.textAt(1), select.textAt(2), select.textAt(3),
                      select.textAt(4),    select.textAt(5), select.textAt(6), select.textAt(7)};
        found.here.push_back(bytesOf(row.sha256));
        auto good = connection->content(select.integerAt(8), select.viewAt(9), content);
        if (good) good = lookAt(row);
        if (!good) found.broken.push_back({hexOf(row.sha256), good.error()});
        if (select.integerAt(10) == 0)
            found.broken.push_back(
                {hexOf(row.sha256), changed(say("A search can't find it: its words are gone."))});
        for (std::size_t at = 0; at + 32 <= row.previous.size(); at += 32)
            found.named.push_back({bytesOf(std::string_view(row.previous).substr(at, 32)), row.key});
    }
    return code == SQLITE_DONE ? Result<void>() : connection->failed(say("be read"));
}

Result<void> Worker::readSignatures(std::int64_t from, std::int64_t to) {
    signedRecords.clear(); // the signatures' room is used again
    next = 0;
    Statement select = connection->prepare("SELECT record, header, value FROM signature"
                                           " WHERE record BETWEEN ? AND ? ORDER BY record, n");
    select.integer(from).integer(to);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW) {
        auto header = headerText(select.integerAt(1));
        if (!header) return tl::unexpected(header.error());
        if (signedRecords.size() == signatures.size()) signatures.emplace_back();
        record::SignatureText& one = signatures[signedRecords.size()];
        one.header = **header;
        one.value = select.viewAt(2);
        signedRecords.push_back(select.integerAt(0));
    }
    return code == SQLITE_DONE ? Result<void>() : connection->failed(say("be read"));
}

Result<const std::string*> Worker::headerText(std::int64_t id) {
    if (const auto known = headers.find(id); known != headers.end()) return &known->second;
    Statement select = connection->prepare("SELECT text FROM header WHERE id = ?");
    const int code = select.integer(id).step();
    if (code != SQLITE_ROW && code != SQLITE_DONE) return connection->failed(say("be read"));
    if (headers.size() > 4096) headers.clear();
    return &(headers[id] = code == SQLITE_ROW ? select.textAt(0) : std::string());
}

Result<void> Worker::lookAt(const Row& row) {
    while (next < signedRecords.size() && signedRecords[next] < row.key)
        ++next;
    const std::size_t first = next;
    while (next < signedRecords.size() && signedRecords[next] == row.key)
        ++next;
    const auto its = std::span(signatures).subspan(first, next - first);
    if (its.empty()) return tl::unexpected(changed(say("Its signature is gone.")));
    auto top = its.size() == 1 ? recheck(row.sha256, content, its) : lookAtAll(row);
    if (!top) return tl::unexpected(top.error());
    if (top->registration != jsonText(row.registration) || top->at != toText(timeOfKey(row.key)))
        return tl::unexpected(
            changed(say("It isn't in its place: it was moved to another aircraft or time.")));
    if (row.pageSha256 != row.sha256 || top->previous != listed(row.previous))
        return tl::unexpected(changed(say("What the archive keeps beside it isn't what it says.")));
    if (row.kind == "removal")
        if (auto read = readRemoval(row); !read) return read;
    return what.contents ? judge(row, its.front()) : Result<void>();
}

/// Whoever can write the file can write into the table `gone`: only what a signed stub says counts. What
/// went named others, and the stub names them in its place.
Result<void> Worker::readRemoval(const Row& row) {
    const auto read = parseJson(content);
    if (!read) return tl::unexpected(read.error());
    if (auto good = record::checkEntry(*read); !good) return good;
    const record::ReadEntry entry = record::entryFrom(*read);
    const auto* removal = std::get_if<record::Removal>(&entry.entry);
    if (removal == nullptr)
        return tl::unexpected(changed(say("What the archive keeps beside it isn't what it says.")));
    for (const auto& one : removal->records) {
        found.gone.push_back(bytesOf(fromHex(one.record).value_or(std::string())));
        for (const std::string& earlier : one.previous)
            found.named.push_back({bytesOf(fromHex(earlier).value_or(std::string())), row.key});
    }
    return {};
}

/// Several signatures: each way through them must hold.
Result<record::Top> Worker::lookAtAll(const Row& row) {
    const auto chains = connection->chains(row.key);
    if (!chains) return tl::unexpected(chains.error());
    Result<record::Top> top = tl::unexpected(changed(say("Its signature is gone.")));
    for (const auto& chain : *chains) {
        top = recheck(row.sha256, content, chain);
        if (!top) return top;
    }
    return top;
}

Result<void> Worker::judge(const Row& row, const record::SignatureText& first) {
    const auto report = record::verifyRecord(record::assembled(content, {first}));
    if (!report) return tl::unexpected(report.error());
    static const std::string sql =
        pagesWhere("page.file = (SELECT file FROM record WHERE key = ?1) AND page.record = ?1");
    Statement select = connection->prepare(sql.c_str());
    if (select.integer(row.key).step() != SQLITE_ROW) return connection->failed(say("be read"));
    const auto kept = connection->toldIn(select);
    if (!kept) return tl::unexpected(kept.error());
    if (archive::beside(file::toldBy(*report)) != beside(*kept, row))
        return tl::unexpected(changed(say("What the archive keeps beside it isn't what it says.")));
    return {};
}

std::vector<std::string> Worker::beside(const file::Told& kept, const Row& row) {
    std::vector<std::string> list = archive::beside(kept);
    list[1] = row.conclusion;
    list[2] = row.findings;
    return list;
}

} // namespace ambit::archive
