#include "cli/commands.hpp"

#include "airframe/read.hpp"
#include "archive/sealing.hpp"
#include "base/canonical.hpp"
#include "base/files.hpp"
#include "cli/drawing.hpp"
#include "cli/serving.hpp"
#include "cli/talk.hpp"
#include "script/player.hpp"

#include <iostream>
#include <nlohmann/json.hpp>

namespace ambit::cli {

namespace {

/// The script's last line, if it signs.
const script::Action* signing(const script::Script& script) {
    if (script.actions.empty()) return nullptr;
    const script::Action& last = script.actions.back();
    return std::holds_alternative<script::Sign>(last.what) ? &last : nullptr;
}

Result<record::Signer> signerFrom(const RoundOptions& options) {
    if (options.key.empty())
        return fail(ErrorCode::passphrase, "The script signs, or is served, but there is no key.", "",
                    "Give --key FILE; 'ambit key new' makes one.");
    return signerOf(options.key, options.passphraseFile);
}

/// The record's identity: signed now, or found sealed already by an earlier run of the same script.
Result<std::string> seal(archive::OpenRound& round, const record::Signer& signer, const script::Action& sign,
                         const Drawing& drawing) {
    const round::State& state = round.state();
    if (state.phase == round::Phase::sealed) return state.signature->recordSha256;
    return archive::sealRound(
        round, signer, drawing.pages(),
        Instant{state.lastAt.ms + std::int64_t{1000} * script::secondsOf(sign, round.airframe(), state)});
}

int finish(archive::OpenRound& round, const record::Signer& signer, const script::Action& sign,
           const Drawing& drawing, const RoundOptions& options) {
    auto sha256 = seal(round, signer, sign, drawing);
    if (!sha256) return complain(sha256.error());
    auto files = archive::exportRecord(round.store(), *sha256, options.out);
    if (!files) return complain(files.error());
    if (options.json)
        std::cout << Json{{"record", *sha256}}.dump() << std::endl;
    else
        for (const auto& file : *files)
            std::cout << file.string() << '\n';
    return Exit::done;
}

} // namespace

int round(const RoundOptions& options) {
    auto text = readFile(options.airframe);
    if (!text) return complain(text.error());
    auto airframe = airframe::read(*text);
    if (!airframe) return complain(airframe.error());
    auto script = script::readScriptFrom(options.script);
    if (!script) return complain(script.error());
    // A key that doesn't open is better known before the walk than after it.
    Result<record::Signer> signer = fail(ErrorCode::passphrase, "");
    const script::Action* sign = signing(*script);
    if (sign != nullptr || options.serving.serve) {
        signer = signerFrom(options);
        if (!signer) return complain(signer.error());
    }
    // Nor does another person's sign it.
    if (const auto& name = script->open.who.name; sign != nullptr && signer->certificate().name != name)
        return complain(
            {ErrorCode::signature,
             "This key belongs to " + signer->certificate().name + "; the round is walked by " + name + '.',
             options.key, "Sign with the key of the person who walks it."});
    std::error_code failed;
    std::filesystem::create_directories(options.out, failed);
    if (failed)
        return complain(
            {ErrorCode::storage, "The folder could not be made: " + failed.message() + ".", options.out, ""});
    auto archive = archive::Archive::open(std::filesystem::path(options.out) / "archive.sqlite");
    if (!archive) return complain(archive.error());

    const Drawing drawing;
    std::unique_ptr<Serving> serving;
    if (options.serving.serve) {
        auto opened = Serving::open(options.serving, options.out, *signer);
        if (!opened) return complain(opened.error());
        serving = std::move(*opened);
        serving->awaitWatchers();
    }
    const auto committed = [&](const round::Event& event) {
        // One write, flushed: the line is the promise that the event is on disk.
        if (options.json) std::cout << canonicalJson(toJson(event)) + "\n" << std::flush;
        if (serving) serving->committed(event);
    };
    // What is asked meanwhile becomes events, too.
    const auto between = [&](archive::OpenRound& walked) -> Result<void> {
        if (!serving) return {};
        serving->rest();
        return serving->hear(walked, committed);
    };
    auto round = script::walkScript(*archive, *airframe, *text, *script, committed, between);
    if (!round) return complain(round.error());
    int code = Exit::done;
    if (sign != nullptr)
        code = finish(*round, *signer, *sign, drawing, options);
    else if (!options.json)
        std::cout << "Round " << round->state().id << " left open: " << round->state().settledCount()
                  << " points settled\n";
    if (!serving) return code;
    // Sealed, the log has one event more.
    if (sign != nullptr && code == Exit::done) serving->committed(round->events().back());
    serving->linger(*archive);
    return code;
}

} // namespace ambit::cli
