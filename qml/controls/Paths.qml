pragma Singleton

// Files as people write them (a path) and as programs do (a URL).
import QtQuick

QtObject {
    function fromWritten(written: string): url {
        const text = written.trim();
        if (/^[a-z][a-z0-9+.-]+:/.test(text))
            return text;
        return "file://" + (text.startsWith("/") ? "" : "/") + text.split("/").map(encodeURIComponent).join("/");
    }
    function toWritten(file: url): string {
        const whole = file.toString();
        return whole.startsWith("file://") ? decodeURIComponent(whole.substring(7)) : whole;
    }
}
