import { describe, expect, it } from 'vitest'
import { groupBy } from '#common/group-by'

describe('groups of one key', () => {
  it('stand in the order in which their keys first come, with their items in the order given', () => {
    const groups = groupBy(['bo', 'ana', 'bea', 'al'], (name) => name.charAt(0))
    expect([...groups]).toEqual([
      ['b', ['bo', 'bea']],
      ['a', ['ana', 'al']],
    ])
  })

  it('are none of nothing', () => {
    expect(groupBy([], String).size).toBe(0)
  })
})
