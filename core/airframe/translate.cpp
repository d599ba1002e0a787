#include "airframe/translate.hpp"

#include "airframe/expand.hpp"
#include "airframe/texts.hpp"

#include <nlohmann/json.hpp>

namespace ambit::airframe {

namespace {

constexpr std::size_t mostLanguages = 20;

/// Where a text stands, and what that asks of its translation.
struct Use {
    std::size_t most = mostText;
    const Repeat* repeat = nullptr;
};

std::map<std::string, Use> usesOf(Draft& draft) {
    std::map<std::string, Use> uses;
    for (const Text& text : textsOf(draft)) {
        Use& use = uses[*text.text];
        use.most = std::min(use.most, text.most);
        if (text.repeat != nullptr && text.text->find('{') != std::string::npos) use.repeat = text.repeat;
    }
    return uses;
}

bool isLanguage(const std::string& code) {
    return code.size() == 2 && code.find_first_not_of("abcdefghijklmnopqrstuvwxyz") == std::string::npos;
}

/// One language, text by text.
class Taker {
public:
    Taker(const Json& language, std::string at, Errors& errors)
        : json(language), fields(language, std::move(at), errors) {}

    void take(const std::string& written, const Use& use) {
        fields.setPlaceholder(use.repeat == nullptr ? "" : use.repeat->id);
        std::string said = use.most == mostName ? fields.name(written) : fields.text(written);
        if (said.empty()) return; // wrong, and said so
        if (use.repeat != nullptr && said.find('{' + use.repeat->id + '}') == std::string::npos)
            fields.errors().add(fields.at(written),
                                say("This text has lost the placeholder of what it translates."),
                                say("Put {%1} where its name belongs.", use.repeat->id));
        taken.emplace(written, std::move(said));
    }

    /// Once all is taken: a member's name may be longer in this language, too.
    void checkFilled(const std::string& written, const Use& use) {
        const auto said = taken.find(written);
        if (use.repeat == nullptr || said == taken.end()) return;
        for (const auto& member : use.repeat->over.items) {
            const auto name = taken.find(member.value.name);
            const auto& with = name == taken.end() ? member.value.name : name->second;
            if (lengthOf(fill(said->second, use.repeat->id, with)) <= use.most) continue;
            fields.errors().add(
                fields.at(written),
                say("With the name of %1 put in, this text is too long.", inQuotes(member.value.id)),
                say("Use at most %1 characters.", figure(std::to_string(use.most))));
        }
    }

    std::map<std::string, std::string> takeAll(const std::map<std::string, Use>& uses, bool allKnown) {
        if (!json.is_object()) return {};
        for (const auto& [written, said] : json.items()) {
            if (const auto use = uses.find(written); use != uses.end())
                take(written, use->second);
            else if (allKnown)
                fields.errors().add(fields.at(written),
                                    say("No text of this airframe says %1.", inQuotes(written)),
                                    say("Write it as it stands in the file, or remove it."));
        }
        for (const auto& [written, use] : uses)
            checkFilled(written, use);
        return std::move(taken);
    }

private:
    const Json& json;
    Fields fields;
    std::map<std::string, std::string> taken;
};

} // namespace

Translations takeTranslations(Fields& file, Draft& draft) {
    Translations all;
    const Json* given = file.get("translations", Presence::optional);
    if (given == nullptr) return all;
    const std::string at = file.at("translations");
    const bool allKnown = file.errors().empty();
    const Fields languages(*given, at, file.errors()); // notes what is no object
    if (!given->is_object()) return all;
    if (given->size() > mostLanguages) {
        file.errors().add(at, say("These are %1 languages.", figure(std::to_string(given->size()))),
                          say("Give %1 at most.", figure(std::to_string(mostLanguages))));
        return all;
    }
    const auto uses = usesOf(draft);
    for (const auto& [language, texts] : given->items()) {
        if (!isLanguage(language))
            file.errors().add(pointerTo(at, language),
                              say("%1 is not a language's code.", inQuotes(language)),
                              say("Use the two lower-case letters of ISO 639-1, as in %1.", "\"de\""));
    }
    for (const auto& [language, texts] : given->items())
        all[language] = Taker(texts, pointerTo(at, language), file.errors()).takeAll(uses, allKnown);
    return all;
}

bool translate(Draft& draft, const std::string& language) {
    const auto found = draft.translations.find(language);
    if (found == draft.translations.end()) return false;
    for (const Text& text : textsOf(draft))
        if (const auto said = found->second.find(*text.text); said != found->second.end())
            *text.text = said->second;
    return true;
}

std::vector<std::string> missing(Draft& draft, const std::string& language) {
    const auto& said = draft.translations[language];
    std::vector<std::string> texts;
    std::set<std::string> seen;
    for (const Text& text : textsOf(draft))
        if (!said.contains(*text.text) && seen.insert(*text.text).second) texts.push_back(*text.text);
    return texts;
}

} // namespace ambit::airframe
