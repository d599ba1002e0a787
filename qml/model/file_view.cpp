#include "model/file_view.hpp"

#include "archive/sealing.hpp"
#include "model/aircraft_reading.hpp"
#include "model/shown_airframe.hpp"
#include "model/story.hpp"
#include "model/words.hpp"
#include "record/entry.hpp"

#include <nlohmann/json.hpp>

namespace ambit::view {

namespace {

constexpr std::size_t fewRounds = 5;
constexpr std::size_t page = 50;

std::vector<archive::RecordInfo> roundsIn(const std::vector<archive::RecordInfo>& records) {
    std::vector<archive::RecordInfo> rounds;
    for (const auto& info : records)
        if (info.kind == "round" && rounds.size() < fewRounds) rounds.push_back(info);
    return rounds;
}

} // namespace

FileView::FileView(const Services& handedIn, Report whereTo, QObject* parent)
    : QObject(parent), services(&handedIn), report(std::move(whereTo)) {}

void FileView::setRegistration(const QString& registration) {
    if (shown == registration) return;
    close();
    shown = registration;
    wanted = page;
    emit registrationChanged();
    refresh();
}

void FileView::refresh() {
    // No registration would mean everybody's records.
    auto records = shown.isEmpty()
                       ? Result<std::vector<archive::RecordInfo>>(std::vector<archive::RecordInfo>())
                       : services->archive.records(shown.toStdString());
    if (!records) return report(records.error());
    all = std::move(*records);
    rows.update(all, wanted, services->now().offsetMinutes);
    roundRows.update(roundsIn(all), fewRounds, services->now().offsetMinutes);
    emit recordCountChanged();
}

void FileView::showMore() {
    wanted += page;
    rows.update(all, wanted, services->now().offsetMinutes);
}

Result<RecordView*> FileView::read(const std::string& recordId) {
    const auto json = services->archive.recordJson(recordId);
    if (!json) return tl::unexpected(json.error());
    const auto parsed = parseJson(*json);
    if (parsed && parsed->is_object() && record::isEntry(parsed->value("content", Json()))) {
        const auto airframe = airframeOf(services->archive, shown.toStdString());
        return RecordView::ofEntry(recordId, *json, airframe ? airframe->get() : nullptr, this);
    }
    const auto events = eventsOf(*json);
    if (!events) return tl::unexpected(events.error());
    const auto* first = events->empty() ? nullptr : std::get_if<round::Opened>(&events->front().what);
    if (first == nullptr)
        return fail(ErrorCode::invalid, say("This record's round was never opened."), recordId);
    const auto airframe = airframeShown(services->archive, first->airframeSha256);
    if (!airframe) return tl::unexpected(airframe.error());
    return RecordView::make(recordId, *json, *airframe, this);
}

bool FileView::open(const QString& recordId) {
    auto view = read(recordId.toStdString());
    if (!view) {
        report(view.error());
        return false;
    }
    close();
    opened = *view;
    emit recordChanged();
    return true;
}

void FileView::close() {
    if (opened == nullptr) return;
    opened->deleteLater(); // a screen may still be reading it
    opened = nullptr;
    emit recordChanged();
}

QStringList FileView::exportRecord(const QString& recordId, const QUrl& folder) {
    const QString path = folder.isLocalFile() ? folder.toLocalFile() : folder.toString();
    if (path.isEmpty()) {
        report({ErrorCode::refused, "No folder is chosen.", "", "Choose the folder to write to."});
        return {};
    }
    const auto files = archive::exportRecord(services->archive, recordId.toStdString(), path.toStdString());
    if (!files) {
        report(files.error());
        return {};
    }
    QStringList written;
    for (const auto& file : *files)
        written << text(file.string());
    return written;
}

} // namespace ambit::view
