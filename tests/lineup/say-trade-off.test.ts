import { expect, it } from 'vitest'
import { sayTradeOff } from '#lineup/say-trade-off'

it.each([
  [
    { fewer: 2, players: 1, seconds: 240 },
    'Two changes fewer: one player is 4 minutes further from its even share.',
  ],
  [{ fewer: 1, players: 0, seconds: 0 }, 'One change fewer: nobody is further from an even share.'],
  [
    { fewer: 3, players: 4, seconds: 90, worse: ['minutes', 'starts', 'lines'] as const },
    'Three changes fewer: four players are up to 1:30 minutes further from their even share; starts and lines are shared less evenly.',
  ],
  [
    { fewer: 1, players: 1, seconds: 60, short: 300 },
    'One change fewer: one player is 1 minute further from its even share; 5 minutes of what was promised are missed.',
  ],
])('a trade-off in words: %o', (offer, said) => {
  expect(sayTradeOff({ short: 0, worse: [], ...offer })).toBe(said)
})
