#include "record/xmp.hpp"

#include "record/entry.hpp"

#include <nlohmann/json.hpp>

namespace ambit::record {

namespace {

std::string escaped(std::string_view text) {
    std::string out;
    for (const char c : text) {
        if (c == '&')
            out += "&amp;";
        else if (c == '<')
            out += "&lt;";
        else if (c == '>')
            out += "&gt;";
        else
            out += c;
    }
    return out;
}

/// "2026-06-20T07:30:00+02:00"
std::string xmpDate(LocalInstant at) {
    return toText(at).erase(19, 4);
}

} // namespace

std::string oneLine(std::string text) {
    for (char& c : text)
        if (c == '\n') c = ' ';
    return text;
}

About About::of(const Json& content) {
    const auto text = [&](const char* pointer) {
        return content.at(Json::json_pointer(pointer)).get<std::string>();
    };
    About about;
    const bool entry = isEntry(content);
    about.at = {*parseInstant(text(entry ? "/at" : "/concludedAt")), content.at("offsetMinutes").get<int>()};
    const std::string what = entry ? text("/kind") : text("/walk/name");
    const std::string said = entry                                            ? ""
                             : content.at("conclusion").at("fit").get<bool>() ? ": fit"
                                                                              : ": not fit";
    about.title =
        oneLine(text("/aircraft/registration") + ", " + what + ", " + xmpDate(about.at).substr(0, 10) + said);
    about.author = oneLine(text("/signer/name"));
    about.producer = oneLine(text("/software/name") + ' ' + text("/software/version"));
    return about;
}

std::string pdfDate(LocalInstant at) {
    std::string date = "D:";
    for (const char c : xmpDate(at).substr(0, 19))
        if (c >= '0' && c <= '9') date += c;
    const std::string zone = xmpDate(at).substr(19);
    return date + zone.substr(0, 3) + '\'' + zone.substr(4) + '\'';
}

std::string xmpOf(const About& about) {
    const std::string date = xmpDate(about.at);
    return "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
           "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
           "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
           "<rdf:Description rdf:about=\"\" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\">\n"
           "<pdfaid:part>3</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>\n"
           "</rdf:Description>\n"
           "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\">\n"
           "<dc:format>application/pdf</dc:format>\n"
           "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">" +
           escaped(about.title) +
           "</rdf:li></rdf:Alt></dc:title>\n"
           "<dc:creator><rdf:Seq><rdf:li>" +
           escaped(about.author) +
           "</rdf:li></rdf:Seq></dc:creator>\n"
           "</rdf:Description>\n"
           "<rdf:Description rdf:about=\"\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\">\n"
           "<xmp:CreatorTool>Ambit</xmp:CreatorTool>\n"
           "<xmp:CreateDate>" +
           date + "</xmp:CreateDate><xmp:ModifyDate>" + date + "</xmp:ModifyDate><xmp:MetadataDate>" + date +
           "</xmp:MetadataDate>\n"
           "</rdf:Description>\n"
           "<rdf:Description rdf:about=\"\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\">\n"
           "<pdf:Producer>" +
           escaped(about.producer) +
           "</pdf:Producer>\n"
           "</rdf:Description>\n"
           "</rdf:RDF>\n"
           "</x:xmpmeta>\n"
           "<?xpacket end=\"w\"?>\n";
}

} // namespace ambit::record
