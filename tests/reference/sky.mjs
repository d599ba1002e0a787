// npm astronomy-engine (VSOP87, with a nutation and a TT - UT of its own) judges the sun's days: 5,000 random places and
// days of 1950 to 2100, half of them poleward of 60 degrees.
// node sky.mjs SUN_DAYS
import assert from 'node:assert/strict'
import { execFileSync } from 'node:child_process'
import { Body, Equator, Horizon, Observer } from 'astronomy-engine'

const [program] = process.argv.slice(2)
const cases = 5000
const minute = 60000, day = 1440 * minute

// Degrees that we may be off: 0.01 of the method (Meeus, chapter 25), 0.0025 for the parallax that the judge counts and
// we don't, 0.0025 for the sun's way in TT - UT. An event is then right to a minute wherever the sun crosses by that
// much a minute or more. Where it doesn't, its time is ill conditioned, and the elevation at the time told is judged.
const off = 0.01 + 0.0025 + 0.0025

// Random, from a seed that stays.
let seed = 20261126
const random = () => (seed = (seed * 48271) % 2147483647) / 2147483647
const between = (from, to) => from + (to - from) * random()

const first = Date.UTC(1950, 0, 1), last = Date.UTC(2100, 11, 31)
const given = Array.from({ length: cases }, (_, i) => {
    const anywhere = Math.asin(between(-1, 1)) * 180 / Math.PI
    const polar = (i % 4 < 2 ? 1 : -1) * between(60, 90)
    const midnight = first + Math.floor(between(0, (last - first) / day + 1)) * day
    const offset = 15 * Math.floor(between(-48, 57))
    const start = midnight - offset * minute
    return {
        latitude: i < 4 ? [90, -90, 90, -90][i] : Number((i % 2 ? anywhere : polar).toFixed(6)),
        longitude: i < 4 ? [0, 0, 180, -180][i] : Number(between(-180, 180).toFixed(6)),
        date: new Date(midnight).toISOString().slice(0, 10), offset, start, moment: start + Math.floor(between(0, day)),
    }
})
const lines = given.map((g) => `${g.latitude} ${g.longitude} ${g.date} ${g.offset} ${g.moment}\n`).join('')
const answers = execFileSync(program, { input: lines, maxBuffer: 1 << 28 }).toString().trimEnd().split('\n').map((line) => JSON.parse(line))
assert.equal(answers.length, cases)

const limits = [
    { limit: -0.833, up: 'rise', down: 'set', course: 'horizon' },
    { limit: -6, up: 'twilight begins', down: 'twilight ends', course: 'twilight' },
]
const [crosses, staysAbove] = [0, 1]
let byTime = 0, byElevation = 0, without = 0, worst = 0, worstSeconds = 0

given.forEach((place, i) => {
    const sun = answers[i]
    const observer = new Observer(place.latitude, place.longitude, 0)
    const elevation = (ms) => {
        const time = new Date(ms)
        const { ra, dec } = Equator(Body.Sun, time, observer, true, true)
        return Horizon(time, observer, ra, dec).altitude // geometric: no refraction asked for
    }
    const say = (what) => `${JSON.stringify(place)}: ${what}; we said ${JSON.stringify(sun)}`

    const here = elevation(place.moment)
    worst = Math.max(worst, Math.abs(here - sun.elevation))
    assert.ok(Math.abs(here - sun.elevation) <= off, say(`elevation ${here}`))
    const light = (degrees) => degrees >= -0.833 ? 'day' : degrees >= -6 ? 'twilight' : 'night'
    assert.ok([here - off, here + off].map(light).includes(sun.light), say(`elevation ${here}`))

    // Every half hour, and every five minutes about where the sun turns near a limit, where a rise and a set may hide.
    const samples = Array.from({ length: 49 }, (_, k) => place.start + k * 30 * minute).map((ms) => [ms, elevation(ms)])
    const turns = samples.slice(1, -1).filter(([, here], k) => (here - samples[k][1]) * (samples[k + 2][1] - here) <= 0)
        .filter(([, here]) => limits.some(({ limit }) => Math.abs(here - limit) < 0.3))
    for (const [ms] of turns)
        for (let more = -30; more <= 30; more += 5) samples.push([ms + more * minute, elevation(ms + more * minute)])

    for (const { limit, up, down, course } of limits) {
        const events = sun.events.filter(([what]) => what === up || what === down)
        for (const [what, ms] of events) {
            assert.ok(ms >= place.start && ms < place.start + day, say(`${what} on another day`))
            const there = elevation(ms)
            assert.ok(Math.abs(there - limit) <= off, say(`${what}: elevation ${there}`))
            const [before, after] = [elevation(ms - minute), elevation(ms + minute)]
            const rate = (after - before) / 2
            if (Math.abs(rate) >= off) {
                assert.equal(what, rate > 0 ? up : down)
                assert.ok((before - limit) * (after - limit) < 0, say(`${what} not within a minute`))
                worstSeconds = Math.max(worstSeconds, Math.abs((there - limit) / rate) * 60)
                ++byTime
            } else {
                ++byElevation
            }
        }
        // And no event is missing: between those told the sun stays on its side.
        if (events.length === 0) {
            assert.notEqual(sun[course], crosses)
            ++without
        } else {
            assert.equal(sun[course], crosses)
        }
        for (const [ms, here] of samples) {
            const next = events.find(([, at]) => at > ms)
            const above = events.length === 0 ? sun[course] === staysAbove
                : next ? next[0] === down : events.at(-1)[0] === up
            assert.ok(above ? here >= limit - off : here <= limit + off, say(`${new Date(ms).toISOString()}: elevation ${here}`))
        }
    }
})
// So many were compared; a seed that stays, but no machine rounds quite like another.
assert.ok(byTime > 14000 && byElevation > 150 && without > 2500, `${byTime}, ${byElevation}, ${without}`)
console.log(`astronomy-engine and Ambit agree on ${cases} days: ${byTime} events to the minute (the furthest ${worstSeconds.toFixed(1)} s off), ` +
    `${byElevation} grazing ones by the elevation, ${without} courses without any; elevations within ${worst.toFixed(4)} degrees.`)
