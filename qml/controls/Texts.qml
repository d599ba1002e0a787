pragma Singleton

// Words put together, and files as people write them (a path) and as programs do (a URL).
import QtQuick

QtObject {
    /// The parts that aren't empty, in one line; where it is broken, none begins with the dot between them.
    function line(first: string, second: string, third: string): string {
        let all = first;
        if (second !== "")
            all += (all === "" ? "" : "\u00a0· ") + second;
        if (third !== "")
            all += (all === "" ? "" : "\u00a0· ") + third;
        return all;
    }
    /// With a capital, as it begins a line of its own.
    function begun(text: string): string {
        const first = text.charAt(0);
        return first.toUpperCase() + text.slice(1);
    }
    /// What is said of something.
    function said(of: string, what: string): string {
        return what === "" ? of : qsTr("%1: %2").arg(of).arg(what);
    }
    function joined(texts: var, between: string): string {
        return Array.from(texts).join(between);
    }
    /// Each part of a line stays whole; none begins with the dot between them.
    function unparted(text: string): string {
        return text.replace(/([^·]) (?=[^·])/g, "$1\u00a0").replace(/ ·/g, "\u00a0·");
    }
    function findings(count: int): string {
        return count === 1 ? qsTr("1 finding") : qsTr("%1 findings").arg(count);
    }
    function fileUrl(written: string): string {
        const text = written.trim();
        if (text === "" || text.indexOf("://") > 0)
            return text;
        return "file://" + (text.startsWith("/") ? "" : "/") + encodeURI(text).replace("#", "%23").replace("?", "%3F");
    }
    function path(url: string): string {
        return url.startsWith("file://") ? decodeURIComponent(url.substring(7)) : url;
    }
}
