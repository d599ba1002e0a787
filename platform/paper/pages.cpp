#include "paper/pages.hpp"

#include "paper/entry_page.hpp"
#include "paper/pin.hpp"
#include "paper/sections.hpp"
#include "record/entry.hpp"

#include <QBuffer>
#include <QHashSeed>
#include <QPdfWriter>
#include <nlohmann/json.hpp>

namespace ambit::paper {

namespace {

/// QPdfWriter writes objects in the order of a hash table. Its seed is the process's: put it back afterwards.
class SteadyHashes {
public:
    SteadyHashes() { QHashSeed::setDeterministicGlobalSeed(); }
    ~SteadyHashes() {
        if (before != 0) QHashSeed::resetRandomGlobalSeed();
    }
    SteadyHashes(const SteadyHashes&) = delete;
    SteadyHashes& operator=(const SteadyHashes&) = delete;

private:
    std::size_t before = QHashSeed::globalSeed();
};

bool allShown(const Json& value) {
    if (value.is_string()) return isShownWhole(value.get_ref<const std::string&>());
    if (!value.is_structured()) return true;
    return std::all_of(value.begin(), value.end(), [](const Json& inner) { return allShown(inner); });
}

Running runningWords(const RecordView& view) {
    const QString aircraft = shown(view.opened().registration);
    const QString name = aircraft + QStringLiteral(" · ") + shown(view.walk->name);
    return {name, Clock(view).date(view.concludedAt),
            aircraft + QStringLiteral(" · record ") + shortHash(view.identity) + QStringLiteral(" …")};
}

std::string draw(const Sheet& sheet, const QString& title) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Ambit"));
    writer.setPageSize(QPageSize(QPageSize::A4));
    writer.setResolution(72 * stepsPerPoint);
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    QPainter painter(&writer);
    painter.scale(stepsPerPoint, stepsPerPoint);
    sheet.drawAll(writer, painter);
    painter.end();
    return bytes.toStdString();
}

QString statementOf(const Json& content) {
    const auto found = content.find("statement");
    return found != content.end() && found->is_string() ? shown(found->get_ref<const std::string&>())
                                                        : QString();
}

} // namespace

void addHeading(Sheet& sheet, const QString& words, const QString& about) {
    const Text heading(words, style::heading, area::width);
    const Text line(about, style::quiet, area::width);
    sheet.need(heading.height() + line.height() + 90);
    sheet.text(heading);
    sheet.y += 2;
    sheet.text(line);
    sheet.y += 12;
}

namespace {

Result<Drawn> drawRound(const Json& content, const airframe::Airframe& airframe,
                        const std::map<std::string, std::string>& photos, const record::Certificate& signer) {
    const auto view = viewOf(content, airframe);
    if (!view) return tl::unexpected(view.error());

    Sheet sheet(runningWords(*view));
    Pictures pictures(photos);
    const Context context{*view,    Clock(*view),         signer,           sheet,
                          pictures, statementOf(content), allShown(content)};
    addTitle(context);
    addFindings(context);
    addMeasured(context);
    addFigure(context);
    addPoints(context);
    addTimeline(context);

    const QString title = shown(view->opened().registration) + QStringLiteral(", record of ") +
                          Clock(*view).date(view->concludedAt);
    std::string pdf = draw(sheet, title);
    pinPdf(pdf, view->concludedAt, view->identity);
    return std::move(pictures).drawn(std::move(pdf));
}

Result<Drawn> drawEntry(const Json& content, const airframe::Airframe* airframe,
                        const record::Certificate& signer) {
    if (auto good = record::checkEntry(content); !good) return tl::unexpected(good.error());
    const EntryPage page = entryPage(content, airframe, signer, allShown(content));
    std::string pdf = draw(page.sheet, page.title);
    pinPdf(pdf, page.at, page.identity);
    return Drawn{{std::move(pdf), {}}, {}};
}

} // namespace

Result<Drawn> drawRecord(const Json& content, const airframe::Airframe* airframe,
                         const std::map<std::string, std::string>& photos,
                         const record::Certificate& signer) {
    if (auto fonts = loadFonts(); !fonts) return tl::unexpected(fonts.error());
    const SteadyHashes steady;
    if (record::isEntry(content)) return drawEntry(content, airframe, signer);
    if (airframe == nullptr)
        return fail(ErrorCode::notFound, "A round's pages can't be drawn without its airframe description.",
                    {}, "Add the description to the archive first.");
    return drawRound(content, *airframe, photos, signer);
}

} // namespace ambit::paper
