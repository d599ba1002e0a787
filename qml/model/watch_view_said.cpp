// What somebody who follows says to whoever walks, and the record that comes of the walk: signed here, and
// sent.
#include "archive/import.hpp"
#include "model/watch_view.hpp"
#include "model/words.hpp"
#include "record/asked.hpp"
#include "record/record.hpp"

#include <QUuid>
#include <algorithm>
#include <utility>

namespace ambit::view {

namespace {

using Kind = round::Statement::Kind;

std::string newId() {
    return QUuid::createUuid().toByteArray(QUuid::Id128).toStdString();
}

Kind kindOf(const QString& name) {
    if (name == askKindName(Kind::lookAgain)) return Kind::lookAgain;
    return name == askKindName(Kind::question) ? Kind::question : Kind::remark;
}

Result<bool> isSignedBy(std::string_view recordJson, const record::Signer& signer) {
    const auto verified = record::verifyRecord(recordJson);
    if (!verified) return tl::unexpected(verified.error());
    return std::any_of(verified->signatures.begin(), verified->signatures.end(), [&](const auto& one) {
        return one.certificate.sha256 == signer.certificate().sha256;
    });
}

/// Gives its bytes once.
archive::Next onceEach(std::vector<archive::Offered> all) {
    return [all = std::move(all), at = std::size_t{0}]() mutable -> std::optional<Result<archive::Offered>> {
        if (at == all.size()) return std::nullopt;
        return std::move(all[at++]);
    };
}

} // namespace

Result<void> WatchView::trySay(int number, const QString& kind, const QString& point, const QString& words) {
    Student* its = student(number);
    if (its == nullptr || !link || !its->round())
        return fail(ErrorCode::refused, ambit::say("There is no round to say something to."), "",
                    ambit::say("Wait for one."));
    const round::Statement statement{its->round()->lastState().id,
                                     newId(),
                                     kindOf(kind),
                                     point.toStdString(),
                                     words.trimmed().toStdString(),
                                     services->now().at,
                                     person};
    // As the log would have it: the one reader of such statements says what is wrong.
    JsonTape tape;
    const auto written = tape.write(round::toJson(statement));
    if (!written) return tl::unexpected(written.error());
    if (const auto read = round::statementFrom(*written); !read) return tl::unexpected(read.error());
    const auto said = record::said(statement, *signer);
    if (!said) return tl::unexpected(said.error());
    const auto* described = its->round()->described().point(statement.point);
    its->sent(statement.id,
              askTitle(statement.kind, described == nullptr ? QString() : text(described->name)), false);
    link->say(static_cast<std::uint64_t>(number), {statement.id, said->statement, said->jws});
    return {};
}

bool WatchView::say(int number, const QString& kind, const QString& point, const QString& words) {
    if (auto done = trySay(number, kind, point, words); !done) {
        report(done.error());
        return false;
    }
    return true;
}

/// Into the archive of records, with what it takes to show it: what the walker's device says is checked like
/// anything from elsewhere.
Result<void> WatchView::keep(Student& student, const watch::RecordHere& record) {
    std::vector<std::string> files{record.json};
    if (!record.pdf.empty()) files.push_back(record.pdf);
    if (auto taken = archive::takeRecord(services->archive, record.sha256, files); !taken) return taken;
    const auto there = isSignedBy(record.json, *signer);
    if (!there) return tl::unexpected(there.error());
    std::vector<archive::Offered> more;
    if (const FollowedRound* round = student.round()) {
        if (auto airframe = watched->airframeText(round->described().sha256))
            more.push_back({"airframe", std::move(*airframe)});
        for (const round::Event& event : round->events())
            if (const auto* settled = std::get_if<round::Settled>(&event.what))
                for (const round::Photo& photo : settled->photos)
                    if (auto bytes = watched->photo(photo.sha256))
                        more.push_back({photo.sha256, std::move(*bytes)});
    }
    auto added = archive::importAll(services->archive, onceEach(std::move(more)),
                                    [](const std::string&, const Result<archive::Imported>&) {});
    if (added) added = archive::addAircraftOfRecords(services->archive);
    if (!added) return added;
    student.setRecord(record.sha256, *there);
    emit recordCame(text(record.sha256));
    if (*there || student.signedHere()) return {};
    // Signed here before, and the connection broke before it got there.
    const auto json = services->archive.recordJson(record.sha256);
    if (!json) return tl::unexpected(json.error());
    const auto here = isSignedBy(*json, *signer);
    if (!here) return tl::unexpected(here.error());
    return *here ? offerTo(student) : Result<void>();
}

Result<void> WatchView::offerTo(Student& student) {
    const std::string& sha256 = student.recordSha256();
    const auto json = services->archive.recordJson(sha256);
    if (!json) return tl::unexpected(json.error());
    const auto pdf = services->archive.recordPdf(sha256);
    const std::string id = newId();
    student.setSignedHere();
    student.sent(id, tr("Your signature"), true);
    link->offer(static_cast<std::uint64_t>(student.number()), id, {sha256, *json, pdf.value_or("")});
    return {};
}

void WatchView::countersigned(const QString& recordId) {
    if (!link) return;
    for (const auto& one : followed)
        if (!recordId.isEmpty() && one->recordId() == recordId && !one->signedHere())
            if (auto offered = offerTo(*one); !offered) report(offered.error());
}

} // namespace ambit::view
