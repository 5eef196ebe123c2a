import { expect, it } from 'vitest'
import { leadsBack, lineFrom } from '#common/line-from'

const next = (key: string) => ({ a: 'b', b: 'c', c: 'b', d: 'd' })[key] ?? null

it('goes on until nothing follows, or what was there before', () => {
  expect(lineFrom('e', next)).toEqual(['e'])
  expect(lineFrom('a', next)).toEqual(['a', 'b', 'c'])
  expect(lineFrom('d', next)).toEqual(['d'])
})

it('leads back only to what is on the circle', () => {
  expect(['a', 'b', 'c', 'd', 'e'].filter((key) => leadsBack(key, next))).toEqual(['b', 'c', 'd'])
})
