#include "desktop/fonts.hpp"

#include <QFile>

namespace ambit::desktop {

namespace {

// fonts.conf(5)
constexpr auto head = R"(<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "urn:fontconfig:fonts.dtd">
<fontconfig>
)";
constexpr auto allButOurs = R"(<include ignore_missing="yes">/etc/fonts/fonts.conf</include>
<selectfont><rejectfont>
<pattern><patelt name="family"><string>B612</string></patelt></pattern>
<pattern><patelt name="family"><string>B612 Mono</string></patelt></pattern>
</rejectfont></selectfont>
)";
constexpr auto foot = "</fontconfig>\n";

} // namespace

OwnFonts::OwnFonts(bool only) {
    if (qEnvironmentVariableIsSet("FONTCONFIG_FILE")) return;
    QFile file(folder.filePath(QStringLiteral("fonts.conf")));
    if (!file.open(QIODevice::WriteOnly)) return;
    file.write(head);
    if (only)
        file.write(QByteArrayLiteral("<cachedir>") + folder.path().toHtmlEscaped().toUtf8() +
                   QByteArrayLiteral("</cachedir>\n"));
    else
        file.write(allButOurs);
    file.write(foot);
    file.close();
    qputenv("FONTCONFIG_FILE", file.fileName().toUtf8());
}

} // namespace ambit::desktop
