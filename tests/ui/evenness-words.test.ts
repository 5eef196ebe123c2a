import { describe, expect, it } from 'vitest'
import type { Evenness, Widest } from '#fairness/evenness'
import { beforeSentence, changeSentence, evennessSentence } from '#ui/review/evenness-words'

const widest: Widest = {
  playerId: 'secret',
  column: 'attack',
  part: 'whileHere',
  seconds: -1320,
  answered: 'answered',
}

function anEvenness(
  said: { withinBand?: number; widest?: Widest | null; jain?: number } = {},
  kind: Evenness['kind'] = 'practice',
): Evenness {
  const indices = { jain: said.jain ?? 0.97, gini: 0.1 }
  return {
    kind,
    written: { held: 14, written: 12, asPlanned: 0, isEnough: true },
    said: {
      members: 14,
      withinBand: said.withinBand ?? 11,
      widest: said.widest === undefined ? widest : said.widest,
      indices: { attack: indices, defend: indices, played: indices },
      lorenz: [],
    },
  }
}

const silent: Evenness = {
  kind: 'practice',
  written: { held: 14, written: 6, asPlanned: 0, isEnough: false },
  said: null,
}

describe('the sentence on evenness', () => {
  it('counts, then names the widest difference and not whose it is', () => {
    expect(evennessSentence(anEvenness())).toBe(
      '11 of 14 within the band. Widest: 22 min less attacking, while here; answered.',
    )
    expect(evennessSentence(anEvenness({ widest: { ...widest, answered: 'open' } }))).toMatch(
      /; not answered yet\.$/,
    )
    expect(
      evennessSentence(
        anEvenness({ widest: { ...widest, column: 'rest', seconds: 600, answered: 'notFlagged' } }, 'match'),
      ),
    ).toBe('11 of 14 within the band. Widest: 10 min more time off, while here.')
    expect(
      evennessSentence(
        anEvenness({
          withinBand: 14,
          widest: { ...widest, column: 'keep', part: 'goalDuty', answered: 'notFlagged' },
        }),
      ),
    ).toBe('All 14 within the band. Widest: 22 min less time in goal, goal duty.')
  })

  it('is silent of less than half a minute', () => {
    expect(evennessSentence(anEvenness({ withinBand: 14, widest: { ...widest, seconds: 20 } }))).toBe(
      'All 14 within the band.',
    )
  })

  it('says nothing where too little is written, nor of nothing', () => {
    expect(evennessSentence(silent)).toBe('Not enough written down to say.')
    expect(
      evennessSentence({ ...silent, written: { held: 0, written: 0, asPlanned: 0, isEnough: false } }),
    ).toBe('None was held.')
  })
})

describe('the change since the term before', () => {
  it('is told where both terms say something', () => {
    expect(beforeSentence(anEvenness({ withinBand: 9 }), 'Autumn term')).toBe(
      'In Autumn term: 9 of 14 within the band.',
    )
    expect(beforeSentence(silent, 'Autumn term')).toBe('In Autumn term: not enough written down to say.')
    expect(beforeSentence(null, null)).toBeNull()
    const change = (before: number, now: number) =>
      changeSentence({ before: anEvenness({ jain: before }), now: anEvenness({ jain: now }) }, 'Autumn term')
    expect(change(0.95, 0.97)).toBe('Jain index of time played: 0.02 closer to even than in Autumn term.')
    expect(change(0.97, 0.95)).toBe('Jain index of time played: 0.02 further from even than in Autumn term.')
    expect(change(0.97, 0.97)).toBe('Jain index of time played: as in Autumn term.')
    expect(changeSentence({ before: silent, now: anEvenness() }, 'Autumn term')).toBeNull()
  })
})
