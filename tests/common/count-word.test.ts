import { describe, expect, it } from 'vitest'
import { countWord } from '#common/count-word'

describe('a number as people say it', () => {
  it('is a word up to twenty, and figures beyond', () => {
    // Common practice, no source.
    expect([0, 1, 11, 20, 21].map(countWord)).toEqual(['none', 'one', 'eleven', 'twenty', '21'])
  })
})
