// Where measured values are going, and when they come to their limit.
#include "base/files.hpp"
#include "cli/commands.hpp"
#include "cli/talk.hpp"
#include "judge/trend.hpp"

#include <iostream>
#include <nlohmann/json.hpp>
#include <optional>
#include <sstream>

namespace ambit::cli {

namespace {

std::vector<std::string> split(const std::string& line, char at) {
    std::vector<std::string> fields;
    std::istringstream parts(line);
    for (std::string field; std::getline(parts, field, at);) {
        const std::size_t first = field.find_first_not_of(" \t\r");
        const std::size_t last = field.find_last_not_of(" \t\r");
        fields.push_back(first == std::string::npos ? "" : field.substr(first, last - first + 1));
    }
    return fields;
}

/// "min 1.0 mm", "max 2 mm", "min 4 max 6 qt": each once, the unit last.
Result<airframe::Limit> limitOf(const std::string& text) {
    const auto wrong = [&] {
        return fail(ErrorCode::invalid, "This is not a limit.", text.substr(0, 40),
                    "Write it like \"min 1.0 mm\" or \"min 4 max 6 qt\".");
    };
    airframe::Limit limit;
    std::istringstream words(text);
    for (std::string word; words >> word;) {
        if (!limit.unit.empty()) return wrong();
        if (word != "min" && word != "max") {
            limit.unit = word;
            continue;
        }
        std::string figure;
        words >> figure;
        const auto value = Decimal::parse(figure);
        if (!value) return tl::unexpected(value.error());
        auto& end = word == "min" ? limit.min : limit.max;
        if (end) return wrong();
        end = *value;
    }
    if (!limit.min && !limit.max) return wrong();
    return limit;
}

/// x,y[,uncertainty][,renewed]
Result<judge::Measured> measuredOf(const std::vector<std::string>& fields, const std::string& where) {
    judge::Measured measured;
    const auto read = [&](std::size_t field) -> Result<Decimal> {
        auto value = Decimal::parse(field < fields.size() ? fields[field] : "");
        if (!value) value.error().where = where;
        return value;
    };
    const auto x = read(0);
    if (!x) return tl::unexpected(x.error());
    const auto y = read(1);
    if (!y) return tl::unexpected(y.error());
    measured.x = *x;
    measured.y = *y;
    if (fields.size() > 4)
        return fail(ErrorCode::invalid, "This line has more than four fields.", where,
                    "Write x,value,uncertainty,renewed; the last two may be left out.");
    for (std::size_t i = 2; i < fields.size(); ++i) {
        if (fields[i] == "renewed") {
            measured.renewed = true;
        } else if (!fields[i].empty()) {
            const auto uncertainty = read(i);
            if (!uncertainty) return tl::unexpected(uncertainty.error());
            measured.uncertainty = *uncertainty;
        }
    }
    return measured;
}

Result<std::vector<judge::Measured>> valuesOf(const std::string& file) {
    const auto text = readFile(file);
    if (!text) return tl::unexpected(text.error());
    std::vector<judge::Measured> values;
    std::istringstream lines(*text);
    std::size_t number = 0;
    for (std::string line; std::getline(lines, line);) {
        ++number;
        const auto fields = split(line, ',');
        if (fields.empty() || (fields.size() == 1 && fields[0].empty()) || fields[0].starts_with('#'))
            continue;
        const auto measured = measuredOf(fields, file + ", line " + std::to_string(number));
        if (!measured) return tl::unexpected(measured.error());
        values.push_back(*measured);
    }
    return values;
}

Json toJson(const std::optional<double>& value, judge::Rounding how) {
    return value ? Json(judge::rounded(*value, how)) : Json();
}

Json toJson(const judge::Trend& trend, const std::vector<Sentence>& texts) {
    using judge::Rounding;
    Json json{{"standing", judge::toText(trend.standing)},
              {"direction", judge::toText(trend.direction)},
              {"from", trend.from + 1},
              {"looksRenewed", trend.looksRenewed},
              {"outOfLine", trend.outOfLine},
              {"leftOut", Json::array()},
              {"texts", Json::array()}};
    for (const std::size_t index : trend.far)
        json["leftOut"].push_back(index + 1);
    for (const Sentence& text : texts)
        json["texts"].push_back(std::string(text));
    if (trend.robust)
        json["slope"] = {{"robust", judge::rounded(trend.robust->line.slope)},
                         {"low", judge::rounded(trend.robust->slope.low, Rounding::down)},
                         {"high", judge::rounded(trend.robust->slope.high, Rounding::up)},
                         {"leastSquares", judge::rounded(trend.squares->line.slope)}};
    if (trend.crossing)
        json["limit"] = {{"which", trend.crossing->atMax ? "max" : "min"},
                         {"earliest", toJson(trend.crossing->earliest, Rounding::down)},
                         {"latest", toJson(trend.crossing->latest, Rounding::up)},
                         {"robust", toJson(trend.crossing->best, Rounding::nearest)},
                         {"leastSquares", toJson(trend.crossing->squares, Rounding::nearest)}};
    return json;
}

} // namespace

int trend(const TrendOptions& options) {
    judge::TrendQuestion question;
    question.per = options.per;
    const auto limit = limitOf(options.limit);
    if (!limit) {
        complain(limit.error());
        return Exit::usage;
    }
    question.limit = *limit;
    if (!options.ahead.empty()) {
        const auto ahead = Decimal::parse(options.ahead);
        if (!ahead) {
            complain(ahead.error());
            return Exit::usage;
        }
        question.ahead = *ahead;
    }
    const auto values = valuesOf(options.values);
    if (!values) return complain(values.error());
    const auto found = judge::trendOf(*values, question);
    if (!found) return complain(found.error());
    const auto texts = judge::toTexts(*found, question);
    if (options.json) {
        std::cout << toJson(*found, texts) << '\n';
    } else {
        for (const Sentence& text : texts)
            std::cout << text << '\n';
    }
    return Exit::done;
}

} // namespace ambit::cli
