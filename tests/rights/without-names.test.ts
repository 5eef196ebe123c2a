import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { valueWithoutNames, withoutNames } from '#rights/without-names'

const names = {
  own: 'Ada Fenn',
  others: ['Bo Larch', 'Cy Fenn', 'Ann-Marie O’Dell', 'Ada Fenn', 'É. (Di) Quill'],
}
const plain = withoutNames(names)

describe('a text without the names of other children', () => {
  it.each([
    ['Ada is to go with Bo Larch on Tuesday.', 'Ada is to go with [another child] on Tuesday.'],
    ['Bo asked Larch’s mother.', '[another child] asked [another child]’s mother.'],
    ['Both boats, a larch and Bobby.', 'Both boats, a larch and Bobby.'],
    ['The Fenn family: Ada Fenn.', 'The Fenn family: Ada Fenn.'],
    ['With Ann-Marie and É. (Di) Quill.', 'With [another child] and [another child].'],
    ['Cy is her brother.', '[another child] is her brother.'],
  ])('%s', (text, told) => {
    expect(plain(text)).toBe(told)
  })

  it('holds no whole name of another, whatever it is', () => {
    const word = fc.stringMatching(/^[A-Z][a-z]{2,6}$/)
    fc.assert(
      fc.property(
        fc.array(fc.tuple(word, word), { minLength: 1, maxLength: 6 }),
        fc.string(),
        (pairs, between) => {
          const others = pairs.map((pair) => pair.join(' '))
          const told = withoutNames({ own: 'X', others })(others.join(` ${between} `))
          for (const name of others) expect(told).not.toContain(name)
        },
      ),
    )
  })

  it('is taken out of every text in a value, and of nothing else', () => {
    const value = { a: ['Bo Larch', 1, null], b: { c: 'Ada Fenn', d: true } }
    expect(valueWithoutNames(value, names)).toEqual({
      a: ['[another child]', 1, null],
      b: { c: 'Ada Fenn', d: true },
    })
  })
})
