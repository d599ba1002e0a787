// Reads JSON texts, one a line, and writes each in canonical form: what outside judges are given to compare.
#include "base/canonical.hpp"

#include <iostream>
#include <nlohmann/json.hpp>
#include <string>

int main() {
    for (std::string line; std::getline(std::cin, line);) {
        const auto json = ambit::parseJson(line);
        std::cout << (json ? ambit::canonicalJson(*json) : "refused: " + toText(json.error())) << '\n';
    }
}
