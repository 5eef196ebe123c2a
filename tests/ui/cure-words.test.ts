import { describe, expect, it } from 'vitest'
import type { CureToday } from '#fairness/flags/group-by-cure'
import type { Flag } from '#fairness/flags/raise-flags'
import { choiceSentence, passedSentence } from '#ui/player/notes'
import { metText } from '#ui/player/themes-met'
import { cureWords } from '#ui/today/cure-words'

const names: Readonly<Record<string, string>> = { a: 'Ann', b: 'Bo', c: 'Cy' }
const nameOf = (id: string) => names[id] ?? ''

const flag = (playerId: string): Flag => ({
  playerId,
  rule: 'attackShort',
  scope: 'practice',
  subject: '',
  gapSeconds: -900,
  toleranceSeconds: 600,
  size: 900,
  since: '2026-03-03',
  sinceSessionId: 's',
  isClosing: false,
  cure: { kind: 'moreTurns', turns: 3, seconds: 300 },
})

const round = (change: Partial<Extract<CureToday, { kind: 'round' }>>): CureToday => ({
  kind: 'round',
  place: { role: 'attack', situation: 'outnumbering' },
  rounds: 1,
  playerIds: ['a', 'b', 'c'],
  clears: ['a', 'a', 'b', 'b', 'c'].map(flag),
  starts: [],
  of: 7,
  ...change,
})

describe('what to do today', () => {
  it('is a round in one sentence', () => {
    expect(cureWords(round({}), nameOf)).toBe(
      'One round of two against one with Ann, Bo and Cy attacking clears five of seven.',
    )
  })

  it('counts attackers against defenders whichever side the players are on', () => {
    const outnumbered = round({
      place: { role: 'defend', situation: 'outnumbered' },
      playerIds: ['b'],
      rounds: 2,
    })
    expect(cureWords(outnumbered, nameOf)).toBe(
      'Two rounds of two against one with Bo defending clear five of seven.',
    )
    const more = round({ place: { role: 'defend', situation: 'outnumbering' }, playerIds: ['b'] })
    expect(cureWords(more, nameOf)).toBe(
      'One round of one against two with Bo defending clears five of seven.',
    )
  })

  it('helps those on who are too far behind for one day', () => {
    expect(cureWords(round({ starts: [flag('a')] }), nameOf)).toBe(
      'One round of two against one with Ann, Bo and Cy attacking clears five of seven and makes a start on one more.',
    )
    const group: CureToday = {
      kind: 'group',
      group: 'attack',
      playerIds: ['a', 'b'],
      flags: [flag('a'), flag('b')],
      startIn: { role: 'attack', situation: 'level' },
      of: 4,
    }
    expect(cureWords(group, nameOf)).toBe(
      'One round of two against two with Ann and Bo attacking makes a start on two of four.',
    )
  })

  it('is what a group needs where no round helps', () => {
    const waiting: CureToday = {
      kind: 'group',
      group: 'waiting',
      playerIds: ['a', 'c'],
      flags: [],
      startIn: null,
      of: 3,
    }
    expect(cureWords(waiting, nameOf)).toBe('Less waiting for Ann and Cy.')
  })
})

describe('notes on a player', () => {
  it('name turns that were offered and passed as a part of the difference', () => {
    const none = { turns: 0, seconds: 0 }
    expect(passedSentence({ attack: none, defend: none, keep: none })).toBeNull()
    expect(
      passedSentence({ attack: { turns: 2, seconds: 90 }, defend: none, keep: { turns: 1, seconds: 40 } }),
    ).toBe(
      'Was offered 2 turns attacking and 1 turn in goal, and passed. They are a part of the difference and stay in it.',
    )
  })

  it('count who got to choose and say nothing of what was chosen', () => {
    expect(choiceSentence({ chose: 0, choiceTurns: 0 })).toBeNull()
    expect(choiceSentence({ chose: 2, choiceTurns: 5 })).toBe(
      'Was of the side that got to choose in 2 of 5 turns with a choice.',
    )
  })

  it('tell a theme it was away for from one it got no turn in', () => {
    expect([metText({ missed: null }), metText({ missed: 'away' }), metText({ missed: 'noTurn' })]).toEqual([
      'played',
      'wasn’t there',
      'didn’t get a turn',
    ])
  })
})
