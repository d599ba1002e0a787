// npm jose checks what Ambit signed, and Ambit what jose signed. RFC 7515, appendix F: the payload is not in the file.
// node jose.mjs FOLDER AMBIT
import assert from 'node:assert/strict'
import { execFileSync, spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import canonicalize from 'canonicalize'
import { FlattenedSign, base64url, decodeProtectedHeader, flattenedVerify, importPKCS8, importX509 } from 'jose'

const [folder, ambit] = process.argv.slice(2)
const record = JSON.parse(readFileSync(join(folder, 'record.json'), 'utf8'))
const payload = new TextEncoder().encode(canonicalize(record.content))

function pem(base64) {
    return `-----BEGIN CERTIFICATE-----\n${base64.replace(/.{64}/g, '$&\n')}\n-----END CERTIFICATE-----\n`
}

async function check(entry, bytes) {
    const header = decodeProtectedHeader(entry)
    const key = await importX509(pem(header.x5c[0]), 'ES256')
    return flattenedVerify({ ...entry, payload: base64url.encode(bytes) }, key, { algorithms: ['ES256'] })
}

// Each signature by itself: generalVerify would be content with any one.
for (const entry of record.signatures) await check(entry, payload)
const changed = new TextEncoder().encode(canonicalize({ ...record.content, round: '0'.repeat(32) }))
await assert.rejects(check(record.signatures[0], changed), { code: 'ERR_JWS_SIGNATURE_VERIFICATION_FAILED' })

// Countersigned: each holds by itself, and names the one before it.
const many = JSON.parse(readFileSync(join(folder, 'countersigned', 'record.json'), 'utf8'))
const nameOf = (entry) => createHash('sha256').update(canonicalize(entry)).digest('hex')
assert.equal(many.signatures.length, 3)
assert.equal(canonicalize(many.content), canonicalize(record.content))
for (const [i, entry] of many.signatures.entries()) {
    await check(entry, payload)
    await assert.rejects(check(entry, changed), { code: 'ERR_JWS_SIGNATURE_VERIFICATION_FAILED' })
    if (i > 0) assert.equal(decodeProtectedHeader(entry).after, nameOf(many.signatures[i - 1]))
}
assert.deepEqual(decodeProtectedHeader(many.signatures[1]).signer,
    { name: 'Alex Sample', role: 'mechanic', certificate: 'X.66/12' })

// The other way round, with a key that Ambit didn't make; jose gives low and high S as it comes.
const work = mkdtempSync(join(tmpdir(), 'ambit-jose-'))
const file = (name) => join(work, name)
const openssl = (...words) => execFileSync('openssl', words, { stdio: ['ignore', 'pipe', 'pipe'] })

function newKey(name) {
    openssl('req', '-x509', '-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:P-256', '-nodes', '-days', '7300', '-sha256',
        '-subj', `/CN=${name}`, '-keyout', file('key.pem'), '-out', file('certificate.pem'))
    const der = openssl('x509', '-in', file('certificate.pem'), '-outform', 'DER').toString('base64')
    return { key: readFileSync(file('key.pem'), 'utf8'), x5c: [der] }
}

async function sign({ key, x5c }, header = {}) {
    const { protected: text, signature } = await new FlattenedSign(payload)
        .setProtectedHeader({ alg: 'ES256', x5c, ...header })
        .sign(await importPKCS8(key, 'ES256'))
    return { protected: text, signature }
}

function verified(signatures, content = record.content) {
    writeFileSync(file('record.json'), canonicalize({ content, signatures }))
    const run = spawnSync(ambit, ['verify', '--json', file('record.json')], { encoding: 'utf8' })
    return { ok: run.status === 0, said: run.stdout + run.stderr }
}

const robin = newKey('Robin Example')
for (let i = 0; i < 20; ++i) {
    const entry = await sign(robin)
    await check(entry, payload)
    const { ok, said } = verified([entry])
    assert.ok(ok, said)
}
const entry = await sign(robin)
assert.ok(verified([await sign(robin, { kid: 'any', typ: 'JOSE' })]).ok)
assert.ok(!verified([entry], { ...record.content, round: '0'.repeat(32) }).ok)
assert.ok(!verified([{ ...entry, header: {} }]).ok)
assert.ok(!verified([await sign(robin, { x5c: newKey('Robin Example').x5c })]).ok)
assert.ok(!verified([await sign(newKey('Somebody Else'))]).ok)
assert.match(verified([await sign(newKey('Somebody Else'))]).said, /Somebody Else/)

// A countersignature of jose's, and the same where it isn't bound to the signature before it. jose doesn't choose low S:
// it signs until S comes low.
const order = 0xffffffff00000000ffffffffffffffffbce6faada7179e84f3b9cac2fc632551n
const isLow = ({ signature }) => BigInt('0x' + Buffer.from(signature, 'base64url').subarray(32).toString('hex')) <= order / 2n
const alex = newKey('Alex Sample')

async function countersign(after, more = {}) {
    const text = JSON.parse(canonicalize({
        after, alg: 'ES256', at: '2026-06-20T07:30:30.500Z', s: 'low',
        signer: { certificate: 'X.66/12', name: 'Alex Sample', role: 'mechanic' }, x5c: alex.x5c, ...more
    }))
    for (;;) {
        const { protected: header, signature } = await new FlattenedSign(payload)
            .setProtectedHeader(text).sign(await importPKCS8(alex.key, 'ES256'))
        if (isLow({ signature })) return { protected: header, signature }
    }
}
const bound = verified([entry, await countersign(nameOf(entry))])
assert.ok(bound.ok, bound.said)
assert.match(bound.said, /Alex Sample/)
assert.ok(!verified([entry, await countersign(nameOf(record.signatures[0]))]).ok)
assert.ok(!verified([entry, await countersign(nameOf(entry), { kid: 'any' })]).ok)
assert.ok(!verified([await countersign(nameOf(entry))]).ok)
console.log('jose and Ambit agree.')
