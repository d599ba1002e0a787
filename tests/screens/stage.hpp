// What a screen test stands on: a fresh archive with the demo aircraft, a clock that stands still until it is
// moved, and the app over them.
#pragma once

#include "../view/fake_link.hpp"
#include "../view/played_link.hpp"
#include "model/app.hpp"

#include "script/asker.hpp"

#include <QQuickWindow>
#include <QTemporaryDir>
#include <map>
#include <memory>

namespace ambit::test {

/// In QML: `import AmbitTest`, then Stage.fresh() in init() and Stage.app.
class Stage : public QObject {
    Q_OBJECT
    /// As Main.qml is given it. Another one after each fresh().
    Q_PROPERTY(ambit::view::App* app READ app NOTIFY appChanged)
    /// Of the round in hand: the kind of each event ("opened", "stand", "settled", …).
    Q_PROPERTY(QStringList events READ events)
    /// What the hand felt since fresh(): "taken" "refused" "lookUp".
    Q_PROPERTY(QStringList felt READ felt)
    /// A folder for exports, empty after fresh().
    Q_PROPERTY(QString outFolder READ outFolder)
    /// Where pictures of what is shown go: the environment's AMBIT_SHOTS; "": none are taken.
    Q_PROPERTY(QString shotsFolder READ shotsFolder CONSTANT)
    /// What the last invitation's QR code says.
    Q_PROPERTY(QString invitation READ invitation)
    /// What the link to watchers was told: "committed 4", "takeBack <certificate>" …
    Q_PROPERTY(QStringList linkCalls READ linkCalls)
    /// What was read aloud since fresh().
    Q_PROPERTY(QStringList spoken READ spokenWords)
    /// There is an engine that reads aloud.
    Q_PROPERTY(bool voice MEMBER hasVoice)
public:
    Stage();
    ~Stage() override;

    /// Nothing is remembered from before; 20 June 2026, 07:30 at +02:00. Every item that uses the old app
    /// must be gone.
    Q_INVOKABLE void fresh();
    Q_INVOKABLE void advance(int seconds) { clock.at.ms += std::int64_t{1000} * seconds; }
    /// Does what the card says, settling sound, until this point is on the card; "" until all is settled. To
    /// get somewhere quickly, not to test the way.
    Q_INVOKABLE bool walkTo(const QString& pointId);
    /// One step of that.
    Q_INVOKABLE bool walkOn();
    /// Somebody who follows says it, signed with their own key: kind "lookAgain" "question" "remark". "" or
    /// why it was refused.
    Q_INVOKABLE QString ask(const QString& kind, const QString& point, const QString& words,
                            const QString& who = QStringLiteral("Ines Example"));
    /// Another person's device comes to follow: by the open code, if it wasn't known. False: nothing is open.
    Q_INVOKABLE bool follow(const QString& name);
    Q_INVOKABLE void leave(const QString& name);
    /// Somebody at the door is turned away.
    Q_INVOKABLE void refuse(const QString& who, const QString& why);
    /// What would be typed to follow somebody's device. Their round is the one in hand here.
    Q_INVOKABLE [[nodiscard]] static QString codeToFollow();
    /// The one who is followed (1: the first who was joined) has told so many events of the round in hand
    /// here.
    Q_INVOKABLE bool hear(int walker, const QString& who, int events);
    /// And has signed it: the record that was signed here.
    Q_INVOKABLE bool hearRecord(int walker);
    /// There is no connection to them for now.
    Q_INVOKABLE void lose(int walker);
    /// What a QR code in a picture says; "": there is none.
    Q_INVOKABLE static QString readQr(const QString& pictureFile);
    /// Of what a window shows: relative luminance (WCAG 2.2, from memory), {most, mean}.
    Q_INVOKABLE static QVariantMap light(QQuickWindow* window);
    /// What a window shows, into the folder for pictures.
    Q_INVOKABLE static void shoot(QQuickWindow* window, const QString& name);
    /// A photo of the demo aircraft, as a file URL.
    Q_INVOKABLE [[nodiscard]] QUrl photo(const QString& name) const;
    /// A drawn photo, straight from above, 2000 × 1500, 10 pixels a millimetre: a card, and two dark dots 20
    /// mm apart at (1300, 700) and (1500, 700). A path.
    Q_INVOKABLE [[nodiscard]] QString cardPhoto() const;
    /// What the log of the round in hand says last of a point: the event as JSON.
    Q_INVOKABLE [[nodiscard]] QString lastSettled(const QString& point) const;
    /// And of where it is going; "": nothing was told.
    Q_INVOKABLE [[nodiscard]] QString lastTrend(const QString& point) const;

    [[nodiscard]] view::App* app() const { return current.get(); }
    [[nodiscard]] QStringList events() const;
    [[nodiscard]] QString invitation() const;
    [[nodiscard]] QStringList spokenWords() const { return spoken; }
    [[nodiscard]] QStringList felt() const { return feelings; }
    [[nodiscard]] QStringList linkCalls() const { return network.calls; }
    [[nodiscard]] static QString shotsFolder() { return qEnvironmentVariable("AMBIT_SHOTS"); }
    [[nodiscard]] QString outFolder() const { return folder->filePath(QStringLiteral("out")); }
    /// That of the app: for photos. Set anew by fresh().
    [[nodiscard]] const archive::Archive& store() const { return *archive; }
    [[nodiscard]] const archive::Archive& watchedStore() const { return *watched; }

signals:
    void appChanged();

private:
    LocalInstant clock;
    QStringList spoken;
    bool hasVoice = true;
    std::unique_ptr<QTemporaryDir> folder;
    std::unique_ptr<archive::Archive> archive;
    Network network;                           ///< before the app, which may hold a link of it
    std::unique_ptr<archive::Archive> watched; ///< what comes of those who are followed
    PlayedLink* toWalkers = nullptr;           ///< while others may be followed
    std::map<int, std::size_t> heardOf;        ///< events that each has told
    std::unique_ptr<view::App> current;
    QStringList feelings;
    script::Asker asker{{}}; ///< keys are made once: that takes a while
};

} // namespace ambit::test
