// Plane geometry for drawing and touching the figure. Points are {x, y}.
.pragma library

/// "M x y L … Z" of an outline, scaled by `s` and moved by (dx, dy).
function svg(points, s, dx, dy, closed) {
    let path = "";
    for (let i = 0; i < points.length; ++i)
        path += (i === 0 ? "M" : "L") + (points[i].x * s + dx).toFixed(2) + " " + (points[i].y * s + dy).toFixed(2) + " ";
    return path + (closed && points.length > 0 ? "Z" : "");
}

/// The same for several, in one path.
function svgAll(lists, s, dx, dy, closed) {
    let path = "";
    for (const points of lists)
        path += svg(points, s, dx, dy, closed) + " ";
    return path;
}

function scaled(points, s, dx, dy) {
    const result = [];
    for (const p of points)
        result.push(Qt.point(p.x * s + dx, p.y * s + dy));
    return result;
}

function bounds(points) {
    let x0 = Infinity, y0 = Infinity, x1 = -Infinity, y1 = -Infinity;
    for (const p of points) {
        x0 = Math.min(x0, p.x);
        y0 = Math.min(y0, p.y);
        x1 = Math.max(x1, p.x);
        y1 = Math.max(y1, p.y);
    }
    return Qt.rect(x0, y0, x1 - x0, y1 - y0);
}

function inside(points, x, y) {
    let result = false;
    for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
        const a = points[i], b = points[j];
        if ((a.y > y) !== (b.y > y) && x < (b.x - a.x) * (y - a.y) / (b.y - a.y) + a.x)
            result = !result;
    }
    return result;
}

function distanceToEdge(points, x, y) {
    let least = Infinity;
    for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
        const a = points[j], b = points[i];
        const dx = b.x - a.x, dy = b.y - a.y;
        const length = dx * dx + dy * dy;
        const t = length === 0 ? 0 : Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / length));
        least = Math.min(least, Math.hypot(x - a.x - t * dx, y - a.y - t * dy));
    }
    return least;
}

/// A place well inside the outline and `clear` of the given places, where there is one.
function heart(points, away, clear) {
    const box = bounds(points), steps = 12;
    let best = Qt.point(box.x + box.width / 2, box.y + box.height / 2), most = -Infinity;
    for (let i = 1; i < steps; ++i)
        for (let j = 1; j < steps; ++j) {
            const x = box.x + box.width * i / steps, y = box.y + box.height * j / steps;
            if (!inside(points, x, y))
                continue;
            let room = distanceToEdge(points, x, y);
            for (const p of away)
                room = Math.min(room, Math.hypot(p.x - x, p.y - y) - clear);
            if (room > most) {
                most = room;
                best = Qt.point(x, y);
            }
        }
    return best;
}

/// Slanting lines `step` apart, only where they lie inside the outline.
function hatch(points, step) {
    const box = bounds(points);
    let path = "";
    // Lines x + y = c.
    for (let c = Math.ceil((box.x + box.y) / step) * step; c < box.x + box.width + box.y + box.height; c += step) {
        const cuts = [];
        for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
            const a = points[j], b = points[i], sa = a.x + a.y - c, sb = b.x + b.y - c;
            if ((sa > 0) === (sb > 0))
                continue;
            const t = sa / (sa - sb);
            cuts.push({ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) });
        }
        cuts.sort((a, b) => a.x - b.x);
        for (let i = 0; i + 1 < cuts.length; i += 2)
            path += "M" + cuts[i].x.toFixed(2) + " " + cuts[i].y.toFixed(2) + " L" + cuts[i + 1].x.toFixed(2) + " " + cuts[i + 1].y.toFixed(2) + " ";
    }
    return path;
}

/// The same, slanting the other way.
function hatchBack(points, step) {
    const mirrored = hatch(points.map(p => Qt.point(-p.x, p.y)), step);
    return mirrored.replace(/([ML])(-?[0-9.]+)/g, (all, letter, x) => letter + (-x).toFixed(2));
}

/// The triangle that cuts the corner nearest to top left, `size` long.
function cutCorner(points, size) {
    let at = 0;
    for (let i = 1; i < points.length; ++i)
        if (points[i].x + points[i].y < points[at].x + points[at].y)
            at = i;
    const along = other => {
        const dx = other.x - points[at].x, dy = other.y - points[at].y, length = Math.hypot(dx, dy) || 1;
        const t = Math.min(1, size / length);
        return { x: points[at].x + dx * t, y: points[at].y + dy * t };
    };
    const before = points[(at + points.length - 1) % points.length], after = points[(at + 1) % points.length];
    return svg([points[at], along(after), along(before)], 1, 0, 0, true);
}

/// An arrow's head at `to`, coming from `from`.
function arrowHead(from, to, size) {
    const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
    const ux = (to.x - from.x) / length, uy = (to.y - from.y) / length;
    const base = { x: to.x - ux * size, y: to.y - uy * size };
    return svg([to, { x: base.x - uy * size / 2, y: base.y + ux * size / 2 }, { x: base.x + uy * size / 2, y: base.y - ux * size / 2 }], 1, 0, 0, true);
}

function area(points) {
    let twice = 0;
    for (let i = 0, j = points.length - 1; i < points.length; j = i++)
        twice += points[j].x * points[i].y - points[i].x * points[j].y;
    return twice / 2;
}

function convex(points) {
    let sign = 0;
    for (let i = 0; i < points.length; ++i) {
        const a = points[i], b = points[(i + 1) % points.length], c = points[(i + 2) % points.length];
        const turn = Math.sign((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x));
        if (turn !== 0 && sign !== 0 && turn !== sign)
            return false;
        sign = sign || turn;
    }
    return true;
}

/// What of a part lies inside a convex zone (Sutherland and Hodgman), turning the way that has a positive area.
function clipped(part, zone) {
    const turn = Math.sign(area(zone)) || 1;
    let points = Array.from(part);
    for (let i = 0; i < zone.length && points.length > 0; ++i) {
        const a = zone[i], b = zone[(i + 1) % zone.length];
        const side = p => turn * ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x));
        const kept = [];
        for (let j = 0; j < points.length; ++j) {
            const p = points[j], q = points[(j + 1) % points.length], sp = side(p), sq = side(q);
            if (sp >= 0)
                kept.push(p);
            if ((sp > 0 && sq < 0) || (sp < 0 && sq > 0)) {
                const t = sp / (sp - sq);
                kept.push({ x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) });
            }
        }
        points = kept;
    }
    if (points.length < 3 || Math.abs(area(points)) < 1e-4)
        return [];
    return area(points) < 0 ? points.reverse() : points;
}

/// The parts' areas inside a zone, or the zone itself where nothing of the aircraft is there.
function covered(parts, zone) {
    const result = [];
    if (convex(zone))
        for (const part of parts) {
            const piece = clipped(part.outline, zone);
            if (piece.length > 0)
                result.push(piece);
        }
    return result.length > 0 ? result : [zone];
}
