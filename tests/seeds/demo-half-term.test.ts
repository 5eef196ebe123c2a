import { beforeAll, describe, expect, it } from 'vitest'
import { chancesInSlices } from '#ahead/chance/chances-in-slices'
import { inOneGo } from '#ahead/chance/in-one-go'
import { checkAhead } from '#ahead/check-ahead'
import { planValue } from '#ahead/plan-value'
import { problemOfAhead } from '#ahead/problem-of-request'
import { quickAhead } from '#ahead/quick-plan'
import { allDays } from '#common/time'
import { listFlagStates } from '#data/flag-states'
import { inClub } from '#data/in-club'
import { listSessions } from '#data/sessions'
import { loadAheadRequest } from '#server/ahead-request'
import { getSquadSeason } from '#server/squad-season'
import { clubId, demoSeason, demoSquads, springId } from '../../seeds/club'
import { playerId } from '../../seeds/names'
import { halfTerm, loadDemoAtHalfTerm } from '../support/demo-half-term'

const squadId = demoSquads.underTen.id
const now = new Date(`${halfTerm}T12:00:00Z`)

beforeAll(loadDemoAtHalfTerm, 60_000)

const request = () =>
  inClub(clubId, async (tx) => {
    const of = await getSquadSeason(tx, { squadId, now })
    const term = of.season.terms.find(({ id }) => id === springId)
    if (!term) throw new Error('no spring term')
    return (await loadAheadRequest(tx, { of, term, stored: null })).request
  })

describe('the demo club at half term', () => {
  it('is written up to its day and not a day further', async () => {
    const sessions = await inClub(clubId, (tx) => listSessions(tx, { squadId, ...allDays }))
    const written = sessions.filter((session) => session.written !== 'notWritten')
    expect(written.length).toBeGreaterThan(20)
    expect(written.every(({ day }) => day < halfTerm)).toBe(true)
    const flags = await inClub(clubId, (tx) =>
      listFlagStates(tx, { squadIds: [squadId], seasonId: demoSeason.id }),
    )
    expect(flags.length).toBeGreaterThan(0)
    expect(flags.every(({ since }) => since < halfTerm)).toBe(true)
  })

  it('has weeks to plan: holidays among them, a block, a smaller ground, a child who will be away', async () => {
    const problem = problemOfAhead(await request())
    expect(problem.practices).toHaveLength(14)
    const days = problem.practices.map(({ day }) => day)
    // The fair is on the field.
    expect(days).not.toContain('2026-06-23')
    const jiho = problem.players.findIndex(({ id }) => id === playerId('jiho'))
    const away = problem.practices.filter(({ comes }) => comes[jiho] === 0).map(({ day }) => day)
    expect(away).toEqual(['2026-06-16', '2026-06-18', '2026-06-25'])
    expect(problem.blocks).toHaveLength(1)
    const [small, large] = ['2026-06-11', '2026-06-09'].map(
      (day) => problem.practices.find((practice) => practice.day === day)?.offers.length ?? 0,
    )
    expect(small).toBeGreaterThan(0)
    expect(small).toBeLessThan(large ?? 0)
  })

  it('has differences that a plan can close: its value is better than before any of these practices', async () => {
    const problem = problemOfAhead(await request())
    const plan = quickAhead(problem, { seed: 1 })
    if (!plan) throw new Error('no plan')
    expect(checkAhead(problem, plan.choices)).toEqual([])
    const nothing = { ...problem, practices: [] }
    const before = planValue(nothing, { choices: [], leans: [] })
    expect(planValue(problem, plan).balance).toBeLessThan(before.balance / 2)
  })

  it('has a plan that makes most likely to end inside, and nobody less likely than if all went on as so far', async () => {
    const problem = problemOfAhead(await request())
    const plan = quickAhead(problem, { seed: 1 })
    if (!plan) throw new Error('no plan')
    const chances = inOneGo(chancesInSlices(problem, plan, { seed: 1, draws: 100 }))
    const likely = (way: typeof chances.carryOn) =>
      way?.players.filter(({ seats }) => seats.word === 'likely').length ?? 0
    expect(likely(chances.plan)).toBeGreaterThanOrEqual(12)
    expect(likely(chances.carryOn)).toBeLessThanOrEqual(8)
    chances.plan.players.forEach(({ seats }, player) => {
      expect(seats.high).toBeGreaterThanOrEqual(chances.carryOn?.players[player]?.seats.low ?? 0)
    })
  })
})
