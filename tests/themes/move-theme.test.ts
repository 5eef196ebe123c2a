import { describe, expect, it } from 'vitest'
import { moveTheme, orderAfterLast, themesUnder } from '#themes/move-theme'
import type { Theme } from '#themes/theme'

const theme = (id: string, order: number, parentId: string | null = null): Theme => ({
  id,
  name: id,
  parentId,
  order,
})
const themes = [theme('c', 9), theme('a', 1), theme('b', 4), theme('a1', 1, 'a'), theme('a2', 2, 'a')]
const under = (all: readonly Theme[], parentId: string | null = null) =>
  themesUnder(all, parentId).map(({ id }) => id)

function moved(themeId: string, step: 'up' | 'down'): readonly Theme[] {
  const placed = new Map(moveTheme(themes, { themeId, step }).map(({ id, order }) => [id, order]))
  return themes.map((one) => ({ ...one, order: placed.get(one.id) ?? one.order }))
}

describe('a theme among its siblings', () => {
  it('changes places with the one above or below, and no other level is touched', () => {
    expect(under(themes)).toEqual(['a', 'b', 'c'])
    expect(under(moved('c', 'up'))).toEqual(['a', 'c', 'b'])
    expect(under(moved('a', 'down'))).toEqual(['b', 'a', 'c'])
    expect(under(moved('a2', 'up'), 'a')).toEqual(['a2', 'a1'])
    expect(moveTheme(themes, { themeId: 'a2', step: 'up' }).map(({ id }) => id)).toEqual(['a2', 'a1'])
  })

  it('changes places also with one that has the same number', () => {
    const equal = [theme('a', 1), theme('b', 1)]
    expect(moveTheme(equal, { themeId: 'b', step: 'up' })).toEqual([{ id: 'a', order: 2 }])
  })

  it('stays where it is at an end, and when it is not there', () => {
    expect(moveTheme(themes, { themeId: 'a', step: 'up' })).toEqual([])
    expect(moveTheme(themes, { themeId: 'c', step: 'down' })).toEqual([])
    expect(moveTheme(themes, { themeId: 'z', step: 'up' })).toEqual([])
  })

  it('stands last when it is new', () => {
    expect([null, 'a', 'b'].map((parentId) => orderAfterLast(themes, parentId))).toEqual([10, 3, 1])
  })
})
