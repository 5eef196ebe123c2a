import { describe, expect, it } from 'vitest'
import { longestTitle } from '#exchange/table/name-cells'
import { newSessionInput, practiceInput } from '#server/session-input'

// U+1F98A takes two UTF-16 units and is one character (the Unicode Standard, 3.9, D91); the database counts characters.
const fox = '\u{1f98a}'

describe('the title of a session', () => {
  const problemOf = (title: string) => {
    const { success, error } = newSessionInput.shape.title.safeParse(title)
    return success ? null : error.issues[0]?.message
  }

  it('may have as many characters as a file may bring, whatever they take to store', () => {
    expect(problemOf(fox.repeat(longestTitle))).toBeNull()
    expect(problemOf(`  ${'a'.repeat(longestTitle)}  `)).toBeNull()
    expect(problemOf(fox.repeat(longestTitle + 1))).toBe('a title can be 120 characters at most')
    expect(problemOf('a'.repeat(longestTitle + 1))).toBe('a title can be 120 characters at most')
  })

  it('may be left out', () => {
    expect(newSessionInput.shape.title.parse(undefined)).toBe('')
  })
})

describe('the title of a round', () => {
  it('is held to the same', () => {
    const titleOfRound = practiceInput.shape.grid.shape.columns.element.shape.title
    expect(titleOfRound.safeParse(fox.repeat(longestTitle)).success).toBe(true)
    expect(titleOfRound.safeParse(fox.repeat(longestTitle + 1)).success).toBe(false)
  })
})
