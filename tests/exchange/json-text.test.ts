import { describe, expect, it } from 'vitest'
import { findJsonFault } from '#exchange/json-fault'
import { parseJsonText } from '#exchange/json-text'
import { seededRandom } from '../support/seeded-random'

describe('a text that should be JSON', () => {
  it('is parsed, with or without a byte order mark', () => {
    expect(parseJsonText('{"a":[1]}')).toEqual({ ok: true, value: { a: [1] } })
    expect(parseJsonText('\uFEFF[]')).toEqual({ ok: true, value: [] })
  })

  it.each([
    ['', 'is empty; JSON would be right'],
    [' \n ', 'is empty; JSON would be right'],
    ['{\n "a": [1,, 2]}', 'is not JSON: in line 2, column 10, ", 2]}" stands; a value would be right'],
    ['{"a": 1,}', 'is not JSON: in line 1, column 9, "}" stands; a key in double quotes would be right'],
    [
      "{'a': 1}",
      'is not JSON: in line 1, column 2, "\'a\': 1}" stands; a key in double quotes or } would be right',
    ],
    ['[1\n2]', 'is not JSON: in line 2, column 1, "2]" stands; a comma or ] would be right'],
    ['{"a" 1}', 'is not JSON: in line 1, column 6, "1}" stands; a colon would be right'],
    ['[1, 2', 'is not JSON: in line 1, column 6, the text ends; a comma or ] would be right'],
    ['[1]]', 'is not JSON: in line 1, column 4, "]" stands; the end would be right'],
    ['player;date', 'is not JSON: in line 1, column 1, "player;date" stands; a value would be right'],
  ])('is refused with line and column: %j', (text, message) => {
    expect(parseJsonText(text)).toEqual({ ok: false, reasons: [{ path: '$', message }] })
  })

  it('is refused without falling over however deep or long it is', () => {
    expect(findJsonFault('['.repeat(300_000))).toEqual({ offset: 300_000, expected: 'a value or ]' })
    expect(findJsonFault(`"${'a'.repeat(5_000_000)}`)).toEqual({ offset: 0, expected: 'a value' })
  })

  it('has a fault exactly when JSON.parse refuses it', () => {
    const random = seededRandom(8259)
    const whole = '{"a":[1,2.5e3,{"b":"c\\n\\u00e9"},null,true],"d":-0}'
    const marks = [...'{}[]",:\\tru1.0e-n \n\u0001é']
    for (let trial = 0; trial < 20_000; trial += 1) {
      const place = random.whole(0, whole.length)
      const text = `${whole.slice(0, place)}${random.chance(0.7) ? random.pick(marks) : ''}${whole.slice(place + random.whole(0, 1))}`
      let isJson = true
      try {
        JSON.parse(text)
      } catch {
        isJson = false
      }
      expect({ text, isJson: findJsonFault(text) === null }).toEqual({ text, isJson })
    }
  })
})
