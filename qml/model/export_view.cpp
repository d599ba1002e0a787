#include "model/export_view.hpp"

#include "archive/export.hpp"
#include "model/words.hpp"

namespace ambit::view {

ExportView::ExportView(const Services& handedIn, Background& beside, Report whereTo, QObject* parent)
    : QObject(parent), services(&handedIn), background(&beside), report(std::move(whereTo)) {}

void ExportView::write(const QString& registration, const QUrl& folder) {
    if (running) return;
    written.clear();
    words.clear();
    const QString path = folder.isLocalFile() ? folder.toLocalFile() : folder.toString();
    if (path.isEmpty())
        return report({ErrorCode::refused, "No folder is chosen.", "", "Choose the folder to write to."});
    const Instant at = services->now().at;
    QString name = registration;
    name.replace(QLatin1Char('/'), QLatin1Char('_')).replace(QLatin1Char('\\'), QLatin1Char('_'));
    const QString to = path + QLatin1Char('/') + name + QLatin1Char(' ') + text(toText(at).substr(0, 10)) +
                       QStringLiteral(".zip");
    running = true;
    emit changed();
    background->run<archive::Exported>(
        this,
        [aircraft = registration.toStdString(), file = to.toStdString(),
         at](const archive::Archive& archive) { return archive::exportFile(archive, aircraft, file, at); },
        [this, to](const Result<archive::Exported>& exported) {
            running = false;
            if (exported) {
                written = to;
                words = tr("%1 records, %2 PDFs, %3 photos")
                            .arg(exported->records)
                            .arg(exported->pdfs)
                            .arg(exported->photos);
                if (!exported->missingPhotos.empty())
                    words +=
                        tr("; %1 photos aren't here and are missing").arg(exported->missingPhotos.size());
            } else {
                report(exported.error());
            }
            emit changed();
        });
}

} // namespace ambit::view
