// Words put together.
.pragma library

/// The parts that aren't empty, in one line.
function line(...parts) {
    return parts.filter(part => part !== "").join(" · ");
}
function sentences(texts) {
    return Array.from(texts).join(" ");
}
function lines(texts) {
    return Array.from(texts).join("\n");
}
