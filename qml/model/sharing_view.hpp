// The walker's end of a live watch: who follows the round in hand, who may, and how another device is let in.
#pragma once

#include "model/signing_view.hpp"

#include <QElapsedTimer>
#include <QTimer>
#include <memory>

namespace ambit::view {

class SharingView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// There is a network to do it by.
    Q_PROPERTY(bool possible READ possible CONSTANT)
    Q_PROPERTY(bool open READ isOpen NOTIFY openChanged)
    /// {id (SHA-256 of the certificate), name, fingerprint, connection (string), behind (events of the round
    /// in hand that the other device has not said it has stored; it says so a second after the last one)}:
    /// who follows now, each device once.
    Q_PROPERTY(QVariantList watching READ watching NOTIFY watchingChanged)
    /// "Kim Example follows", "Kim Example and Ines Example follow", "3 follow"; "": nobody.
    Q_PROPERTY(QString watchingText READ watchingText NOTIFY watchingTextChanged)
    /// {id, name, fingerprint, here (bool: follows now)}: who is let in without a code.
    Q_PROPERTY(QVariantList known READ known NOTIFY knownChanged)
    /// Of the open invitation: the QR code as a data URL; "": none is open.
    Q_PROPERTY(QString codePicture READ codePicture NOTIFY codeChanged)
    /// The same to be typed, in groups of four; "": none is open, or this device has no IPv4 address.
    Q_PROPERTY(QString codeText READ codeText NOTIFY codeChanged)
    /// How long it still lets somebody in; 0: none is open.
    Q_PROPERTY(int codeSeconds READ codeSeconds NOTIFY codeSecondsChanged)
    /// Who was not let in, or broke a rule, when and why: "07:42 · 192.168.1.7 Kim Example: …". "": nobody
    /// since the last invitation.
    Q_PROPERTY(QString lastRefusal READ lastRefusal NOTIFY lastRefusalChanged)
    /// What followers say is read aloud, too, where there is a voice.
    Q_PROPERTY(bool readAloud READ readAloud WRITE setReadAloud NOTIFY readAloudChanged)
    Q_PROPERTY(bool hasVoice READ hasVoice CONSTANT)
public:
    /// The services and the signing view must outlive it.
    SharingView(const Services& services, const SigningView& signing, Report report, QObject* parent);
    ~SharingView() override;

    /// Opens the link, certified by this key (`key`: its id, "": the first). The key is locked again at once.
    Q_INVOKABLE bool start(const QString& passphrase, const QString& key);
    /// Nobody follows any more. Who may, may again when it is started again.
    Q_INVOKABLE void stop();
    /// Shows a code that lets one device in, once, within five minutes; the one before it is dead.
    Q_INVOKABLE bool invite();
    Q_INVOKABLE void putCodeAway();
    /// This device is let in no more, and its connection ends.
    Q_INVOKABLE void takeBack(const QString& id);

    void setRound(RoundView* view); ///< nullptr: none
    /// A record was signed once more on this device: followers are told, if it is the round's in hand.
    void tellSigned(const QString& recordId);

    [[nodiscard]] bool possible() const;
    [[nodiscard]] bool isOpen() const { return link != nullptr; }
    [[nodiscard]] QVariantList watching() const;
    [[nodiscard]] QString watchingText() const { return watchingWords; }
    [[nodiscard]] QVariantList known() const;
    [[nodiscard]] QString codePicture() const { return picture; }
    [[nodiscard]] QString codeText() const { return typed; }
    [[nodiscard]] int codeSeconds() const;
    [[nodiscard]] QString lastRefusal() const { return refusal; }
    [[nodiscard]] bool readAloud() const { return isAloud; }
    void setReadAloud(bool aloud);
    [[nodiscard]] bool hasVoice() const { return services->speak && services->speak({}); }

signals:
    void openChanged();
    void watchingChanged();
    void watchingTextChanged();
    void knownChanged();
    void codeChanged();
    void codeSecondsChanged();
    void lastRefusalChanged();
    void readAloudChanged();
    /// A record here has one more signature, from another device.
    void countersigned(const QString& recordId);

private:
    void listen();
    void handOver();
    void post();
    void take(std::vector<watch::Watcher> now);
    void hear(std::uint64_t connection, const watch::Say& what, const record::Certificate& by);
    void keep(std::uint64_t connection, const std::string& id, const std::string& recordSha256,
              const std::vector<std::string>& files);
    void speak(const round::Statement& said) const;
    void refuse(const QString& whose, const Error& why);
    void forgetCode();
    void forgetRefusal();
    [[nodiscard]] Result<void> showCode();

    const Services* services;
    const SigningView* signing;
    Report report;
    RoundView* round = nullptr;
    bool isAloud = true;
    std::size_t posted = 0;  ///< events of the round in hand that the link knows, or reads from the archive
    std::string roundRecord; ///< of the round that the link has in hand; "": not sealed
    /// What the link's thread has said and is not heard yet goes with this: it outlives the link, and no
    /// more.
    std::unique_ptr<QObject> ears;
    std::unique_ptr<LinkToWatchers> link;
    std::vector<watch::Watcher> watchers; ///< the latest connection of each
    std::vector<watch::Peer> peers;
    QString watchingWords;
    QString picture, typed, refusal;
    QElapsedTimer codeShown;
    QTimer second;
};

} // namespace ambit::view
