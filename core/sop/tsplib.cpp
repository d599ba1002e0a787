#include "sop/tsplib.hpp"

#include <algorithm>
#include <charconv>
#include <map>
#include <string>

namespace ambit::sop {

namespace {

constexpr std::string_view blanks = " \t\r\f\v";

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

class Reader {
public:
    explicit Reader(std::string_view file) : text(file) {}

    Result<Problem> read() {
        if (auto head = readHead(); !head) return tl::unexpected(head.error());
        auto count = number("The number of nodes");
        if (!count) return tl::unexpected(count.error());
        if (*count != dimension)
            return bad("The weights are for " + std::to_string(*count) + " nodes, DIMENSION says " +
                       std::to_string(dimension) + ".");
        std::vector<std::vector<std::int64_t>> weights;
        for (std::int64_t i = 0; i < dimension; ++i) {
            auto& row = weights.emplace_back();
            for (std::int64_t j = 0; j < dimension; ++j) {
                auto weight = number("A weight");
                if (!weight) return tl::unexpected(weight.error());
                if (*weight < -1 || *weight > mostCost / dimension)
                    return bad("A weight is out of range.", ErrorCode::invalid);
                row.push_back(*weight);
            }
        }
        const std::string_view rest = word();
        if (!rest.empty() && rest != "EOF") return bad("There is more than the weights.");
        return problemOf(weights);
    }

private:
    tl::unexpected<Error> bad(Sentence what, ErrorCode code = ErrorCode::syntax) const {
        return fail(code, std::move(what), "line " + std::to_string(line),
                    "Give a TSPLIB file of type SOP with a full matrix of weights.");
    }

    std::string_view nextLine() {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string_view found = text.substr(at, end - at);
        at = std::min(end + 1, text.size());
        ++line;
        return trimmed(found);
    }

    Result<void> readHead() {
        std::map<std::string, std::string, std::less<>> fields;
        for (;;) {
            if (at == text.size()) return bad("There is no EDGE_WEIGHT_SECTION.");
            const std::string_view one = nextLine();
            if (one.empty()) continue;
            const std::size_t colon = one.find(':');
            const std::string_view key = trimmed(one.substr(0, colon));
            if (key == "EDGE_WEIGHT_SECTION") break;
            if (colon == std::string_view::npos) return bad("This line has no colon.");
            fields[std::string(key)] = trimmed(one.substr(colon + 1));
        }
        ++line; // what is read from here on is on the next
        const auto is = [&](const char* key, std::string_view value) { return fields[key] == value; };
        if (!is("TYPE", "SOP")) return bad("This is not of TYPE SOP.", ErrorCode::unsupported);
        if (!is("EDGE_WEIGHT_TYPE", "EXPLICIT") || !is("EDGE_WEIGHT_FORMAT", "FULL_MATRIX"))
            return bad("The weights are not a full matrix.", ErrorCode::unsupported);
        const std::string& size = fields["DIMENSION"];
        const auto [end, error] = std::from_chars(size.data(), size.data() + size.size(), dimension);
        if (error != std::errc() || end != size.data() + size.size() || dimension < 2 ||
            dimension > static_cast<std::int64_t>(mostTasks) + 1)
            return bad("DIMENSION is not a number from 2 to " + std::to_string(mostTasks + 1) + ".");
        return {};
    }

    std::string_view word() {
        while (at < text.size() && (text[at] == '\n' || blanks.find(text[at]) != std::string_view::npos))
            if (text[at++] == '\n') ++line;
        const std::size_t end = std::min(text.find_first_of(" \t\r\f\v\n", at), text.size());
        const std::string_view found = text.substr(at, end - at);
        at = end;
        return found;
    }

    Result<std::int64_t> number(const char* what) {
        const std::string_view found = word();
        std::int64_t value = 0;
        const auto [end, error] = std::from_chars(found.data(), found.data() + found.size(), value);
        if (found.empty()) return bad(std::string(what) + " is missing.");
        if (error != std::errc() || end != found.data() + found.size())
            return bad(std::string(what) + " is not a whole number.");
        return value;
    }

    [[nodiscard]] Result<Problem> problemOf(const std::vector<std::vector<std::int64_t>>& weights) const {
        const std::size_t nodes = weights.size();
        Problem problem;
        problem.home.assign(nodes, 0);
        problem.moves.emplace_back(nodes, std::vector<Cost>(nodes, never));
        for (std::size_t i = 0; i < nodes; ++i) {
            Task task{{static_cast<Number>(i)}, {}};
            for (std::size_t j = 0; j < nodes; ++j) {
                if (i == j) continue;
                if (weights[i][j] >= 0)
                    problem.moves[0][i][j] = weights[i][j];
                else if (i == 0)
                    return fail(ErrorCode::invalid, "A node comes before the first.",
                                "node " + std::to_string(j + 1));
                else if (j > 0)
                    task.before.push_back(static_cast<Number>(j - 1));
            }
            if (i > 0) problem.tasks.push_back(std::move(task));
        }
        if (problem.tasks.back().before.size() != nodes - 2)
            return fail(ErrorCode::invalid, "The last node doesn't come after all others.",
                        "node " + std::to_string(nodes));
        if (auto valid = validate(problem); !valid) return tl::unexpected(valid.error());
        return problem;
    }

    std::string_view text;
    std::size_t at = 0;
    std::size_t line = 0;
    std::int64_t dimension = 0;
};

} // namespace

Result<Problem> readTsplib(std::string_view text) {
    return Reader(text).read();
}

Numbers tsplibOrder(const Walk& walk) {
    Numbers order{1};
    for (const Number place : walk)
        order.push_back(place + 1);
    return order;
}

} // namespace ambit::sop
