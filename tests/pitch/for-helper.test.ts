import { describe, expect, it } from 'vitest'
import { shortName } from '#pitch/short-name'

describe('a name as a helper is told it', () => {
  it.each([
    ['Ada Fenn', 'Ada F.'],
    ['Ada', 'Ada'],
    ['Ada van der Berg', 'Ada B.'],
    ['  Ada   Fenn ', 'Ada F.'],
    ['Zoë O’Brien', 'Zoë O.'],
    // A letter written as two characters, a letter and the mark above it, stays one.
    ['Ana E\u0301mond', 'Ana E\u0301.'],
    ['Li 李', 'Li 李.'],
    ['Bo (2)', 'Bo 2.'],
    ['Guest', 'Guest'],
    ['', ''],
  ])('%s is %s', (name, short) => {
    expect(shortName(name)).toBe(short)
  })
})
