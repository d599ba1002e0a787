// The airframe's JSON Schema (2020-12), as npm ajv reads it: it takes the demo aircraft and refuses what is plainly wrong.
import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import Ajv from 'ajv/dist/2020.js'

const root = new URL('../../', import.meta.url)
const json = (path) => JSON.parse(readFileSync(new URL(path, root), 'utf8'))

const validate = new Ajv({ allErrors: true, strict: true, strictTypes: false, strictRequired: false }).compile(json('core/airframe/airframe.schema.json'))
for (const aircraft of ['helicopter', 'aeroplane']) {
    const airframe = json(`demo-aircraft/${aircraft}/airframe.json`)
    assert.ok(validate(airframe), JSON.stringify(validate.errors, null, 1))

    const wrong = {
        'unknown field': (a) => { a.more = 1 },
        'unknown field of a point': (a) => { a.points[0].more = 1 },
        'no points': (a) => { delete a.points },
        'no name of a stand': (a) => { delete a.stands[0].name },
        'later version': (a) => { a.version = 2 },
        'another format': (a) => { a.format = 'other' },
        'unknown access': (a) => { a.stands[0].access = 'hover' },
        'unknown how': (a) => { a.points[0].how = ['smell'] },
        'a third hand': (a) => { a.stands[0].hands = 3 },
        'text for a number': (a) => { a.stands[0].level = 'high' },
        'an outline of two places': (a) => { a.zones[0].outline.length = 2 },
        'an inspection every nothing': (a) => { a.inspections[0].every = [] },
        'every 0 hours': (a) => { a.inspections[1].every[0].count = '0.0' },
        'hours and months in one': (a) => { a.inspections[1].every[0].months = 12 },
        'half a month': (a) => { a.inspections[0].every[0].months = 0.5 },
        'an allowance on no condition': (a) => { delete a.inspections[1].every[0].allowance.only },
        'a language in capitals': (a) => { a.translations.DE = {} },
        'an empty translation': (a) => { a.translations.de[a.name] = '' },
        'a life with an allowance': (a) => { a.lifeLimits[1].life[0].allowance = { most: '1', only: 'Never.' } },
    }
    for (const [what, spoil] of Object.entries(wrong)) {
        const spoiled = structuredClone(airframe)
        spoil(spoiled)
        assert.ok(!validate(spoiled), `${aircraft}: ${what} was taken`)
    }
}
console.log('ajv and the demo aircraft agree.')
