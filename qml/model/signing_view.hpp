// The keys of the people who use this device, the signature that seals a round, and the one under another's.
#pragma once

#include "model/round_view.hpp"

namespace ambit::view {

class SigningView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    Q_PROPERTY(bool keyExists READ keyExists NOTIFY keyChanged)
    /// {id (SHA-256 of its certificate), name (whose it is), fingerprint (the same in groups of four
    /// digits)}: the first made in front.
    Q_PROPERTY(QVariantList keys MEMBER keys NOTIFY keyChanged)
    /// Of the record just sealed; "" before.
    Q_PROPERTY(QString recordId READ recordId NOTIFY recordIdChanged)
public:
    SigningView(const Services& services, Report report, QObject* parent);

    /// Makes a person's key. At least 8 bytes of passphrase; refused if they have one here already.
    Q_INVOKABLE bool newKey(const QString& name, const QString& passphrase);
    /// Id of this person's key; "": they have none here.
    Q_INVOKABLE [[nodiscard]] QString keyOf(const QString& name) const;
    /// Signs the concluded round, its pages too, and seals it: takes some hundred milliseconds. `key`: its
    /// id;
    /// "": that of who walked, else the first.
    Q_INVOKABLE bool sign(const QString& passphrase, const QString& key = {});
    /// Puts another signature under a record, its PDF too. `signature`: {role, certificate, passphrase, key}.
    Q_INVOKABLE bool countersign(const QString& recordId, const QVariantMap& signature);

    void setRound(RoundView* view); ///< nullptr: none
    /// For whatever else is signed; `key`: its id, "": the first.
    [[nodiscard]] Result<record::Signer> unlock(const QString& passphrase, const QString& key) const;
    [[nodiscard]] bool keyExists() const { return !keys.isEmpty(); }
    [[nodiscard]] QString recordId() const { return record; }

signals:
    void keyChanged();
    void recordIdChanged();
    void sealed();
    void countersigned(const QString& recordId);

private:
    void readKeys();
    void readKey(const std::filesystem::path& file);
    [[nodiscard]] Result<void> make(const std::string& whose, const std::string& passphrase) const;
    [[nodiscard]] Result<std::string> seal(const QString& passphrase, const QString& key);
    [[nodiscard]] Result<void> signUnder(const QString& recordId, const QVariantMap& signature);

    const Services* services;
    Report report;
    RoundView* round = nullptr;
    QVariantList keys;
    std::vector<std::filesystem::path> files; ///< of the keys, one for one
    QString record;
};

} // namespace ambit::view
