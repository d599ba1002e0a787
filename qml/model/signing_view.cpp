#include "model/signing_view.hpp"

#include "archive/sealing.hpp"
#include "base/files.hpp"
#include "model/said.hpp"
#include "model/words.hpp"

#include <algorithm>

namespace ambit::view {

namespace {

/// The first one's, so that it is found where it always was; others bear their fingerprint's first digits.
const std::string firstKey = "signer.pem";

/// Key files of this device, the first one made in front.
std::vector<std::filesystem::path> keyFiles(const std::filesystem::path& folder) {
    std::vector<std::filesystem::path> found;
    std::error_code failed;
    for (const auto& entry : std::filesystem::directory_iterator(folder, failed))
        if (entry.path().extension() == ".pem") found.push_back(entry.path());
    std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
        const bool isFirst = a.filename() == firstKey;
        return isFirst != (b.filename() == firstKey) ? isFirst : a < b;
    });
    return found;
}

} // namespace

SigningView::SigningView(const Services& handedIn, Report whereTo, QObject* parent)
    : QObject(parent), services(&handedIn), report(std::move(whereTo)) {
    readKeys();
}

void SigningView::readKeys() {
    keys.clear();
    files.clear();
    for (const auto& file : keyFiles(services->keys))
        readKey(file);
    emit keyChanged();
}

void SigningView::readKey(const std::filesystem::path& path) {
    const auto file = readFile(path);
    const auto certificate =
        file ? record::certificateOf(*file) : Result<record::Certificate>(tl::unexpected(file.error()));
    if (!certificate) return report(certificate.error());
    keys << QVariantMap{{QStringLiteral("id"), text(certificate->sha256)},
                        {QStringLiteral("name"), text(certificate->name)},
                        {QStringLiteral("fingerprint"), fingerprintText(certificate->sha256)}};
    files.push_back(path);
}

QString SigningView::keyOf(const QString& name) const {
    for (const QVariant& one : keys)
        if (one.toMap().value(QStringLiteral("name")) == name)
            return one.toMap().value(QStringLiteral("id")).toString();
    return {};
}

Result<void> SigningView::make(const std::string& whose, const std::string& passphrase) const {
    std::error_code failed;
    std::filesystem::create_directories(services->keys, failed);
    if (failed)
        return fail(ErrorCode::storage, say("The folder for the key can't be made."),
                    services->keys.string());
    if (!keyOf(text(whose)).isEmpty())
        return fail(ErrorCode::conflict, whose + " has a key on this device already.", whose,
                    say("Sign with it; records signed with it can be checked only as long as it is known."));
    const auto file = record::newKeyFile(whose, passphrase, services->now().at);
    if (!file) return tl::unexpected(file.error());
    const auto certificate = record::certificateOf(*file);
    if (!certificate) return tl::unexpected(certificate.error());
    const bool first = !std::filesystem::exists(services->keys / firstKey, failed);
    const std::string name = first ? firstKey : "signer-" + certificate->sha256.substr(0, 16) + ".pem";
    return writeFile(services->keys / name, *file, true);
}

bool SigningView::newKey(const QString& whose, const QString& passphrase) {
    if (const auto made = make(whose.trimmed().toStdString(), passphrase.toStdString()); !made) {
        report(made.error());
        return false;
    }
    readKeys();
    return keyExists();
}

Result<record::Signer> SigningView::unlock(const QString& passphrase, const QString& key) const {
    for (qsizetype i = 0; i < keys.size(); ++i) {
        if (!key.isEmpty() && keys[i].toMap().value(QStringLiteral("id")) != key) continue;
        const auto file = readFile(files[static_cast<std::size_t>(i)]);
        if (!file) return tl::unexpected(file.error());
        return record::unlock(*file, passphrase.toStdString());
    }
    return fail(ErrorCode::refused,
                key.isEmpty() ? say("This device has no key yet.")
                              : say("This device doesn't have that key."),
                "", say("Make one, then sign with it."));
}

Result<std::string> SigningView::seal(const QString& passphrase, const QString& key) {
    if (round == nullptr) return fail(ErrorCode::refused, say("There is no round to sign."));
    const QString who = text(round->openRound().state().opened.who.name);
    const auto signer = unlock(passphrase, key.isEmpty() ? keyOf(who) : key);
    if (!signer) return tl::unexpected(signer.error());
    return archive::sealRound(round->openRound(), *signer, services->draw, services->now().at);
}

bool SigningView::sign(const QString& passphrase, const QString& key) {
    const auto identity = seal(passphrase, key);
    if (services->feel) services->feel(identity ? Haptic::taken : Haptic::refused);
    if (!identity) {
        report(identity.error());
        return false;
    }
    record = text(*identity);
    round->refresh();
    emit recordIdChanged();
    emit sealed();
    return true;
}

Result<void> SigningView::signUnder(const QString& recordId, const QVariantMap& signature) {
    const auto signer = unlock(signature.value(QStringLiteral("passphrase")).toString(),
                               signature.value(QStringLiteral("key")).toString());
    if (!signer) return tl::unexpected(signer.error());
    return archive::countersign(
        services->archive, recordId.toStdString(), *signer,
        {signer->certificate().name, wordsIn(signature, "role"), wordsIn(signature, "certificate")},
        services->now().at);
}

bool SigningView::countersign(const QString& recordId, const QVariantMap& signature) {
    if (const auto done = signUnder(recordId, signature); !done) {
        report(done.error());
        return false;
    }
    emit countersigned(recordId);
    return true;
}

void SigningView::setRound(RoundView* view) {
    round = view;
    record.clear();
    if (round != nullptr && round->openRound().state().signature)
        record = text(round->openRound().state().signature->recordSha256);
    emit recordIdChanged();
}

} // namespace ambit::view
