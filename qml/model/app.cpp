#include "model/app.hpp"

#include "airframe/read.hpp"
#include "base/files.hpp"
#include "model/length.hpp"
#include "model/shown_airframe.hpp"
#include "model/words.hpp"

#include <QAbstractItemModel>
#include <QMetaMethod>
#include <QMetaProperty>
#include <QSet>
#include <QSettings>

namespace ambit::view {

namespace {

const QString nightKey = QStringLiteral("night");
const QString leftHandedKey = QStringLiteral("leftHanded");
const QString languageKey = QStringLiteral("language");
const QString nameKey = QStringLiteral("person/name");
const QString roleKey = QStringLiteral("person/role");
const QString certificateKey = QStringLiteral("person/certificate");

Result<std::unique_ptr<const airframe::Airframe>> parsed(std::string_view text) {
    auto airframe = airframe::read(text);
    if (!airframe) return tl::unexpected(airframe.error().front());
    return std::make_unique<const airframe::Airframe>(std::move(*airframe));
}

Services prepared(Services services) {
    services.draw = inEnglish(std::move(services.draw));
    return services;
}

QString keptLanguage(const QSettings* settings) {
    const QString code = settings == nullptr ? QString() : settings->value(languageKey).toString();
    return Language::all().contains(code) ? code : QString();
}

/// As if all of it had changed: whatever shows it asks for it again.
void tellAll(QObject& of) {
    if (auto* rows = qobject_cast<QAbstractItemModel*>(&of); rows != nullptr && rows->rowCount() > 0)
        emit rows->dataChanged(rows->index(0, 0), rows->index(rows->rowCount() - 1, 0));
    QSet<int> told;
    const QMetaObject& its = *of.metaObject();
    for (int i = QObject::staticMetaObject.propertyCount(); i < its.propertyCount(); ++i) {
        const QMetaProperty property = its.property(i);
        if (!property.hasNotifySignal() || told.contains(property.notifySignalIndex())) continue;
        told.insert(property.notifySignalIndex());
        property.notifySignal().invoke(&of, Qt::DirectConnection);
    }
}

} // namespace

App::App(Services handedIn, QObject* parent)
    : QObject(parent), services(prepared(std::move(handedIn))),
      chosenLanguage(keptLanguage(services.settings)), texts(spokenLanguage()),
      background(services.archiveFile), aircraftRows(services, reporter(), this),
      fileView(services, reporter(), this), stateView(services, background, this),
      findingsView(services, stateView, this), besideView(services, reporter(), this),
      searchView(services, background, reporter(), this), historyView(services, background, reporter(), this),
      trendView(services, background, reporter(), this), verificationView(background, reporter(), this),
      retentionView(services, background, reporter(), this),
      exportView(services, background, reporter(), this), signingView(services, reporter(), this),
      sharingView(services, signingView, reporter(), this),
      entryView(services, stateView, signingView, reporter(), this),
      watchView(services, signingView, reporter(), this), habitsHere(services.settings, this),
      daylightHere(services, this), handsView(services, habitsHere, this),
      measureView(services, habitsHere, background, reporter(), this),
      conditionsView(services, habitsHere, daylightHere, this) {
    readLengthsBy(services.lengths);
    who.role = "pilot";
    if (services.settings != nullptr) {
        const QSettings& kept = *services.settings;
        dark = kept.value(nightKey).toBool();
        left = kept.value(leftHandedKey).toBool();
        who = {kept.value(nameKey).toString().toStdString(),
               kept.value(roleKey, QStringLiteral("pilot")).toString().toStdString(),
               kept.value(certificateKey).toString().toStdString()};
    }
    // It follows the light by itself; a touch says otherwise until the light changes again.
    const auto follow = [this] { appear(daylightHere.light() != sky::Light::day); };
    connect(&daylightHere, &Daylight::lightChanged, this, follow);
    if (daylightHere.light() && daylightHere.light() != sky::Light::day) follow();
    connect(&signingView, &SigningView::sealed, this, &App::recordsChanged);
    connect(&signingView, &SigningView::countersigned, this, [this](const QString& recordId) {
        recordsChanged();
        if (fileView.record() != nullptr) fileView.open(recordId); // with the new signature
        sharingView.tellSigned(recordId);
    });
    connect(&signingView, &SigningView::countersigned, &watchView, &WatchView::countersigned);
    connect(&watchView, &WatchView::recordCame, this, [this](const QString& recordId) {
        aircraftRows.refresh();
        fileView.refresh();
        stateView.refresh();
        if (fileView.record() != nullptr && fileView.record()->property("recordId") == recordId)
            fileView.open(recordId); // with the new signature
    });
    connect(&sharingView, &SharingView::countersigned, this, &App::countersigned);
    connect(&entryView, &EntryView::kept, this, &App::recordsChanged);
    connect(&entryView, &EntryView::letWent, this, &App::recordsWent);
    connect(&fileView, &FileView::registrationChanged, this, [this] {
        stateView.show(fileView.registration());
        searchView.clear();
        historyView.show({}, {});
    });
    connect(&stateView, &AircraftFileView::changed, this, &App::tellCarried);
    connect(&historyView, &PointHistoryView::shown, &trendView, &TrendView::show);
    connect(&signingView, &SigningView::keyChanged, this, &App::clearProblem);
    aircraftRows.refresh();
}

App::~App() {
    background.finish(); // its answers go to views that are about to go
    // Before what they borrow goes: screens may be gone already, views are not.
    conditionsView.setRound(nullptr);
    measureView.setRound(nullptr);
    handsView.setRound(nullptr);
    sharingView.setRound(nullptr);
    signingView.setRound(nullptr);
    current.reset();
}

void App::recordsChanged() {
    clearProblem();
    aircraftRows.refresh();
    fileView.refresh();
    stateView.refresh();
    historyView.show({}, {}); // read anew when it is asked for
}

/// A signature came from another device: the record shown bears it, if it is that one.
void App::countersigned(const QString& recordId) {
    recordsChanged();
    if (fileView.record() != nullptr && fileView.record()->property("recordId") == recordId)
        fileView.open(recordId);
}

/// What named them is asked anew.
void App::recordsWent() {
    fileView.close();
    searchView.clear();
    retentionView.look({});
}

/// What the aircraft carries, to the round that is walked on it.
void App::tellCarried() {
    const auto reading = stateView.lastReading();
    if (current && reading && current->registration() == stateView.registration())
        current->setCarried(Carried(reading->file, Unshown::of(current->openRound().state())));
}

Report App::reporter() {
    return [this](const Error& error) { say(error); };
}

void App::say(const Error& error) {
    trouble = text(error.what);
    // A refusal's sentence names the thing; its id would only be noise. A file or a place in one is news.
    const bool known = error.code == ErrorCode::refused || error.where.empty() ||
                       error.what.find(error.where) != std::string::npos;
    if (!known) trouble += QStringLiteral(" (") + text(error.where) + QStringLiteral(")");
    if (!error.remedy.empty()) trouble += QStringLiteral(" ") + text(error.remedy);
    emit problemChanged();
}

void App::clearProblem() {
    if (trouble.isEmpty()) return;
    trouble.clear();
    emit problemChanged();
}

void App::setNight(bool night) {
    if (services.settings != nullptr) services.settings->setValue(nightKey, night);
    appear(night);
}

void App::appear(bool night) {
    if (dark == night) return;
    dark = night;
    emit nightChanged();
}

void App::setLeftHanded(bool leftHanded) {
    if (left == leftHanded) return;
    left = leftHanded;
    if (services.settings != nullptr) services.settings->setValue(leftHandedKey, leftHanded);
    emit leftHandedChanged();
}

QString App::spokenLanguage() const {
    return chosenLanguage.isEmpty() ? Language::firstOf(services.locales) : chosenLanguage;
}

QString App::languageName() const {
    return Language::nameOf(spokenLanguage());
}

void App::nextLanguage() {
    const auto& all = Language::all();
    setLanguage(all.value(all.indexOf(chosenLanguage) + 1)); // "" is at -1, and follows the last
}

void App::setLanguage(const QString& code) {
    if (chosenLanguage == code || (!code.isEmpty() && !Language::all().contains(code))) return;
    chosenLanguage = code;
    if (services.settings != nullptr) services.settings->setValue(languageKey, code);
    texts.speak(spokenLanguage());
    if (lastDescribed) {
        lastDescribed =
            std::make_shared<const airframe::Airframe>(airframeShown(services.archive, *lastDescribed));
        compared.sayIn(lastDescribed);
    }
    emit languageChanged(); // the engine's own texts, and what is asked for with it
    sayAnew();
}

/// What the views have put into words already.
void App::sayAnew() {
    aircraftRows.refresh();
    fileView.refresh();
    stateView.refresh();
    daylightHere.look();
    if (fileView.record() != nullptr) fileView.open(fileView.record()->property("recordId").toString());
    besideView.sayAnew();
    trendView.sayAnew();
    watchView.sayAnew();
    if (current) current->sayAnew();
    for (QObject* view : findChildren<QObject*>())
        tellAll(*view);
    if (!current) return;
    tellAll(*current);
    for (QObject* view : current->findChildren<QObject*>())
        tellAll(*view);
}

QVariantList App::roles() const {
    QVariantList list;
    for (const char* role : {"pilot", "instructor", "owner", "mechanic"})
        list << QVariantMap{{QStringLiteral("id"), QString::fromLatin1(role)},
                            {QStringLiteral("name"), roleText(role)}};
    return list;
}

// --- aircraft and airframes -------------------------------------------------------------------------------

Result<archive::Aircraft> App::aircraftOf(const QString& registration) const {
    auto all = services.archive.aircraft();
    if (!all) return tl::unexpected(all.error());
    const std::string wanted = registration.toStdString();
    const auto found =
        std::find_if(all->begin(), all->end(), [&](const auto& one) { return one.registration == wanted; });
    if (found == all->end())
        return fail(ErrorCode::notFound, ambit::say("There is no such aircraft here."), wanted);
    return *found;
}

Result<std::unique_ptr<const airframe::Airframe>> App::airframeOf(const std::string& sha256) const {
    const auto description = services.archive.airframeText(sha256);
    if (!description) return tl::unexpected(description.error());
    return parsed(*description);
}

const airframe::Airframe* App::described(const QString& registration) {
    if (registration.isEmpty()) return nullptr; // nothing is chosen yet
    const auto aircraft = aircraftOf(registration);
    if (!aircraft) {
        say(aircraft.error());
        return nullptr;
    }
    if (lastDescribed && lastDescribed->sha256 == aircraft->airframeSha256) return lastDescribed.get();
    auto airframe = airframeShown(services.archive, aircraft->airframeSha256);
    if (!airframe) {
        say(airframe.error());
        return nullptr;
    }
    lastDescribed = std::make_shared<const airframe::Airframe>(std::move(*airframe));
    return lastDescribed.get();
}

QVariantList App::walks(const QString& registration) {
    QVariantList list;
    if (const auto* airframe = described(registration))
        for (const auto& walk : airframe->walks)
            list << QVariantMap{{QStringLiteral("id"), text(walk.id)},
                                {QStringLiteral("name"), text(walk.name)},
                                {QStringLiteral("about"), text(walk.about)},
                                {QStringLiteral("points"), static_cast<int>(walk.points.size())}};
    return list;
}

QVariantList App::counters(const QString& registration) {
    QVariantList list;
    const auto* airframe = described(registration);
    if (airframe == nullptr) return list;
    std::map<std::string, std::string> last;
    if (const auto rounds = services.archive.rounds(registration.toStdString()); rounds && !rounds->empty())
        if (const auto events = services.archive.events(rounds->front().id); events && !events->empty())
            if (const auto* opened = std::get_if<round::Opened>(&events->front().what))
                for (const auto& reading : opened->counters)
                    last.emplace(reading.id, reading.value);
    for (const auto& counter : airframe->counters)
        list << QVariantMap{{QStringLiteral("id"), text(counter.id)},
                            {QStringLiteral("name"), text(counter.name)},
                            {QStringLiteral("label"), withUnit(text(counter.name), unitText(counter.unit))},
                            {QStringLiteral("last"), text(last[counter.id])}};
    return list;
}

QStringList App::cautions(const QString& registration) {
    QStringList list;
    if (const auto* airframe = described(registration))
        for (const auto& caution : airframe->cautions)
            list << text(caution);
    return list;
}

QString App::notice(const QString& registration) {
    const auto* airframe = described(registration);
    return airframe == nullptr ? QString() : text(airframe->notice);
}

void App::compareWalk(const QString& registration, const QString& walkId) {
    const bool known = described(registration) != nullptr;
    compared.show(known ? lastDescribed : nullptr, walkId.toStdString());
}

bool App::addAircraft(const QUrl& airframeFile, const QString& registration, const QString& serial) {
    const auto added = [&]() -> Result<void> {
        const std::string mark = registration.trimmed().toStdString();
        if (mark.empty())
            return fail(ErrorCode::refused, ambit::say("The aircraft has no registration."), "",
                        ambit::say("Write what is painted on it."));
        const QString path =
            airframeFile.isLocalFile() ? airframeFile.toLocalFile() : airframeFile.toString();
        const auto description = readFile(path.toStdString());
        if (!description) return tl::unexpected(description.error());
        const auto airframe = parsed(*description);
        if (!airframe) return tl::unexpected(airframe.error());
        return services.archive.addAircraft(
            {mark, serial.trimmed().toStdString(), (*airframe)->sha256, (*airframe)->name}, *description);
    }();
    if (!added) {
        say(added.error());
        return false;
    }
    clearProblem();
    aircraftRows.refresh();
    return true;
}

void App::remember(const round::Person& person) {
    who = person;
    if (services.settings != nullptr) {
        services.settings->setValue(nameKey, personName());
        services.settings->setValue(roleKey, personRole());
        services.settings->setValue(certificateKey, personCertificate());
    }
    emit personChanged();
}

} // namespace ambit::view
