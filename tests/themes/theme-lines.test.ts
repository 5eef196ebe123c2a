import { describe, expect, it } from 'vitest'
import { themeAndBelow, themeLines } from '#themes/theme-lines'

const theme = (id: string, parentId: string | null, order: number) => ({ id, name: id, parentId, order })
const themes = [
  theme('dribbling', 'attacking', 2),
  theme('defending', null, 2),
  theme('passing', 'attacking', 1),
  theme('attacking', null, 1),
  theme('wall pass', 'passing', 1),
]

describe('the programme from top to bottom', () => {
  it('puts every theme after the one it stands under, in the order of its level', () => {
    expect(themeLines(themes).map(({ theme: { id }, depth }) => [id, depth])).toEqual([
      ['attacking', 0],
      ['passing', 1],
      ['wall pass', 2],
      ['dribbling', 1],
      ['defending', 0],
    ])
  })

  it('keeps a theme whose parent is not in the list', () => {
    expect(themeLines([theme('alone', 'gone', 1)])).toEqual([{ theme: theme('alone', 'gone', 1), depth: 0 }])
  })

  it('looks at a theme together with all that stand under it', () => {
    expect([...themeAndBelow(themes, 'attacking')].sort()).toEqual([
      'attacking',
      'dribbling',
      'passing',
      'wall pass',
    ])
    expect([...themeAndBelow(themes, 'wall pass')]).toEqual(['wall pass'])
  })
})
