// The person's key, and the signature that seals a round.
#pragma once

#include "model/round_view.hpp"

namespace ambit::view {

class SigningView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    Q_PROPERTY(bool keyExists READ keyExists NOTIFY keyChanged)
    /// Whose key it is, and the SHA-256 of its certificate in groups of four digits.
    Q_PROPERTY(QString keyName READ keyName NOTIFY keyChanged)
    Q_PROPERTY(QString fingerprint READ fingerprint NOTIFY keyChanged)
    /// Of the record just sealed; "" before.
    Q_PROPERTY(QString recordId READ recordId NOTIFY recordIdChanged)
public:
    SigningView(const Services& services, Report report, QObject* parent);

    /// Makes the key of this device. At least 8 bytes of passphrase; refused if there is a key already.
    Q_INVOKABLE bool newKey(const QString& name, const QString& passphrase);
    /// Signs the concluded round, its pages too, and seals it: takes some hundred milliseconds.
    Q_INVOKABLE bool sign(const QString& passphrase);

    void setRound(RoundView* view); ///< nullptr: none
    /// This device's key, for whatever else is signed.
    [[nodiscard]] Result<record::Signer> unlock(const QString& passphrase) const;
    [[nodiscard]] bool keyExists() const { return !name.isEmpty(); }
    [[nodiscard]] QString keyName() const { return name; }
    [[nodiscard]] QString fingerprint() const { return print; }
    [[nodiscard]] QString recordId() const { return record; }

signals:
    void keyChanged();
    void recordIdChanged();
    void sealed();

private:
    [[nodiscard]] std::filesystem::path keyFile() const;
    void readKey();
    [[nodiscard]] Result<std::string> seal(const QString& passphrase);

    const Services* services;
    Report report;
    RoundView* round = nullptr;
    QString name, print, record;
};

} // namespace ambit::view
