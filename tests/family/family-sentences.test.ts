import { describe, expect, it } from 'vitest'
import type { Role } from '#exposure/column'
import { noFigure, type StandingFigure } from '#fairness/standing-figure'
import { type FamilyInput, familySentences } from '#family/family-sentences'
import { sentencesOn } from '#family/sentences-on'
import { defaultPolicy } from '#squad/policy'

// Of 6,000 s due the club's band is 900 s (15 %), of less than 4,000 s it is 600 s.
const due = 6000

const figure = (seconds: number, more: { full?: number; due?: number } = {}): StandingFigure => {
  const fairSeconds = more.due ?? due
  return {
    ...noFigure,
    seconds,
    fairSeconds,
    dueSeconds: fairSeconds,
    fullFairSeconds: more.full ?? fairSeconds,
    membersMeanSeconds: more.full ?? fairSeconds,
  }
}

function sentences(
  roles: Partial<Record<Role, StandingFigure>>,
  more: Partial<Omit<FamilyInput, 'roles'>> = {},
) {
  const all = { attack: figure(due), defend: figure(due), keep: noFigure, rest: figure(due), ...roles }
  const today = more.today ?? '2026-06-15'
  const said = familySentences({
    kind: 'practice',
    roles: all,
    player: { keeps: true, wantsToKeep: false },
    policy: defaultPolicy,
    flags: [],
    ...more,
    today,
  })
  return sentencesOn(said, today)
}

const flag = {
  rule: 'attackShort',
  scope: 'practice',
  status: 'open',
  since: '2026-06-02',
  acknowledged: null,
} as const

describe('what a family is told', () => {
  it('is about even inside the band, and nothing of goal where goal was never due', () => {
    expect(sentences({})).toEqual([
      { says: 'even', topic: 'attack', isPartMissed: false },
      { says: 'even', topic: 'defend', isPartMissed: false },
    ])
  })

  it('says even of the practices a child came to when it missed much', () => {
    expect(sentences({ attack: figure(3000, { due: 3000, full: due }) })[0]).toEqual({
      says: 'even',
      topic: 'attack',
      isPartMissed: true,
    })
  })

  it('waits with fewer for the coach, fourteen days at most', () => {
    const roles = { attack: figure(4000) }
    const topics = (today: string) => sentences(roles, { flags: [flag], today }).map(({ topic }) => topic)
    expect(topics('2026-06-15')).toEqual(['defend'])
    expect(topics('2026-06-16')).toEqual(['attack', 'defend'])
    expect(sentences(roles, { flags: [flag], today: '2026-06-16' })[0]).toEqual({
      says: 'fewer',
      topic: 'attack',
      isPartMissed: false,
      nextStep: null,
      waitsUntil: null,
    })
  })

  it('tells the coach’s next step at once, in words of the list and never in the coach’s own', () => {
    const answered = (reason: string) =>
      sentences(
        { attack: figure(4000, { full: 8000 }) },
        { flags: [{ ...flag, status: 'acknowledged', acknowledged: { reason } }] },
      )[0]
    expect(answered('Putting right next time')).toEqual({
      says: 'fewer',
      topic: 'attack',
      isPartMissed: true,
      nextStep: 'the coach puts it right next time',
      waitsUntil: null,
    })
    expect(JSON.stringify(answered('Swaps with Bao, who hogs the ball'))).not.toMatch(/Bao|hogs/)
  })

  it('waits again when an answered flag has come back', () => {
    const cameBack = { ...flag, acknowledged: { reason: 'Putting right next time' } }
    expect(sentences({ attack: figure(4000) }, { flags: [cameBack] }).map(({ topic }) => topic)).toEqual([
      'defend',
    ])
  })

  it('does not count a flag of another kind, of another rule, or one that cleared', () => {
    const late = { ...flag, since: '2026-01-01' }
    for (const other of [
      { ...late, scope: 'match' as const },
      { ...late, rule: 'defendShort' as const },
      { ...late, status: 'cleared' as const },
    ]) {
      expect(sentences({ attack: figure(4000) }, { flags: [other] }).map(({ topic }) => topic)).toEqual([
        'defend',
      ])
    }
  })

  it('says of more what there will be more of instead, and promises nothing that is not behind', () => {
    const more = (roles: Partial<Record<Role, StandingFigure>>, flags: FamilyInput['flags'] = []) =>
      sentences(roles, { flags }).find(({ says }) => says === 'more')
    const answered = { ...flag, status: 'acknowledged', acknowledged: { reason: 'x' } } as const
    expect(more({ attack: figure(4000), defend: figure(8000) }, [answered])).toEqual({
      says: 'more',
      topic: 'defend',
      moreOf: 'attack',
    })
    expect(more({ attack: figure(5800), defend: figure(8000) })).toMatchObject({ moreOf: 'attack' })
    expect(more({ attack: figure(6200), defend: figure(8000) })).toMatchObject({ moreOf: null })
    // Attack is behind and still waits for the coach: nothing of it is told, by this way neither.
    expect(more({ attack: figure(4000), defend: figure(8000) }, [flag])).toMatchObject({ moreOf: null })
  })

  it('is silent of little goal to one who did not ask for it', () => {
    const roles = { keep: figure(0, { due: 2000 }) }
    expect(sentences(roles).map(({ topic }) => topic)).toEqual(['attack', 'defend'])
    const wants = {
      player: { keeps: true, wantsToKeep: true },
      flags: [{ ...flag, rule: 'keepShort' as const, since: '2026-05-01' }],
    }
    expect(sentences(roles, wants).at(-1)).toMatchObject({ says: 'fewer', topic: 'keep' })
  })

  it('tells of matches the time on the pitch', () => {
    const told = sentences({ rest: figure(0) }, { kind: 'match' })
    expect(told).toEqual([{ says: 'even', topic: 'played', isPartMissed: false }])
  })
})
