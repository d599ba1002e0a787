// npm canonicalize (RFC 8785) writes the same bytes as Ambit: the RFC's own examples, the record, and random values.
// node canonicalize.mjs FOLDER CANONICAL
import assert from 'node:assert/strict'
import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import canonicalize from 'canonicalize'

const [folder, program] = process.argv.slice(2)
const ours = (texts) => execFileSync(program, { input: texts.join('\n') + '\n', maxBuffer: 1 << 28 }).toString('utf8').split('\n')

const text = readFileSync(join(folder, 'record.json'), 'utf8')
assert.equal(canonicalize(JSON.parse(text)), text)

// RFC 8785, 3.2.2 and 3.2.3; what it says must come out is written out here.
const examples = [
    [String.raw`{"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],` +
     String.raw` "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/", "literals": [null, true, false]}`,
     String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`],
    [String.raw`{"\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",` +
     String.raw` "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis"}`,
     `{"\\r":"Carriage Return","1":"One","\u0080":"Control","ö":"Latin Small Letter O With Diaeresis","€":"Euro Sign",` +
     `"😀":"Emoji: Grinning Face","\ufb33":"Hebrew Letter Dalet With Dagesh"}`],
]
// RFC 8785, appendix B: IEEE 754 bits and their form.
const numbers = [
    ['0000000000000000', '0'], ['8000000000000000', '0'], ['0000000000000001', '5e-324'], ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'], ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'], ['c340000000000000', '-9007199254740992'], ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'], ['44b52d02c7e14af6', '1e+23'], ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'], ['444b1ae4d6e2ef4f', '999999999999999900000'], ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'], ['3eb0c6f7a0b5ed8d', '0.000001'], ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'], ['41b3de4355555555', '333333333.3333333'], ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'], ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
]
for (const [bits, form] of numbers) {
    const value = Buffer.from(bits, 'hex').readDoubleBE()
    examples.push([value.toPrecision(17), form])
}
const written = ours(examples.map(([given]) => given))
examples.forEach(([given, form], i) => {
    assert.equal(written[i], form)
    assert.equal(canonicalize(JSON.parse(given)), form)
})

// Random values, from a seed that stays.
let seed = 20260620
const random = (below) => (seed = (seed * 48271) % 2147483647) % below
function letter() {
    const kind = random(8)
    if (kind === 0) return String.fromCodePoint(random(0x20))
    if (kind === 1) return String.fromCodePoint(0x10000 + random(0x100000))
    if (kind === 2) return String.fromCodePoint(0xE000 + random(0x1FFE))
    if (kind === 3) return String.fromCodePoint(0x80 + random(0xD700))
    return String.fromCodePoint(0x20 + random(0x60))
}
const string = () => Array.from({ length: random(6) }, letter).join('')
function number() {
    const bits = Buffer.alloc(8)
    for (let i = 0; i < 8; ++i) bits[i] = random(256)
    const value = random(2) ? bits.readDoubleBE() : (random(2000001) - 1000000) / 10 ** random(8)
    return Number.isFinite(value) ? value : 0
}
function value(depth) {
    const kind = random(depth > 0 ? 7 : 5)
    if (kind < 2) return string()
    if (kind < 4) return number()
    if (kind === 4) return [null, true, false][random(3)]
    const items = Array.from({ length: random(6) }, () => value(depth - 1))
    return kind === 5 ? items : Object.fromEntries(items.map((item) => [string(), item]))
}
const values = Array.from({ length: 20000 }, () => value(4))
const answers = ours(values.map((one) => JSON.stringify(one)))
values.forEach((one, i) => assert.equal(answers[i], canonicalize(one)))
console.log(`canonicalize and Ambit agree, on ${examples.length} examples and ${values.length} random values.`)
