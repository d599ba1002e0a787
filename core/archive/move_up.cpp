// Records as schema version 1 kept them, into version 2's tables.
#include "archive/connection.hpp"
#include "record/record.hpp"

namespace ambit::archive {

namespace {

struct First {
    std::string sha256, json, pdf;
};

Result<std::vector<First>> firstRecords(Connection& connection) {
    std::vector<First> list;
    Statement select =
        connection.prepare("SELECT sha256, json, pdf FROM record_1 ORDER BY concluded_ms, sha256");
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        list.push_back({select.textAt(0), select.textAt(1), select.textAt(2)});
    if (code != SQLITE_DONE) return connection.failed(say("read its older records"));
    return list;
}

} // namespace

Result<void> Connection::moveFirstRecords() {
    {
        Statement any = prepare("SELECT 1 FROM record_1 LIMIT 1");
        const int code = any.step();
        if (code == SQLITE_DONE) return {};
        if (code != SQLITE_ROW) return failed(say("read its older records"));
    }
    return transaction([&]() -> Result<void> {
        const auto list = firstRecords(*this);
        if (!list) return tl::unexpected(list.error());
        for (const First& one : *list) {
            const auto report = record::verifyRecord(one.json);
            if (!report || report->sha256 != one.sha256) continue; // `verify` names it
            const file::Told told = file::toldBy(*report);
            if (auto kept = keepRecord(told, one.json); !kept) return tl::unexpected(kept.error());
            if (!one.pdf.empty())
                if (auto kept = keepPdf(told, one.pdf); !kept) return kept;
            Statement moved = prepare("DELETE FROM record_1 WHERE sha256 = ?");
            if (moved.text(one.sha256).step() != SQLITE_DONE) return failed(say("move its older records"));
        }
        return {};
    });
}

} // namespace ambit::archive
