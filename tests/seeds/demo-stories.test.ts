import { describe, expect, it } from 'vitest'
import { causeOf, mainPart } from '#fairness/cause'
import type { Flag } from '#fairness/flags/raise-flags'
import { emptyKindStanding } from '#fairness/standing'
import { dueStatusOf } from '#fairness/status'
import { policyInForce } from '#squad/policy'
import { demoSquads, springId } from '../../seeds/club'
import { buildDemoClub } from '../../seeds/demo-club'
import { playerId } from '../../seeds/names'
import { stories } from '../../seeds/stories'
import { type DemoSeason, foldDemoSeason } from '../support/demo-season'

const club = buildDemoClub()
const underTen = foldDemoSeason(club, demoSquads.underTen)
const underTwelve = foldDemoSeason(club, demoSquads.underTwelve)
const policy = policyInForce(club.policies, { ageLimit: 10, day: club.club.calendarDay })

type Story = keyof typeof stories

function practiceOf(season: DemoSeason, story: Story) {
  return season.standings.get(playerId(stories[story]))?.practice ?? emptyKindStanding
}

function rulesOf(season: DemoSeason, story: Story, scope: Flag['scope'] = 'practice') {
  return season.flags
    .filter((flag) => flag.playerId === playerId(stories[story]) && flag.scope === scope)
    .map((flag) => (flag.subject ? `${flag.rule} ${flag.subject}` : flag.rule))
}

// Every claim below is about figures that the core makes of the sessions: none is written into the demo itself.
describe('the stories of the demo club are in its numbers', () => {
  it('one was short-changed: few turns at attack while there, and flagged for it', () => {
    const { attack } = practiceOf(underTen, 'shortChanged').roles
    expect(rulesOf(underTen, 'shortChanged')).toContain('attackShort')
    expect(mainPart(causeOf(attack))).toBe('whileHere')
    expect(attack.turns).toBeLessThan(attack.fairTurns)
  })

  it('one merely missed a lot: that is the main part, and nothing at all is flagged', () => {
    const standing = practiceOf(underTen, 'missedALot')
    const cause = causeOf(standing.roles.attack)
    expect(standing.attended.length / standing.sessionsWritten).toBeLessThan(0.7)
    expect(mainPart(cause)).toBe('missed')
    expect(Math.abs(cause.missed)).toBeGreaterThan(5 * Math.abs(cause.whileHere))
    for (const figure of Object.values(standing.roles)) expect(dueStatusOf(figure, policy)).toBe('within')
    expect(rulesOf(underTen, 'missedALot')).toEqual([])
    expect(rulesOf(underTen, 'missedALot', 'match')).toEqual([])
  })

  it('one attacks as much as is even, and never with more players', () => {
    const standing = practiceOf(underTen, 'neverOutnumbering')
    expect(dueStatusOf(standing.roles.attack, policy)).toBe('within')
    expect(standing.situations.outnumbering.seconds).toBe(0)
    expect(rulesOf(underTen, 'neverOutnumbering')).toEqual(['situationNeverMet outnumbering'])
  })

  it('those who volunteer for goal share it within the band', () => {
    const volunteers = club.players.filter((player) => player.wantsToKeep)
    expect(volunteers).toHaveLength(2)
    for (const { id } of volunteers) {
      const keep = underTen.standings.get(id)?.practice.roles.keep
      expect(keep && dueStatusOf(keep, policy)).toBe('within')
      expect(keep?.seconds).toBeGreaterThan(3600)
    }
  })

  it('a sole keeper is flagged for time in goal while no gap is outside the band', () => {
    const { roles } = practiceOf(underTwelve, 'soleKeeper')
    for (const figure of Object.values(roles)) expect(dueStatusOf(figure, policy)).toBe('within')
    expect(rulesOf(underTwelve, 'soleKeeper')).toEqual([`goalShareOver ${springId}`])
    expect(rulesOf(underTwelve, 'soleKeeper', 'match')).toEqual([`goalShareOver ${springId}`])
  })

  it('one put in goal unwillingly is flagged every time while no gap is outside the band', () => {
    const { roles } = practiceOf(underTwelve, 'unwillingKeeper')
    for (const figure of Object.values(roles)) expect(dueStatusOf(figure, policy)).toBe('within')
    expect(rulesOf(underTwelve, 'unwillingKeeper')).toEqual(['keptUnwillingly'])
    expect(rulesOf(underTwelve, 'unwillingKeeper', 'match')).toEqual(['keptUnwillingly'])
    const [flag] = underTwelve.flags.filter((one) => one.rule === 'keptUnwillingly')
    expect(flag?.sessionIds?.length).toBeGreaterThanOrEqual(3)
  })

  it('one passed at the last three practices: a quiet note, and no flag of a shortfall', () => {
    expect(rulesOf(underTen, 'passes')).toEqual(['passedRunning'])
  })

  it('fewer turns by agreement: really fewer, and nothing flagged', () => {
    const { attack, defend } = practiceOf(underTwelve, 'fewerTurns').roles
    expect(attack.seconds + defend.seconds).toBeLessThan(0.95 * (attack.fairSeconds + defend.fairSeconds))
    expect(rulesOf(underTwelve, 'fewerTurns')).toEqual([])
  })

  it('every acknowledged flag is one that the rules raise, and was raised before it was answered', () => {
    expect(club.acknowledgements).toHaveLength(2)
    for (const answer of club.acknowledgements) {
      const season = answer.squadId === demoSquads.underTen.id ? underTen : underTwelve
      const flag = season.flags.find(
        (one) => one.playerId === answer.playerId && one.rule === answer.rule && one.scope === answer.scope,
      )
      expect(flag?.since && flag.since < answer.at).toBe(true)
    }
  })

  it('the rest of both squads is about even: most players have no flag in practice at all', () => {
    for (const { flags } of [underTen, underTwelve]) {
      const flagged = new Set(flags.filter((flag) => flag.scope === 'practice').map((flag) => flag.playerId))
      expect(flagged.size).toBeLessThanOrEqual(6)
    }
  })

  it('nobody waited more turns in a row than the policy allows', () => {
    expect([...underTen.flags, ...underTwelve.flags].some((flag) => flag.rule === 'waitedInARow')).toBe(false)
  })
})
