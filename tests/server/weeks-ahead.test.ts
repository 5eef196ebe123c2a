import { beforeAll, describe, expect, it } from 'vitest'
import { checkAhead } from '#ahead/check-ahead'
import { choicesOfPlan } from '#ahead/draft/choices-of-plan'
import { plannedPractices } from '#ahead/draft/planned-practices'
import { whatChanged } from '#ahead/explain/what-changed'
import { problemOfAhead } from '#ahead/problem-of-request'
import { firmPractices, type PlannedPractice } from '#ahead/term-plan'
import { listAudit } from '#data/audit'
import { inClub } from '#data/in-club'
import { listProgrammeRules } from '#data/programme-rules'
import { getSession, markWritten } from '#data/sessions'
import { findTermPlan } from '#data/term-plans'
import { rotationColumns } from '#rotation/problem'
import { loadAheadSheet } from '#server/ahead-sheet'
import { loadAheadPage } from '#server/ahead-views'
import { asPlannedAhead } from '#server/next-as-planned'
import { loadPlanPage } from '#server/plan-views'
import { saveTermPlanOf } from '#server/save-term-plan'
import { loadSquadSeason } from '#server/squad-season'
import { loadThemes } from '#server/theme-views'
import { loadToday } from '#server/today-views'
import { type AdultKey, clubId, demoSquads, springId } from '../../seeds/club'
import { loadDemoBook } from '../support/demo-book'
import { demoViewer } from '../support/demo-viewer'

const squadId = demoSquads.underTen.id
const at = { squadId, query: {} }

beforeAll(async () => {
  await loadDemoBook()
}, 60_000)

async function termOf(who: AdultKey = 'idris') {
  const { term } = await loadAheadPage(await demoViewer(who), at)
  if (!term) throw new Error('the demo club has no term')
  return term
}

/** The plan that the page begins with, as it would be sent. */
async function plannedNow(): Promise<readonly PlannedPractice[]> {
  const { request, first } = await termOf()
  return plannedPractices(problemOfAhead(request), first.choices ?? [])
}

type Sent = { readonly version?: number; readonly isTold?: boolean; readonly who?: AdultKey }

async function save(
  practices: readonly PlannedPractice[],
  { version = 0, isTold = false, who = 'idris' }: Sent = {},
) {
  const plan = { practices, asOf: null }
  return saveTermPlanOf(await demoViewer(who), {
    ...{ squadId, termId: springId, knownVersion: version, isTold, plan },
  })
}

const stored = () => inClub(clubId, (tx) => findTermPlan(tx, { squadId, termId: springId }))
const sessionOf = (id: string) => inClub(clubId, (tx) => getSession(tx, id))

describe('the weeks ahead of the demo club', () => {
  it('are for whoever plans the squad’s practices, and for nobody else', async () => {
    for (const who of ['idris', 'maren'] as const) expect((await termOf(who)).id).toBe(springId)
    for (const who of ['samir', 'tobiah', 'chinwe'] as const) {
      await expect(termOf(who)).rejects.toMatchObject({ name: 'AppError' })
      await expect(loadAheadSheet(await demoViewer(who), { ...at, withNames: true })).rejects.toThrow()
    }
  })

  it('rest on what the pages of the book say', async () => {
    const { request, players } = await termOf()
    const themes = await loadThemes(await demoViewer('idris'), { squadId, query: { term: springId } })
    for (const [index, player] of request.players.entries()) {
      const own = themes.players.find(({ id }) => id === player.id)
      expect(own?.name).toBe(players[index]?.name)
      for (const { theme } of themes.rows)
        expect(player.themeSeconds.get(theme.id) ?? 0, theme.name).toBe(
          own?.meetings.get(theme.id)?.seconds ?? 0,
        )
      // A register was taken in some that nobody wrote down.
      expect(player.held).toBeGreaterThanOrEqual(themes.written.written)
      expect(player.held).toBeLessThanOrEqual(themes.written.held)
      expect(player.came).toBeLessThanOrEqual(player.held)
    }
    const second = request.practices[1]?.id ?? ''
    const planning = await loadPlanPage(await demoViewer('idris'), { squadId, sessionId: second })
    for (const { id, gap, keeps } of request.players) {
      const own = planning.players.find((player) => player.id === id)
      expect(own).toMatchObject({ keeps, isMember: true })
      for (const column of rotationColumns)
        expect(gap[column]).toBeCloseTo(own?.season.practice.gap[column] ?? Number.NaN, 6)
    }
  })

  it('begin with a plan of every practice to come that keeps the programme', async () => {
    const { request, first, stored: saved } = await termOf()
    expect(saved).toBeNull()
    const problem = problemOfAhead(request)
    expect(problem.practices.length).toBeGreaterThan(firmPractices)
    expect(checkAhead({ ...problem, designRest: 0 }, first.choices ?? [])).toEqual([])
    expect(request.practices.every(({ day }) => day >= '2026-06-08')).toBe(true)
  })
})

describe('saving the weeks ahead', () => {
  it('is refused where a practice, a design or a rule stands against it, and nothing is written', async () => {
    const planned = await plannedNow()
    const [first, second] = planned
    if (!first || !second) throw new Error('too few practices')
    const refusals: readonly (readonly [readonly PlannedPractice[], RegExp])[] = [
      [planned.slice(1), /was entered since/],
      [[...planned, { ...first, sessionId: 'gone' }], /no longer to come/],
      [
        planned.map((own) => (own === second ? { ...own, designId: first.themeId } : own)),
        /cannot be played then/,
      ],
      [await outOfProgramme(planned), /breaks a rule of the programme/],
      [await otherThanItsTurns(planned), /turns of the practice on 2026-06-08 are planned already/],
    ]
    for (const [practices, words] of refusals) {
      const reply = await save(practices, { isTold: true })
      expect(reply.ok).toBe(false)
      if (!reply.ok) expect(reply.reasons[0]?.message).toMatch(words)
    }
    await expect(save(planned, { who: 'samir' })).rejects.toMatchObject({ code: 'notAllowed' })
    expect(await stored()).toBeNull()
    expect((await sessionOf(second.sessionId)).themeId).not.toBe(second.themeId)
  })

  it('keeps the plan, with a line in the record; theme and design stand on the next practices only if told', async () => {
    const planned = await plannedNow()
    const before = await Promise.all(planned.map(({ sessionId }) => sessionOf(sessionId)))
    expect(await save(planned)).toMatchObject({
      ok: true,
      value: { message: `Saved: ${planned.length} practices ahead.` },
    })
    const quiet = await Promise.all(planned.map(({ sessionId }) => sessionOf(sessionId)))
    expect(quiet).toEqual(before)
    expect(await save(planned)).toMatchObject({ ok: false })
    // Of two at once one is kept, and the other is told so in the page's own words.
    const sent = { version: 1, isTold: true }
    const both = await Promise.all([save(planned, sent), save(planned, sent)])
    const refused = both.flatMap((reply) => (reply.ok ? [] : reply.reasons))
    expect(refused.map(({ message }) => message)).toEqual([
      expect.stringContaining('saved a plan of this term since you opened the page'),
    ])
    const [entry] = await inClub(clubId, (tx) => listAudit(tx, { limit: 1 }))
    expect(entry).toMatchObject({ action: 'saveTermPlan', objectId: squadId, detail: { version: 2 } })
    const told = await Promise.all(planned.map(({ sessionId }) => sessionOf(sessionId)))
    told.forEach((session, index) => {
      const own = planned[index]
      const isTheirs = session.themeId === own?.themeId && session.designId === own?.designId
      // The first one's turns are planned already; it is left as it is.
      if (index > 0) expect(isTheirs).toBe(index < firmPractices || isSame(before[index], own))
      else expect(session).toEqual(before[0])
    })
    const { term } = await loadAheadPage(await demoViewer('idris'), at)
    expect(term?.first.isAsSaved).toBe(true)
    expect(term?.version).toBe(2)
  })

  it('keeps what the coach holds, whatever else is planned anew', async () => {
    const planned = await plannedNow()
    const last = planned.at(-1)
    expect(
      await save(
        planned.map((own) => ({ ...own, isHeld: own === last })),
        { version: 2 },
      ),
    ).toMatchObject({
      ok: true,
    })
    const { request } = await termOf()
    expect(request.practices.at(-1)?.held).toEqual({ themeId: last?.themeId, designId: last?.designId })
    expect(choicesOfPlan(problemOfAhead(request), planned).at(-1)).toBeGreaterThanOrEqual(0)
  })

  it('is what Today says of a practice on which nothing stands yet', async () => {
    const planned = await plannedNow()
    const { season, sessions } = await inClub(clubId, async (tx) => {
      const of = await loadSquadSeason(tx, await demoViewer('idris'), { squadId })
      const ids = planned.map(({ sessionId }) => sessionId)
      return { season: of.season, sessions: await Promise.all(ids.map((id) => getSession(tx, id))) }
    })
    const bare = sessions.map((session) => ({ ...session, themeId: null, designId: null }))
    const said = await inClub(clubId, async (tx) => {
      const all: unknown[] = []
      for (const session of [...bare, ...sessions.slice(0, 1)])
        all.push(await asPlannedAhead(tx, { session, season }))
      return all
    })
    const kept = (await stored())?.plan.practices ?? []
    kept.forEach((own, index) => {
      expect(said[index]).toMatchObject({ themeId: own.themeId, designId: own.designId })
    })
    // What stands on the practice itself comes first.
    expect(said.at(-1)).toEqual({ themeId: sessions[0]?.themeId, designId: sessions[0]?.designId })
    const { next } = await loadToday(await demoViewer('idris'), { squadId })
    expect(next?.design?.id).toBe(sessions[0]?.designId)
    expect(next?.themeName).toBeTruthy()
  })
})

describe('the sheet of the weeks ahead', () => {
  it('names every practice and no child, unless the coach asks', async () => {
    const { players, request } = await termOf()
    const viewer = await demoViewer('idris')
    const [plain, named] = [
      await loadAheadSheet(viewer, { ...at, withNames: false }),
      await loadAheadSheet(viewer, { ...at, withNames: true }),
    ]
    expect(plain?.practices.map(({ day }) => day)).toEqual(
      problemOfAhead(request).practices.map(({ day }) => day),
    )
    expect(plain?.practices.every(({ theme, sentence }) => theme && sentence.endsWith('.'))).toBe(true)
    const isNamed = (sheet: typeof plain) =>
      players.filter(({ name }) => JSON.stringify(sheet?.practices).includes(name)).length
    expect(isNamed(plain)).toBe(0)
    expect(isNamed(named)).toBeGreaterThan(0)
  })
})

describe('after a practice', () => {
  it('the plan is made anew, what was firm stays, and the page says what changed', async () => {
    const kept = (await stored())?.plan
    const first = kept?.practices[0]
    if (!kept || !first) throw new Error('nothing is saved')
    await inClub(clubId, async (tx) => {
      const by = { personId: null, at: new Date() }
      await markWritten(tx, { sessionIds: [first.sessionId], written: 'typedLater', by })
    })
    const term = await termOf()
    expect(term.first.isAsSaved).toBe(false)
    const problem = problemOfAhead(term.request)
    const choices = term.first.choices ?? []
    const firm = kept.practices.slice(1, firmPractices)
    expect(plannedPractices(problem, choices).slice(0, firm.length)).toMatchObject(
      firm.map(({ sessionId, themeId, designId }) => ({ sessionId, themeId, designId })),
    )
    const since = term.since.filter(({ day }) => kept.asOf === null || day > kept.asOf)
    const [change] = whatChanged(kept, { problem, plan: { choices, leans: [] } }, since)
    expect(change).toEqual({
      ...{ kind: 'written', day: '2026-06-08', sessionId: first.sessionId },
      ...{ planned: first.themeId, isAsPlanned: false },
    })
  })
})

const isSame = (
  session: { readonly themeId: string | null; readonly designId: string | null } | undefined,
  own: PlannedPractice | undefined,
) => session?.themeId === own?.themeId && session?.designId === own?.designId

/** The same plan with a theme where the programme has no room for it: the last one that may come no more, in the last practice. */
async function outOfProgramme(planned: readonly PlannedPractice[]): Promise<readonly PlannedPractice[]> {
  const rules = await inClub(clubId, (tx) => listProgrammeRules(tx, { squadId, termId: springId }))
  const problem = problemOfAhead((await termOf()).request)
  for (const [practice, { offers, held }] of problem.practices.entries()) {
    if (held) continue
    for (const { theme, design } of offers) {
      const [themeId, designId] = [problem.themes[theme]?.id ?? '', problem.designs[design]?.id ?? '']
      const other = planned.map((own, index) => (index === practice ? { ...own, themeId, designId } : own))
      if (checkAhead({ ...problem, designRest: 0 }, choicesOfPlan(problem, other)).length > 0) return other
    }
  }
  throw new Error(`no theme is out of the programme of ${rules.length} rules`)
}

/** The same plan with another design in the first practice, whose turns are planned already. */
async function otherThanItsTurns(planned: readonly PlannedPractice[]): Promise<readonly PlannedPractice[]> {
  const { practices, themes, designs } = problemOfAhead((await termOf()).request)
  const own = practices[0]?.offers.find(({ design }) => designs[design]?.id !== planned[0]?.designId)
  const other = {
    themeId: themes[own?.theme ?? -1]?.id ?? '',
    designId: designs[own?.design ?? -1]?.id ?? '',
  }
  return planned.map((one, index) => (index === 0 ? { ...one, ...other } : one))
}
