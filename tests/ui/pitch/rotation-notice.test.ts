import { describe, expect, it } from 'vitest'
import { tooFewWords } from '#ui/pitch/rotation-notice'

const small = [{ attack: 2, defend: 1, keep: 0 }]
const smaller = [{ attack: 1, defend: 1, keep: 0 }]
const proposals = [
  { sentence: 'One area instead of two. One waits.', stations: small },
  { sentence: '1 against 1 instead of 2 against 1. Two wait.', stations: smaller },
]
const shapes = [0, 2].map((round) => ({ round, proposals }))

describe('too few for the plan', () => {
  it('says what the round on the screen became: the first proposal, or the one that was chosen', () => {
    expect(tooFewWords(shapes, new Map(), 0)).toBe(
      'Too few for the plan. This round: One area instead of two. One waits.',
    )
    expect(tooFewWords(shapes, new Map([[2, smaller]]), 2)).toBe(
      'Too few for the plan. This round: 1 against 1 instead of 2 against 1. Two wait.',
    )
  })

  it('names the rounds to come that will be smaller', () => {
    expect(tooFewWords(shapes, new Map(), 1)).toBe('Too few for rounds 1 and 3 as planned: smaller areas.')
  })
})
