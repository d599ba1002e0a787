#include "measured_round.hpp"

#include "base/hash.hpp"
#include "paper/fonts.hpp"
#include "paper/pages.hpp"
#include "round/trended.hpp"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <nlohmann/json.hpp>

namespace ambit::test {

namespace {

using round::Settled;

constexpr int photoWidth = 1600;
constexpr int photoHeight = 1200;

/// A card and two scratches on a grey plate, seen from straight above, 10 pixels a millimetre.
std::string plate() {
    QImage picture(photoWidth, photoHeight, QImage::Format_RGB32);
    picture.fill(QColor(0x70, 0x74, 0x78));
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(0xf0, 0xf0, 0xe8));
    // Pixels are counted from the first one's middle, and drawn from its corner.
    painter.drawRoundedRect(QRectF(100.5, 100.5, 856, 539.8), 31.8, 31.8);
    painter.setPen(QPen(Qt::black, 6));
    painter.drawLine(300, 760, 300, 840);
    painter.drawLine(350, 760, 350, 840);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    picture.save(&buffer, "jpeg", 90);
    return bytes.toStdString();
}

round::Photo kept(TestRound& round, const std::string& bytes) {
    const std::string hash = sha256Hex(bytes);
    round.photos[hash] = bytes;
    return {hash, "image/jpeg", static_cast<std::int64_t>(bytes.size())};
}

/// Shoes that wear from flight to flight, renewed once.
round::Trended worn(const airframe::Airframe& airframe, const airframe::Point& point,
                    const std::string& last) {
    std::vector<round::Past> past;
    for (int i = 0; i < 12; ++i) {
        const double worn = i < 5 ? 5.2 - 0.21 * i : 6.9 - 0.17 * (i - 5) + (i % 3 - 1) * 0.06;
        past.push_back({{1781000000000 + 86400000LL * i},
                        {{"airframe-hours", fixed(1200 + 7.05 * i, 1)}},
                        i == 11 ? last : fixed(worn, 2),
                        i == 11 ? "in" : "mm",
                        i == 11      ? "0.003"
                        : i % 2 == 1 ? "0.09"
                                     : "",
                        i == 5,
                        "Robin Example",
                        i % 2 == 0 ? ""
                        : i < 5    ? "ruler"
                                   : "photo"});
    }
    const auto course = round::courseOf(airframe, point, past);
    if (!course) qFatal("%s", toText(course.error()).c_str());
    return course->told;
}

template<class Value> Value sure(Result<Value> result) {
    if (!result) qFatal("%s", toText(result.error()).c_str());
    return std::move(*result);
}

} // namespace

round::Measurement fiveMillimetres(const round::Photo& photo) {
    round::Measurement its;
    its.what = round::Measurement::What::distance;
    its.photo = photo.sha256;
    its.width = photoWidth;
    its.height = photoHeight;
    its.card = round::CardSeen{{{"100", "100"}, {"956", "100"}, {"956", "639.80"}, {"100", "639.80"}},
                               "0.50",
                               false,
                               {},
                               measure::Lies::longSideFirst};
    its.marks = {{"300", "800"}, {"350", "800"}};
    its.deviation = "1.00";
    const auto estimate = round::computed(its);
    if (!estimate) qFatal("%s", toText(estimate.error()).c_str());
    round::write(its, *estimate);
    return its;
}

TestRound measuredRound(bool wrong) {
    airframe::Airframe helicopter = demoHelicopter();
    for (airframe::Point& point : helicopter.points)
        if (point.base == "skid-shoe")
            point.limit->trend = airframe::Trend{"airframe-hours", *Decimal::parse("3"), false};
    TestRound round = walked(helicopter);
    const round::Photo photo = kept(round, plate());
    std::vector<round::Event> events;
    const auto add = [&](Instant at, round::What what) {
        events.push_back({static_cast<std::int64_t>(events.size()) + 1, at, std::move(what)});
    };
    bool photographed = false, found = false, shoe = false;
    for (round::Event& event : round.events) {
        auto* settled = std::get_if<Settled>(&event.what);
        const airframe::Point* point = settled == nullptr ? nullptr : helicopter.point(settled->point);
        if (point != nullptr && settled->outcome == round::Outcome::sound && !point->limit && !photographed) {
            settled->photos = {kept(round, image(640, 480, 91))};
            photographed = true;
        }
        if (point != nullptr && settled->outcome == round::Outcome::finding && !found) {
            settled->photos.push_back(photo);
            settled->measurements = {fiveMillimetres(photo)};
            found = true;
        }
        if (point == nullptr || point->base != "skid-shoe") {
            add(event.at, event.what);
            continue;
        }
        if (!shoe) {
            shoe = true;
            settled->photos = {kept(round, plate() + "2")};
            settled->measurements = {fiveMillimetres(settled->photos.front())};
            if (wrong) settled->measurements.front().value = "5.50";
            settled->value = settled->measurements.front().value;
            settled->byPhoto = true;
            settled->renewed = true;
            add(event.at, event.what);
            continue;
        }
        settled->value = "0.225";
        settled->unit = "in";
        add(event.at, event.what);
        add(event.at, worn(helicopter, *point, *settled->value));
    }
    round.events = events;
    round.airframe = helicopter;
    const auto content = record::roundContent(helicopter, events, {});
    if (!content) qFatal("%s", toText(content.error()).c_str());
    round.content = *content;
    return round;
}

Files signedFiles(const TestRound& round) {
    const auto key = sure(
        record::unlock(sure(record::newKeyFile("Robin Example", "for this test", {0})), "for this test"));
    if (const auto fonts = paper::loadFonts(); !fonts) qFatal("%s", toText(fonts.error()).c_str());
    const auto drawn =
        sure(paper::drawRecord(round.content, &round.airframe, round.photos, key.certificate()));
    Files files;
    files.json = sure(record::signRecord(round.content, key));
    files.pdf = sure(record::signPdf(drawn.pages, files.json, drawn.jpeg, key));
    return files;
}

} // namespace ambit::test
