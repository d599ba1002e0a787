// What Main.qml is given: every screen's values hang from here.
#pragma once

#include "model/aircraft_file_view.hpp"
#include "model/aircraft_model.hpp"
#include "model/beside_view.hpp"
#include "model/conditions_view.hpp"
#include "model/entry_view.hpp"
#include "model/export_view.hpp"
#include "model/file_view.hpp"
#include "model/hands_view.hpp"
#include "model/language.hpp"
#include "model/measure_view.hpp"
#include "model/plan_comparison.hpp"
#include "model/point_history_view.hpp"
#include "model/retention_view.hpp"
#include "model/round_view.hpp"
#include "model/search_view.hpp"
#include "model/sharing_view.hpp"
#include "model/signing_view.hpp"
#include "model/trend_view.hpp"
#include "model/verification_view.hpp"
#include "model/watch_view.hpp"
#include "model/zone_findings.hpp"

namespace ambit::view {

class App : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("main makes it")
    Q_PROPERTY(ambit::view::AircraftModel* aircraft READ aircraft CONSTANT)
    /// The round in hand; null if none.
    Q_PROPERTY(ambit::view::RoundView* round READ round NOTIFY roundChanged)
    Q_PROPERTY(ambit::view::FileView* file READ file CONSTANT)
    /// What the records of the aircraft whose file it is say together.
    Q_PROPERTY(ambit::view::AircraftFileView* aircraftFile READ aircraftFile CONSTANT)
    // Looking into the records of that aircraft.
    Q_PROPERTY(ambit::view::SearchView* search READ search CONSTANT)
    Q_PROPERTY(ambit::view::PointHistoryView* pointHistory READ pointHistory CONSTANT)
    /// Of the point whose history it is.
    Q_PROPERTY(ambit::view::TrendView* trend READ trend CONSTANT)
    Q_PROPERTY(ambit::view::VerificationView* verification READ verification CONSTANT)
    Q_PROPERTY(ambit::view::RetentionView* retention READ retention CONSTANT)
    Q_PROPERTY(ambit::view::ExportView* exporting READ exporting CONSTANT)
    Q_PROPERTY(ambit::view::ZoneFindings* zoneFindings READ zoneFindings CONSTANT)
    /// Two rounds of the same walk.
    Q_PROPERTY(ambit::view::BesideView* beside READ beside CONSTANT)
    /// Signs what is said between rounds.
    Q_PROPERTY(ambit::view::EntryView* entries READ entries CONSTANT)
    Q_PROPERTY(ambit::view::SigningView* signing READ signing CONSTANT)
    /// Following others.
    Q_PROPERTY(ambit::view::WatchView* watch READ watch CONSTANT)
    /// Who follows the round in hand from another device.
    Q_PROPERTY(ambit::view::SharingView* sharing READ sharing CONSTANT)
    Q_PROPERTY(ambit::view::Daylight* daylight READ daylight CONSTANT)
    /// How whoever uses this device wants to be asked.
    Q_PROPERTY(ambit::view::Habits* habits READ habits CONSTANT)
    /// The round in hand where no hand is free for it, or one.
    Q_PROPERTY(ambit::view::HandsView* hands READ hands CONSTANT)
    /// The photo in hand, and what is measured in it.
    Q_PROPERTY(ambit::view::MeasureView* measure READ measure CONSTANT)
    /// What comes between: interruptions, the night.
    Q_PROPERTY(ambit::view::ConditionsView* conditions READ conditions CONSTANT)
    /// Of the walk that compareWalk() was told.
    Q_PROPERTY(ambit::view::PlanComparison* comparison READ comparison CONSTANT)
    /// What last went wrong or was refused, where, and what to do; "" if nothing. Shown until clearProblem()
    /// or the next touch that works.
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)
    Q_PROPERTY(bool night READ night WRITE setNight NOTIFY nightChanged)
    // Who walked last, to begin with next time.
    Q_PROPERTY(QString personName READ personName NOTIFY personChanged)
    Q_PROPERTY(QString personRole READ personRole NOTIFY personChanged)
    Q_PROPERTY(QString personCertificate READ personCertificate NOTIFY personChanged)
    /// {id, name}: the roles a person can have.
    Q_PROPERTY(QVariantList roles READ roles NOTIFY languageChanged)
    /// What the thumb reaches stands on the left.
    Q_PROPERTY(bool leftHanded READ leftHanded WRITE setLeftHanded NOTIFY leftHandedChanged)
    /// ISO 639; "": the device's.
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged)
    /// "Deutsch"; of the device's, too.
    Q_PROPERTY(QString languageName READ languageName NOTIFY languageChanged)
public:
    explicit App(Services services, QObject* parent = nullptr);
    ~App() override;

    Q_INVOKABLE void clearProblem();
    /// {id, name, about, points (int)}
    Q_INVOKABLE [[nodiscard]] QVariantList walks(const QString& registration);
    /// {id, name, unit, last (decimal string; "" if never read)}
    Q_INVOKABLE [[nodiscard]] QVariantList counters(const QString& registration);
    Q_INVOKABLE [[nodiscard]] QStringList cautions(const QString& registration);
    Q_INVOKABLE [[nodiscard]] QString notice(const QString& registration);
    /// This way round against as listed: fills `comparison`, now or a little later. "": no walk.
    Q_INVOKABLE void compareWalk(const QString& registration, const QString& walkId);
    /// Starts a round; `round` is it then. `counters`: id → decimal string; empty ones are left out. `alone`:
    /// what others found today is not shown in it.
    Q_INVOKABLE bool begin(const QString& registration, const QString& walkId, const QString& name,
                           const QString& role, const QString& certificate, const QVariantMap& counters,
                           bool alone = false);
    /// Goes on exactly where the round was left.
    Q_INVOKABLE bool resume(const QString& roundId);
    /// `round` is null then; what was walked stays.
    Q_INVOKABLE void leaveRound();
    Q_INVOKABLE bool addAircraft(const QUrl& airframeFile, const QString& registration,
                                 const QString& serial);

    [[nodiscard]] AircraftModel* aircraft() { return &aircraftRows; }
    [[nodiscard]] RoundView* round() const { return current.get(); }
    [[nodiscard]] MeasureView* measure() { return &measureView; }
    [[nodiscard]] PlanComparison* comparison() { return &compared; }
    [[nodiscard]] FileView* file() { return &fileView; }
    [[nodiscard]] AircraftFileView* aircraftFile() { return &stateView; }
    [[nodiscard]] SearchView* search() { return &searchView; }
    [[nodiscard]] PointHistoryView* pointHistory() { return &historyView; }
    [[nodiscard]] TrendView* trend() { return &trendView; }
    [[nodiscard]] VerificationView* verification() { return &verificationView; }
    [[nodiscard]] RetentionView* retention() { return &retentionView; }
    [[nodiscard]] ExportView* exporting() { return &exportView; }
    [[nodiscard]] ZoneFindings* zoneFindings() { return &findingsView; }
    [[nodiscard]] BesideView* beside() { return &besideView; }
    [[nodiscard]] EntryView* entries() { return &entryView; }
    [[nodiscard]] SigningView* signing() { return &signingView; }
    [[nodiscard]] WatchView* watch() { return &watchView; }
    [[nodiscard]] const std::filesystem::path& watchedFile() const { return services.watchedFile; }
    [[nodiscard]] SharingView* sharing() { return &sharingView; }
    [[nodiscard]] Daylight* daylight() { return &daylightHere; }
    [[nodiscard]] Habits* habits() { return &habitsHere; }
    [[nodiscard]] HandsView* hands() { return &handsView; }
    [[nodiscard]] ConditionsView* conditions() { return &conditionsView; }
    [[nodiscard]] QString problem() const { return trouble; }
    [[nodiscard]] bool night() const { return dark; }
    void setNight(bool night); ///< until the light changes
    [[nodiscard]] QString personName() const { return QString::fromStdString(who.name); }
    [[nodiscard]] QString personRole() const { return QString::fromStdString(who.role); }
    [[nodiscard]] QString personCertificate() const { return QString::fromStdString(who.certificate); }
    [[nodiscard]] QVariantList roles() const;
    [[nodiscard]] bool leftHanded() const { return left; }
    void setLeftHanded(bool leftHanded);
    [[nodiscard]] QString language() const { return chosenLanguage; }
    [[nodiscard]] QString languageName() const;
    void setLanguage(const QString& code); ///< one that there are no texts for changes nothing
    Q_INVOKABLE void nextLanguage();       ///< the device's, then each there is

    void say(const Error& error); ///< puts it into `problem`

signals:
    void roundChanged();
    void problemChanged();
    void nightChanged();
    void personChanged();
    void leftHandedChanged();
    void languageChanged();

private:
    [[nodiscard]] Report reporter();
    [[nodiscard]] Result<archive::Aircraft> aircraftOf(const QString& registration) const;
    [[nodiscard]] Result<std::unique_ptr<const airframe::Airframe>> ///< as recorded
    airframeOf(const std::string& sha256) const;
    [[nodiscard]] const airframe::Airframe*
    described(const QString& registration); ///< as shown; kept until another is asked for
    [[nodiscard]] Result<void> goOn(const std::string& roundId);
    void take(std::unique_ptr<const airframe::Airframe> airframe, archive::OpenRound round);
    void remember(const round::Person& person);
    void appear(bool night); ///< not remembered
    void recordsChanged();
    void countersigned(const QString& recordId);
    void recordsWent();
    void tellCarried();
    void readSeries(); ///< what was measured on the aircraft before, beside the screen
    void sayAnew();
    [[nodiscard]] QString spokenLanguage() const;

    Services services;
    QString chosenLanguage;
    Language texts; ///< before the views, which ask for words as they are made
    Background background;
    QString trouble;
    bool dark = false;
    round::Person who;
    std::shared_ptr<const airframe::Airframe> lastDescribed;
    AircraftModel aircraftRows;
    PlanComparison compared;
    FileView fileView;
    AircraftFileView stateView;
    ZoneFindings findingsView;
    BesideView besideView;
    SearchView searchView;
    PointHistoryView historyView;
    TrendView trendView;
    VerificationView verificationView;
    RetentionView retentionView;
    ExportView exportView;
    SigningView signingView;
    SharingView sharingView;
    EntryView entryView;
    WatchView watchView;
    Habits habitsHere;
    Daylight daylightHere;
    HandsView handsView;
    MeasureView measureView;
    ConditionsView conditionsView;
    std::unique_ptr<RoundView> current;
    bool left = false;
};

} // namespace ambit::view
