import { beforeAll, describe, expect, it } from 'vitest'
import type { Viewer } from '#access/viewer'
import { listAccounts } from '#data/accounts'
import { fewerTurnsOf, listAdjustments } from '#data/adjustments'
import { listFlagStates } from '#data/flag-states'
import { inClub } from '#data/in-club'
import { listSquadPlayers } from '#data/players'
import { listPolicies } from '#data/policies'
import { listSessions } from '#data/sessions'
import { listSquadCoaches } from '#data/squad-coaches'
import { listProgramme, listThemes } from '#data/themes'
import { evennessOf } from '#fairness/evenness'
import { themedPractices } from '#fairness/theme-parts'
import { loadCommittee, loadReview, type ReviewBook } from '#server/review-views'
import { coverNameOf } from '#server/session-list-views'
import { policyInForce } from '#squad/policy'
import { coverProgramme } from '#themes/coverage'
import { autumnId, calendarDay, clubId, demoSeason, demoSquads, springId } from '../../seeds/club'
import { loadDemoBook } from '../support/demo-book'
import { demoViewer } from '../support/demo-viewer'

let headCoach: Viewer
let coach: Viewer
let spring: ReviewBook

beforeAll(async () => {
  await loadDemoBook()
  headCoach = await demoViewer('maren')
  coach = await demoViewer('idris')
  spring = await loadReview(headCoach, { query: {} })
}, 60_000)

const termOf = (id: string) => demoSeason.terms.find((term) => term.id === id) ?? demoSeason.terms[0]

// What the page sums in the database is held against the accounts, folded by the core.
async function foldOf(squadId: string, termId: string) {
  const term = termOf(termId)
  if (!term) throw new Error('no term')
  const to = [term.lastDay, calendarDay].sort()[0] ?? calendarDay
  return inClub(clubId, async (tx) => {
    const players = await listSquadPlayers(tx, squadId)
    const adjustments = await listAdjustments(
      tx,
      players.map(({ id }) => id),
    )
    const accounts = await listAccounts(tx, { squadId, from: term.firstDay, to })
    const { ageLimit } = Object.values(demoSquads).find(({ id }) => id === squadId) ?? { ageLimit: 0 }
    const input = {
      accounts,
      players,
      policy: policyInForce(await listPolicies(tx), { ageLimit, day: to }),
      agreements: fewerTurnsOf(adjustments),
      flags: await listFlagStates(tx, { squadIds: [squadId], seasonId: demoSeason.id }),
    }
    const coverage = coverProgramme({
      themes: await listThemes(tx),
      programme: await listProgramme(tx, { squadId, termId: term.id }),
      term: { firstDay: term.firstDay, lastDay: to },
      practices: themedPractices(accounts),
    })
    return { practice: evennessOf(input, 'practice'), match: evennessOf(input, 'match'), coverage }
  })
}

describe('the review of a term', () => {
  it('stands in the order of age, with every squad, and the term that runs', () => {
    expect(spring.term?.id).toBe(springId)
    expect(spring.terms.map(({ id }) => id)).toEqual([autumnId, springId])
    expect(spring.squads.map(({ squad }) => squad.ageLimit)).toEqual([10, 12])
  })

  it('says of every squad what its accounts say', async () => {
    const autumn = await loadReview(headCoach, { query: { term: autumnId } })
    for (const [book, termId] of [
      [spring, springId],
      [autumn, autumnId],
    ] as const) {
      for (const { squad, figures, coverage } of book.squads) {
        const fold = await foldOf(squad.id, termId)
        for (const kind of ['practice', 'match'] as const) {
          const { said, written } = figures[kind]
          expect(written).toEqual(fold[kind].written)
          expect(said?.members).toBe(fold[kind].said?.members)
          expect(said?.withinBand).toBe(fold[kind].said?.withinBand)
          expect(said?.widest?.playerId).toBe(fold[kind].said?.widest?.playerId)
          expect(said?.widest?.column).toBe(fold[kind].said?.widest?.column)
          expect(said?.widest?.answered).toBe(fold[kind].said?.widest?.answered)
          expect(said?.widest?.seconds ?? 0).toBeCloseTo(fold[kind].said?.widest?.seconds ?? 0, 6)
          for (const of of ['attack', 'defend', 'played'] as const) {
            expect(said?.indices[of].jain ?? -1).toBeCloseTo(fold[kind].said?.indices[of].jain ?? -1, 9)
            expect(said?.indices[of].gini ?? -1).toBeCloseTo(fold[kind].said?.indices[of].gini ?? -1, 9)
          }
        }
        expect(coverage.onCourse).toEqual(fold.coverage.onCourse)
      }
    }
  })

  it('has the term before beside it, and none before the first', async () => {
    const autumn = await loadReview(headCoach, { query: { term: autumnId } })
    expect(autumn.termBeforeName).toBeNull()
    expect(autumn.squads.every(({ before }) => before === null)).toBe(true)
    expect(spring.termBeforeName).toBe('Autumn term')
    for (const { squad, before } of spring.squads) {
      const then = autumn.squads.find((one) => one.squad.id === squad.id)
      expect(before?.practice.said?.withinBand).toBe(then?.figures.practice.said?.withinBand)
    }
    expect(autumn.squads.some(({ figures }) => figures.practice.said === null)).toBe(true)
  })

  it('counts the sessions led in the coach’s place as the list of sessions marks them', async () => {
    for (const { squad, covered } of spring.squads) {
      const marked = await inClub(clubId, async (tx) => {
        const coaches = await listSquadCoaches(tx, squad.id)
        const names = new Map(coaches.map(({ personId, personName }) => [personId, personName]))
        const at = { squadId: squad.id, from: '2026-01-01', to: calendarDay, withCancelled: false }
        return (await listSessions(tx, at)).flatMap((one) => coverNameOf(one, { coaches, names }) ?? [])
      })
      expect(covered.flatMap(({ personName, sessions }) => Array(sessions).fill(personName))).toEqual(marked)
    }
    expect(spring.squads.some(({ covered }) => covered.length > 0)).toBe(true)
  })

  it('is shown to a coach for its own squads, once it is opened', async () => {
    expect((await loadReview(coach, { query: {} })).squads).toEqual([])
    const autumn = await loadReview(coach, { query: { term: autumnId } })
    expect(autumn.squads.map(({ squad }) => squad.id)).toEqual([demoSquads.underTen.id])
    expect(autumn.squads[0]?.review?.isFinal).toBe(true)
    expect(autumn.squads[0]?.canAnswer).toBe(false)
    expect(autumn.coaches).toEqual([])
  })

  it('is no parent’s', async () => {
    await expect(loadReview(await demoViewer('chinwe'), { query: {} })).rejects.toMatchObject({
      code: 'notAllowed',
    })
  })

  it('takes a term that is not there as the one that runs', async () => {
    expect((await loadReview(headCoach, { query: { term: 'gone' } })).term?.id).toBe(springId)
  })
})

describe('the committee’s print', () => {
  it('is the head coach’s to make, and nobody else’s', async () => {
    expect((await loadCommittee(headCoach, { query: {} })).squads).toHaveLength(2)
    for (const key of ['idris', 'chinwe'] as const)
      await expect(loadCommittee(await demoViewer(key), { query: {} })).rejects.toMatchObject({
        code: 'notAllowed',
      })
  })
})
