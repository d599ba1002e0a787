// What every record's pages begin and end with, whatever it tells: whose it is, who signed, how to check it.
#pragma once

#include "paper/sheet.hpp"
#include "round/event.hpp"

#include <string>
#include <vector>

namespace ambit::paper {

// Short things stand in columns.
inline constexpr int columns = 3;
inline constexpr double gutter = 16;
inline constexpr double column = (area::width - (columns - 1) * gutter) / columns;

struct Fact {
    QString label;
    QString value; ///< lines separated by \n
};

struct Head {
    QString what; ///< kind of record, in the upper margin
    std::string registration;
    std::string serial;
    std::string machine; ///< the description's name; empty: not known here
    QString under;       ///< a line more
};
/// At the top of the first page.
void addHead(Sheet& sheet, const Head& head);

void addFacts(Sheet& sheet, const std::vector<Fact>& facts);

/// `key`: the certificate's SHA-256; `identity`: the record's; hex.
void addSigner(Sheet& sheet, const round::Person& who, const std::string& key, const std::string& identity);

struct Notice {
    QString statement;                 ///< what the record says that it is; empty: the usual caution
    std::string machine;               ///< the description's own notice, or empty
    std::vector<std::string> previous; ///< identities of the records it follows
    bool shownWhole = true;            ///< the typefaces have every character of it
};
void addNotice(Sheet& sheet, const Notice& notice);

} // namespace ambit::paper
