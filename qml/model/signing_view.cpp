#include "model/signing_view.hpp"

#include "archive/sealing.hpp"
#include "base/files.hpp"
#include "model/words.hpp"

namespace ambit::view {

SigningView::SigningView(const Services& handedIn, Report whereTo, QObject* parent)
    : QObject(parent), services(&handedIn), report(std::move(whereTo)) {
    readKey();
}

std::filesystem::path SigningView::keyFile() const {
    return services->keys / "signer.pem";
}

void SigningView::readKey() {
    std::error_code unused;
    if (!std::filesystem::exists(keyFile(), unused)) return;
    const auto file = readFile(keyFile());
    const auto certificate =
        file ? record::certificateOf(*file) : Result<record::Certificate>(tl::unexpected(file.error()));
    if (!certificate) return report(certificate.error());
    name = text(certificate->name);
    print = fingerprintText(certificate->sha256);
    emit keyChanged();
}

bool SigningView::newKey(const QString& whose, const QString& passphrase) {
    std::error_code failed;
    std::filesystem::create_directories(services->keys, failed);
    const auto made = [&]() -> Result<void> {
        if (failed)
            return fail(ErrorCode::storage, "The folder for the key can't be made.", services->keys.string());
        if (std::filesystem::exists(keyFile(), failed))
            return fail(ErrorCode::conflict, "This device has a key already.", keyFile().string(),
                        "Sign with it; records signed with it can be checked only as long as it is known.");
        const auto file =
            record::newKeyFile(whose.trimmed().toStdString(), passphrase.toStdString(), services->now().at);
        if (!file) return tl::unexpected(file.error());
        return writeFile(keyFile(), *file, true);
    }();
    if (!made) {
        report(made.error());
        return false;
    }
    readKey();
    return keyExists();
}

Result<record::Signer> SigningView::unlock(const QString& passphrase) const {
    if (!keyExists())
        return fail(ErrorCode::refused, "This device has no key yet.", "", "Make one, then sign with it.");
    const auto file = readFile(keyFile());
    if (!file) return tl::unexpected(file.error());
    return record::unlock(*file, passphrase.toStdString());
}

Result<std::string> SigningView::seal(const QString& passphrase) {
    if (round == nullptr) return fail(ErrorCode::refused, "There is no round to sign.");
    const auto signer = unlock(passphrase);
    if (!signer) return tl::unexpected(signer.error());
    return archive::sealRound(round->openRound(), *signer, services->draw, services->now().at);
}

bool SigningView::sign(const QString& passphrase) {
    const auto identity = seal(passphrase);
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

void SigningView::setRound(RoundView* view) {
    round = view;
    record.clear();
    if (round != nullptr && round->openRound().state().signature)
        record = text(round->openRound().state().signature->recordSha256);
    emit recordIdChanged();
}

} // namespace ambit::view
