#include "archive/export_pages.hpp"

#include <algorithm>

namespace ambit::archive {

namespace {

std::string escaped(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '&')
            out += "&amp;";
        else if (c == '<')
            out += "&lt;";
        else if (c == '>')
            out += "&gt;";
        else if (c == '"')
            out += "&quot;";
        else
            out += c;
    }
    return out;
}

std::string dayOf(Instant at) {
    return toText(at).substr(0, 10);
}

constexpr const char* style =
    "body{font:16px/1.45 sans-serif;max-width:60rem;margin:2rem auto;padding:0 "
    "1rem;color:#111;background:#fff}"
    "table{border-collapse:collapse;width:100%}td,th{text-align:left;vertical-align:top;padding:.35rem "
    ".6rem;border-bottom:1px solid #999}li{margin:.3rem 0}code{overflow-wrap:anywhere}";

template<class Lines> std::string section(const char* title, const Lines& lines, const char* none) {
    std::string html = "<h2>" + std::string(title) + "</h2>\n";
    if (lines.empty()) return html + "<p>" + none + "</p>\n";
    html += "<ul>\n";
    for (const std::string& line : lines)
        html += "<li>" + escaped(line) + "</li>\n";
    return html + "</ul>\n";
}

std::vector<std::string> discrepancies(const file::AircraftFile& file) {
    std::vector<std::string> lines;
    for (const file::Discrepancy& one : file.discrepancies) {
        if (one.state == file::Discrepancy::State::closed) continue;
        std::string line = std::string(file::toText(one.state)) + ": " + one.name + ", " + one.found.words +
                           " (found " + dayOf(one.found.at) + " by " + one.found.by + ')';
        if (one.deferral && one.isOpen())
            line += "; " + one.deferral->basis + ", placard " + one.deferral->placard +
                    (one.deferral->until.empty() ? "" : ", until " + one.deferral->until);
        if (one.rectified) line += "; put right " + dayOf(one.rectified->at) + " by " + one.rectified->by;
        lines.push_back(std::move(line));
    }
    return lines;
}

std::string link(const std::string& path) {
    const bool isPdf = path.ends_with(".pdf");
    return "<a href=\"" + escaped(path) + "\">" + (isPdf ? "PDF" : "JSON") + "</a>";
}

std::string row(const Exhibit& one) {
    std::string html = "<tr><td>" + dayOf(one.told.at) + "</td><td>" + escaped(one.told.kind());
    if (const auto* round = one.told.round())
        html += round->fit ? "<br>fit, said the pilot" : "<br>not fit, said the pilot";
    html += "</td><td>" + escaped(file::gloss(one.told)) + "</td><td>" + escaped(one.told.signer.name) +
            ", " + escaped(one.told.signer.role) + "</td><td>";
    for (const std::string& path : one.files)
        html += link(path) + ' ';
    for (const std::string& path : one.photos)
        html += "<a href=\"" + escaped(path) + "\">photo</a> ";
    return html + "</td></tr>\n";
}

} // namespace

std::string indexPage(const std::string& registration, const file::AircraftFile& file,
                      const std::vector<Exhibit>& exhibits, const std::vector<Sentence>& against,
                      const std::vector<std::string>& missing, Instant at) {
    std::string html =
        "<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" "
        "content=\"width=device-width\"><title>File of " +
        escaped(registration) + "</title><style>" + style + "</style></head><body>\n<h1>File of " +
        escaped(registration) + "</h1>\n<p>As it stood on " + dayOf(at) + ": " +
        std::to_string(exhibits.size()) +
        " records. Whether the aircraft is fit to fly, the operator and the pilot in command decide; "
        "the manufacturer's handbook, the local rules and licensed people have the last word. "
        "README.txt says how to check every record without Ambit.</p>\n";
    html += section("Stands against “fit”", against, "Nothing in the file; whoever flies looks and decides.");
    html += section("Discrepancies that aren't closed", discrepancies(file), "None.");
    std::vector<std::string> counters;
    for (const auto& [id, count] : file.counters)
        counters.push_back(id + ": " + count.value + " (" + dayOf(count.at) + ')');
    html += section("Counters", counters, "None was told.");
    std::vector<std::string> parts;
    for (const auto& [position, fitted] : file.parts)
        parts.push_back(position + ": " + fitted.part.name + ", number " + fitted.part.number + ", serial " +
                        fitted.part.serial + ", since " + fitted.on);
    html += section("Parts", parts, "No part change was told.");
    std::vector<std::string> odd;
    for (const file::Conflict& conflict : file.conflicts)
        odd.push_back(conflict.what);
    for (const file::Hole& hole : file.holes)
        odd.push_back("Missing: record " + hole.sha256 + ", named by " + hole.namedBy.front() + '.');
    odd.insert(odd.end(), missing.begin(), missing.end());
    html += section("What records say against each other, and what is missing", odd, "Nothing.");
    html += "<h2>Records, the newest first</h2>\n<table><tr><th>Date</th><th>What</th><th>In a few words</th>"
            "<th>Signed by</th><th>Files</th></tr>\n";
    for (auto one = exhibits.rbegin(); one != exhibits.rend(); ++one)
        html += row(*one);
    return html + "</table>\n</body></html>\n";
}

std::string readMe(const std::string& registration, Instant at) {
    return "The file of " + registration + ", as it stood on " + dayOf(at) + R"text(.

index.html     what the records say together: open it in any browser
records/       each record as it was signed: .json, and where there is one the .pdf that says the same
photos/        pictures that records name, by the SHA-256 of their bytes
airframes/     the descriptions by which rounds were walked, by the SHA-256 of their bytes

To take it all into an archive of Ambit:  ambit archive import ARCHIVE THIS-FILE.zip

To check it without Ambit
-------------------------
A PDF: any reader that checks signatures; pdfsig FILE.pdf shows each signature and whether it holds.

A JSON, with jq and openssl, in bash:

  f=records/FILE.json
  jq -jcS . "$f" | cmp - "$f" && echo "as it was signed: canonical form (RFC 8785)"
  b64url() { openssl base64 -A | tr '+/' '-_' | tr -d '='; }
  unb64url() { jq -Rr 'gsub("-"; "+") | gsub("_"; "/") | . + "=" * ((4 - length % 4) % 4)' | openssl base64 -d -A; }
  header=$(jq -r '.signatures[0].protected' "$f")
  { printf '%s.' "$header"; jq -jcS .content "$f" | b64url; } > signed
  printf '%s' "$header" | unb64url | jq -r '.x5c[0]' | openssl base64 -d -A > certificate.der
  openssl x509 -inform DER -in certificate.der -noout -pubkey > public.pem
  rs=$(jq -r '.signatures[0].signature' "$f" | unb64url | od -An -v -tx1 | tr -d ' \n')
  printf 'asn1=SEQUENCE:rs\n[rs]\nr=INTEGER:0x%s\ns=INTEGER:0x%s\n' "${rs:0:64}" "${rs:64}" > rs.conf
  openssl asn1parse -genconf rs.conf -noout -out signature.der
  openssl dgst -sha256 -verify public.pem -signature signature.der signed

"Verified OK", or the record was changed. Whose key it is: its fingerprint is
  openssl dgst -sha256 -r certificate.der
and its holder tells it you. Further signatures of one record are .signatures[1] and so on.

Nothing is missing if every hash that a record names as an earlier one is that of a record here (or was let go on
purpose, which a record of the kind "removal" says). A record's own hash is
  jq -jcS .content "$f" | openssl dgst -sha256 -r
so this prints nothing:
  comm -13 <(for f in records/*.json; do jq -jcS .content "$f" | openssl dgst -sha256 -r | cut -c1-64; done | sort -u) \
           <(jq -r '.content.previous[]' records/*.json | sort -u)

Only the operator and the pilot in command decide whether an aircraft is fit to fly; the manufacturer's handbook, the
local rules and licensed people have the last word.
)text";
}

} // namespace ambit::archive
