// What a record says was measured: its photos looked at again, its figures computed again.
#include "base/decimal.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"
#include "cli/commands.hpp"
#include "cli/drawing.hpp"
#include "cli/talk.hpp"
#include "judge/limit.hpp"
#include "measure/find.hpp"
#include "record/pdf.hpp"
#include "round/event.hpp"

#include <QBuffer>
#include <QImageReader>

#include <cmath>
#include <iostream>
#include <nlohmann/json.hpp>

namespace ambit::cli {

namespace {

using Photos = std::map<std::string, std::string>; ///< bytes by hash

constexpr std::size_t largestRecord = std::size_t{512} << 20;
constexpr std::size_t largestPhoto = std::size_t{64} << 20;

struct Read {
    record::RecordReport report;
    Photos photos;
};

/// The record, verified, with the photos that are in its PDF and those given.
Result<Read> readAll(const MeasureOptions& options) {
    auto bytes = readFile(options.record, largestRecord);
    if (!bytes) return tl::unexpected(bytes.error());
    Read all;
    if (bytes->starts_with("%PDF-")) {
        auto verified = record::verifyPdf(*bytes);
        if (!verified) return tl::unexpected(inFile(verified.error(), options.record));
        all.report = std::move(verified->record);
        auto photos = record::photosIn(*bytes, all.report.content);
        if (!photos) return tl::unexpected(photos.error());
        all.photos = std::move(*photos);
    } else {
        auto verified = record::verifyRecord(*bytes);
        if (!verified) return tl::unexpected(inFile(verified.error(), options.record));
        all.report = std::move(*verified);
    }
    const Json& content = all.report.content;
    if (content["kind"] != "round")
        return fail(ErrorCode::invalid, "This record holds no round.", options.record,
                    "Give a round's record.");
    for (const std::string& file : options.photos) {
        auto photo = readFile(file, largestPhoto);
        if (!photo) return tl::unexpected(photo.error());
        const std::string hash = sha256Hex(*photo);
        const Json& known = content["photos"];
        if (std::none_of(known.begin(), known.end(), [&](const Json& one) { return one["sha256"] == hash; }))
            return fail(ErrorCode::refused, "This is no photo of the record, or its bytes were changed.",
                        file,
                        "Give the file as it was taken: a copy that was edited or sent on has other bytes.");
        all.photos[hash] = std::move(*photo);
    }
    return all;
}

/// Upright, as measurements count pixels.
QImage decoded(const std::string& bytes) {
    QBuffer buffer;
    buffer.setData(bytes.data(), static_cast<int>(bytes.size()));
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (!size.isValid() || qint64{size.width()} * size.height() > measure::mostPixels) return {};
    return reader.read();
}

/// How far the corners of two cards are apart, pixels: the largest distance, whichever corner comes first.
double apart(const measure::Corners& found, const round::CardSeen& recorded) {
    double least = HUGE_VAL;
    for (std::size_t turn = 0; turn < 4; ++turn) {
        double most = 0;
        for (std::size_t i = 0; i < 4; ++i) {
            const auto x = Decimal::parse(recorded.corners[i].x);
            const auto y = Decimal::parse(recorded.corners[i].y);
            if (!x || !y) return HUGE_VAL;
            const measure::Pixel& at = found[(i + turn) % 4].at;
            most = std::max(most, std::hypot(at.x - x->approximate(), at.y - y->approximate()));
        }
        least = std::min(least, most);
    }
    return least;
}

/// As `what`, with so many decimals.
std::string alike(double value, const std::string& what) {
    const std::size_t dot = what.find('.');
    return fixed(value, dot == std::string::npos ? 0 : static_cast<int>(what.size() - dot) - 1);
}

/// One unit of the last digit is another machine's floating point.
bool same(const std::string& computed, const std::string& recorded) {
    const auto a = Decimal::parse(computed), b = Decimal::parse(recorded);
    if (!a || !b) return false;
    const std::size_t dot = recorded.find('.');
    const double digit =
        dot == std::string::npos ? 1 : std::pow(10, -static_cast<double>(recorded.size() - dot - 1));
    return std::abs(a->approximate() - b->approximate()) < 1.5 * digit;
}

/// One measurement, looked at again.
struct Again {
    std::string point;
    std::int64_t event = 0;
    const round::Measurement* recorded = nullptr;
    std::string value, uncertainty; ///< computed again; empty: they can't be
    std::string whyNot;
    bool holds = false;    ///< both as recorded
    bool hasPhoto = false; ///< its bytes are at hand, and those of the record
    std::string size;      ///< what is wrong with the photo; empty: nothing
    std::string card;      ///< what the finder says; empty: not asked
    std::string apart;     ///< pixels; empty: it found none

    [[nodiscard]] bool isGood() const { return holds && size.empty(); }
};

void lookAt(Again& again, const std::string& bytes) {
    const round::Measurement& its = *again.recorded;
    again.hasPhoto = true;
    const QImage picture = decoded(bytes);
    if (picture.isNull()) {
        again.size = "the photo can't be read";
        return;
    }
    if (picture.width() != its.width || picture.height() != its.height) {
        again.size = "the photo has " + std::to_string(picture.width()) + " × " +
                     std::to_string(picture.height()) + " pixels, not " + std::to_string(its.width) + " × " +
                     std::to_string(its.height);
        return;
    }
    if (!its.card) return;
    const QImage grey = picture.convertToFormat(QImage::Format_Grayscale8);
    const auto found = measure::findCard(
        {grey.constBits(), grey.width(), grey.height(), static_cast<int>(grey.bytesPerLine())});
    if (!found) {
        again.card = "the finder isn't sure: " + found.error().what;
        return;
    }
    again.apart = fixed(apart(found->corners, *its.card), 1);
    again.card = "the finder's corners are within " + again.apart + " pixels of those recorded";
}

Again lookedAt(const std::string& point, std::int64_t event, const round::Measurement& recorded,
               const Photos& photos) {
    Again again;
    again.point = point;
    again.event = event;
    again.recorded = &recorded;
    if (const auto estimate = round::computed(recorded)) {
        again.value = alike(estimate->value, recorded.value);
        again.uncertainty = alike(estimate->uncertainty, recorded.uncertainty);
        again.holds = same(again.value, recorded.value) && same(again.uncertainty, recorded.uncertainty);
    } else {
        again.whyNot = estimate.error().what;
    }
    if (const auto bytes = photos.find(recorded.photo); bytes != photos.end()) lookAt(again, bytes->second);
    return again;
}

Json toJson(const Again& again) {
    const round::Measurement& its = *again.recorded;
    Json json{{"point", again.point}, {"event", again.event},           {"what", round::toText(its.what)},
              {"value", its.value},   {"uncertainty", its.uncertainty}, {"unit", its.unit},
              {"photo", its.photo},   {"photoSeen", again.hasPhoto},    {"ok", again.isGood()}};
    if (again.whyNot.empty())
        json["computed"] = {{"value", again.value}, {"uncertainty", again.uncertainty}};
    else
        json["why"] = again.whyNot;
    if (!again.size.empty()) json["why"] = again.size;
    if (its.card) json["card"] = {{"by", its.card->byHand ? "hand" : "finder"}};
    if (!again.card.empty()) json["card"]["says"] = again.card;
    if (!again.apart.empty()) json["card"]["apart"] = again.apart;
    return json;
}

void print(const Again& again, const std::string& name) {
    const round::Measurement& its = *again.recorded;
    std::cout << name << ": " << round::toText(its.what) << ' ' << its.value << " ± " << its.uncertainty
              << ' ' << its.unit << " (standard uncertainty), event " << again.event << '\n';
    if (!again.whyNot.empty())
        std::cout << "  can't be computed again: " << again.whyNot << '\n';
    else if (again.holds)
        std::cout << "  computed again: the same\n";
    else
        std::cout << "  computed again: " << again.value << " ± " << again.uncertainty << ' ' << its.unit
                  << ", NOT what the record says\n";
    std::cout << "  photo " << its.photo.substr(0, 12) << ": ";
    if (!again.hasPhoto)
        std::cout << "not at hand; give it with --photo to have it looked at\n";
    else
        std::cout << (again.size.empty() ? "its bytes and size are those recorded" : again.size) << '\n';
    if (!again.card.empty()) std::cout << "  card: " << again.card << '\n';
}

std::string howTaken(const Json& measured) {
    const std::string from = measured.value("from", "");
    if (from.empty()) return "typed";
    return std::string(round::fromText(from)) + (from == "photo" ? "" : ", typed");
}

void printValue(const Json& point) {
    const Json& measured = point["measured"];
    const bool fromPhoto =
        measured.value("from", "") == "photo"; // its uncertainty stands with what was marked
    std::cout << point["name"].get<std::string>() << ": " << measured["value"].get<std::string>();
    if (measured.contains("uncertainty") && !fromPhoto)
        std::cout << " ± " << measured["uncertainty"].get<std::string>();
    std::cout << ' ' << measured["unit"].get<std::string>();
    if (measured.contains("uncertainty") && !fromPhoto) std::cout << " (standard uncertainty)";
    std::cout << ", " << howTaken(measured);
    if (measured.contains("renewed")) std::cout << ", renewed before it";
    std::cout << "; limit " << measured["limit"].get<std::string>() << ": "
              << measured["verdict"].get<std::string>() << '\n';
}

/// The values that count, as the record has them.
Json valuesIn(const Json& content) {
    Json values = Json::array();
    for (const Json& point : content["points"]) {
        if (!point.contains("measured")) continue;
        Json one = point["measured"];
        one["point"] = point["id"];
        one["name"] = point["name"];
        values.push_back(std::move(one));
    }
    return values;
}

Result<std::vector<round::Event>> eventsIn(const Json& content) {
    std::vector<round::Event> events;
    events.reserve(content["events"].size());
    for (const Json& one : content["events"]) {
        auto event = round::eventFrom(one);
        if (!event) return tl::unexpected(event.error());
        events.push_back(std::move(*event));
    }
    return events;
}

} // namespace

int measure(const MeasureOptions& options) {
    const Drawing drawing; // for reading photos
    const auto all = readAll(options);
    if (!all) return complain(all.error());
    const Json& content = all->report.content;
    const auto events = eventsIn(content);
    if (!events) return complain(events.error());
    std::vector<Again> measurements;
    for (const round::Event& event : *events)
        if (const auto* settled = std::get_if<round::Settled>(&event.what))
            for (const round::Measurement& one : settled->measurements)
                measurements.push_back(lookedAt(settled->point, event.seq, one, all->photos));
    const bool good =
        std::all_of(measurements.begin(), measurements.end(), [](const Again& one) { return one.isGood(); });
    if (options.json) {
        Json list = Json::array();
        for (const Again& one : measurements)
            list.push_back(toJson(one));
        std::cout << Json{{"record", all->report.sha256},
                          {"ok", good},
                          {"values", valuesIn(content)},
                          {"measurements", std::move(list)}}
                  << '\n';
        return good ? Exit::done : Exit::refused;
    }
    std::map<std::string, std::string> names;
    for (const Json& point : content["points"]) {
        names[point["id"]] = point["name"];
        if (point.contains("measured")) printValue(point);
    }
    for (const Again& one : measurements)
        print(one, names[one.point]);
    if (measurements.empty()) std::cout << "Nothing was measured in a photo.\n";
    if (!good) std::cerr << "ambit: not everything measured is as the record says.\n";
    return good ? Exit::done : Exit::refused;
}

} // namespace ambit::cli
