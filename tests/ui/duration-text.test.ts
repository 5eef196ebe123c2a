import { describe, expect, it } from 'vitest'
import { durationText } from '#ui/duration-text'

describe('how long something takes', () => {
  // Common practice, no source: turns are called out in seconds, waits and rounds in minutes.
  it.each([
    [0, '0 s'],
    [45.4, '45 s'],
    [119.4, '119 s'],
    [119.5, '2 min'],
    [130, '2 min 10 s'],
    [300, '5 min'],
  ])('%d seconds are %s', (seconds, text) => {
    expect(durationText(seconds)).toBe(text)
  })
})
