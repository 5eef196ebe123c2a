import fc from 'fast-check'
import { expect, it } from 'vitest'
import { exportKeys } from '#exchange/export-keys'

it('a thing is called by its code, and by its id where the code is missing, doubled or the id of another', () => {
  const keys = exportKeys([
    { id: 'i1', code: 'a' },
    { id: 'i2', code: null },
    { id: 'i3', code: 'b' },
    { id: 'i4', code: 'b' },
    { id: 'i5', code: 'i2' },
    { id: 'i6', code: 'i6' },
  ])
  expect([...keys.values()]).toEqual(['a', 'i2', 'i3', 'i4', 'i5', 'i6'])
})

it('no two things are ever called the same', () => {
  const text = fc.constantFrom('a', 'b', 'c', 'd')
  const things = fc.uniqueArray(fc.record({ id: text, code: fc.option(text) }), { selector: ({ id }) => id })
  fc.assert(
    fc.property(things, (list) => {
      expect(new Set(exportKeys(list).values()).size).toBe(list.length)
    }),
  )
})
