import { describe, expect, it } from 'vitest'
import { groupBy } from '#common/group-by'
import { isDay } from '#common/time'
import { readSeasonLog } from '#exchange/season-log'
import { replayPractice } from '#practice/replay'
import { writtenWays } from '#squad/written'
import { demoSquads } from '../../seeds/club'
import { buildDemoClub } from '../../seeds/demo-club'
import { playerId } from '../../seeds/names'
import { themeId } from '../../seeds/programme'
import { seasonLogOfSquad } from '../../seeds/season-log-of-squad'
import { heldSessions } from '../support/demo-season'

const club = buildDemoClub()
const { underTen, underTwelve } = demoSquads
const squads = [underTen, underTwelve]
const practices = club.sessions.filter((session) => session.kind === 'practice')
const turnsOf = (session: (typeof club.sessions)[number]) => replayPractice(session.events).turns
const registerStates = club.sessions.flatMap((session) => session.register.map((line) => line.state))

describe('the demo club', () => {
  it('is the same club to the last id every time', () => {
    expect(JSON.stringify(buildDemoClub())).toBe(JSON.stringify(club))
  })

  it('has squads of 14 and 16, a season of two terms, fifteen designs', () => {
    const sizes = squads.map(({ id }) => club.memberships.filter((line) => line.squadId === id).length)
    expect(sizes).toEqual([14, 16])
    expect(club.season.terms).toHaveLength(2)
    expect(club.designs).toHaveLength(15)
  })

  it('has about thirty practices and nine matches a squad so far, and the next ones planned', () => {
    for (const squad of squads) {
      const held = heldSessions(club, squad)
      expect(held.filter((session) => session.kind === 'practice').length).toBeGreaterThanOrEqual(30)
      expect(held.filter((session) => session.kind === 'match')).toHaveLength(9)
      const next = club.sessions.filter((s) => s.squadId === squad.id && s.day > club.club.calendarDay)
      expect(next.map((session) => session.written)).toEqual(next.map(() => 'notWritten'))
      expect(next.length).toBeGreaterThanOrEqual(4)
    }
  })

  it('gives nothing two ids, and every day is in the calendar and the season', () => {
    const ids = [
      ...club.people,
      ...squads,
      ...club.players,
      ...club.themes,
      ...club.designs,
      ...club.sessions,
      ...club.sessions.flatMap((session) => session.events),
    ].map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    for (const { day } of club.sessions) {
      expect(isDay(day) && club.season.firstDay <= day && day <= club.season.lastDay).toBe(true)
    }
  })

  it('has no two players of one name', () => {
    expect(new Set(club.players.map(({ name }) => name)).size).toBe(club.players.length)
  })

  // The reader of season logs refuses a player in two places, seated while away, overlapping turns and so on.
  it.each(squads)('has sessions of the $name that the reader of season logs accepts', (squad) => {
    expect(readSeasonLog(JSON.parse(JSON.stringify(seasonLogOfSquad(club, squad.id)))).ok).toBe(true)
  })
})

describe('what the demo club shows', () => {
  it('sessions written in every way and some not at all, by squad', () => {
    const ways = new Set(practices.map((session) => session.written))
    expect([...ways].toSorted()).toEqual([...writtenWays].toSorted())
  })

  it('too little written of the under-twelves in autumn, enough after it', () => {
    const share = (from: string, to: string) => {
      const held = heldSessions(club, underTwelve).filter(({ day }) => from <= day && day <= to)
      return held.filter(({ written }) => written !== 'notWritten').length / held.length
    }
    const practicesInAutumn = heldSessions(club, underTwelve).filter(
      (s) => s.kind === 'practice' && s.day < '2026',
    )
    const written = practicesInAutumn.filter((s) => s.written !== 'notWritten').length
    expect(written / practicesInAutumn.length).toBeLessThan(0.6)
    expect(share('2026-01-01', '2026-06-30')).toBeGreaterThan(0.8)
    expect(share('2025-09-01', '2026-06-30')).toBeGreaterThan(0.6)
  })

  it('a register with not playing, out for today, late comers and early leavers', () => {
    expect(registerStates).toContain('notPlaying')
    expect(registerStates).toContain('out')
    const lines = practices.flatMap((session) => session.register.map((line) => ({ line, session })))
    expect(lines.some(({ line }) => line.state === 'here' && line.from >= 480)).toBe(true)
    expect(lines.some(({ line, session }) => line.to < (session.lengthSeconds ?? 0))).toBe(true)
  })

  it('nobody playing again after being out for today', () => {
    for (const session of club.sessions) {
      for (const out of session.register.filter((line) => line.state === 'out')) {
        const own = session.register.filter((line) => line.playerId === out.playerId)
        expect(own.every((line) => line.state === 'out' || line.to <= out.from)).toBe(true)
      }
    }
  })

  it('a January joiner who is at nothing before', () => {
    const [joined] = club.memberships.filter((line) => line.playerId === playerId('chiara'))
    expect(joined?.firstDay.slice(0, 7)).toBe('2026-01')
    const met = club.sessions.filter((s) => s.register.some((line) => line.playerId === playerId('chiara')))
    expect(met.length).toBeGreaterThan(10)
    expect(met.every(({ day }) => day >= (joined?.firstDay ?? ''))).toBe(true)
  })

  it('guests: a visitor of no squad within the last four weeks, and a player of the other squad', () => {
    const visits = club.sessions.filter((s) => s.register.some((line) => line.playerId === playerId('pia')))
    expect(visits.map(({ day }) => day)).toEqual(['2026-05-19', '2026-06-02'])
    expect(club.memberships.some((line) => line.playerId === playerId('pia'))).toBe(false)
    const lent = heldSessions(club, underTwelve).filter((s) =>
      s.register.some((l) => l.playerId === playerId('luca')),
    )
    expect(lent.map(({ kind }) => kind)).toEqual(['practice', 'match'])
  })

  it('a theme that both programmes wish for in spring and nobody practised', () => {
    const wished = club.programme.filter((entry) => entry.themeId === themeId('winningBack'))
    expect(wished).toHaveLength(2)
    expect(practices.some((s) => turnsOf(s).some((turn) => turn.themeId === themeId('winningBack')))).toBe(
      false,
    )
  })

  it('programmes whose wishes add up to the whole of each term', () => {
    for (const squad of squads) {
      for (const term of club.season.terms) {
        const wishes = club.programme.filter(
          (entry) => entry.squadId === squad.id && entry.termId === term.id,
        )
        expect(wishes.reduce((sum, entry) => sum + entry.wishedShare, 0)).toBeCloseTo(1, 12)
      }
    }
  })

  it('weeks ahead: no practice held on a day without, one to come that is, a smaller ground, a child away', () => {
    const isClosed = (day: string, squadId: string) =>
      club.closedDays.some(
        (span) => (span.squadId ?? squadId) === squadId && span.firstDay <= day && day <= span.lastDay,
      )
    const onClosed = practices.filter(({ day, squadId }) => isClosed(day, squadId))
    expect(onClosed.map(({ day, written }) => [day, written])).toEqual([['2026-06-23', 'notWritten']])
    const toCome = practices.filter(
      ({ day, squadId }) => day >= club.club.calendarDay && squadId === underTen.id,
    )
    expect(toCome).toHaveLength(8)
    expect(new Set(toCome.map(({ place }) => place))).toEqual(new Set(club.grounds.map(({ place }) => place)))
    const small = Math.min(...club.grounds.map(({ lengthM }) => lengthM))
    const large = Math.max(...club.grounds.map(({ lengthM }) => lengthM))
    expect(club.designs.filter(({ areaLengthM }) => areaLengthM > small).length).toBeGreaterThan(1)
    expect(club.designs.filter(({ areaLengthM }) => areaLengthM > large)).toHaveLength(1)
    const [away] = club.away
    expect(
      toCome.filter(({ day }) => away && away.firstDay <= day && day <= away.lastDay).length,
    ).toBeGreaterThan(1)
    // What is planned for them is about the theme of its design.
    for (const { designId, themeId: planned } of toCome)
      expect(planned).toBe(club.designs.find(({ id }) => id === designId)?.themeId)
  })

  it('turns in which either side was given the choice, free games in two halves, corrections', () => {
    const turns = practices.flatMap(turnsOf)
    expect(new Set(turns.map((turn) => turn.chosenBy ?? null))).toEqual(new Set([null, 'attack', 'defend']))
    expect(turns.some((turn) => turn.continuesWait)).toBe(true)
    expect(practices.some((session) => session.events.some((event) => event.kind === 'void'))).toBe(true)
  })

  it("a cover coach's sessions, a handover, a session called off", () => {
    const covers = club.coaches.filter((line) => line.kind === 'cover')
    const led = club.sessions.filter((s) => covers.some((line) => line.personId === s.ledById))
    expect(led.length).toBeGreaterThanOrEqual(3)
    const lines = club.coaches.filter((line) => line.squadId === underTwelve.id && line.kind === 'coach')
    expect(lines.map(({ firstDay, lastDay }) => [firstDay, lastDay])).toEqual([
      ['2025-09-01', '2026-01-04'],
      ['2026-01-05', null],
    ])
    expect(club.sessions.filter((session) => session.cancelledAt !== null)).toHaveLength(1)
  })

  it('two versions of the policy, and the autumn reviewed and answered within seven days', () => {
    expect(club.policies.map(({ effectiveFrom }) => effectiveFrom)).toEqual(['2025-09-01', '2026-01-05'])
    for (const review of club.reviews) {
      const days = (Date.parse(review.answer?.at ?? '') - Date.parse(review.openedOn)) / 86_400_000
      expect(days).toBeGreaterThan(0)
      expect(days).toBeLessThan(7)
    }
  })

  it('a head coach, a coach of each squad, and parents', () => {
    const roles = club.people.map(({ role }) => role)
    expect(roles).toContain('headCoach')
    expect(roles.filter((role) => role === 'guardian')).toHaveLength(3)
    const coachesNow = club.coaches.filter((line) => line.kind === 'coach' && line.lastDay === null)
    expect(new Set(coachesNow.map((line) => line.squadId)).size).toBe(2)
  })

  it('an administrator, a helper, a child of two guardians, one guardian who has used no link, and a coach with a child', () => {
    const roleOf = new Map<string, string>(club.people.map(({ id, role }) => [id, role]))
    expect([...roleOf.values()]).toEqual(expect.arrayContaining(['administrator', 'helper']))
    const guardians = groupBy(club.guardianships, ({ personId }) => personId)
    const claimed = club.guardianships.filter(({ claimedAt }) => claimedAt !== null)
    const byChild = groupBy(claimed, ({ playerId }) => playerId)
    expect([...byChild.values()].some((ofChild) => ofChild.length === 2)).toBe(true)
    expect([...guardians.values()].filter((own) => own.every(({ claimedAt }) => claimedAt === null))).toEqual(
      [[expect.anything(), expect.anything()]],
    )
    expect(claimed.filter(({ personId }) => roleOf.get(personId) === 'coach')).toHaveLength(1)
  })
})
