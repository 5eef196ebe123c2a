import { beforeEach } from 'vitest'
import type { Viewer } from '#access/viewer'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { recordPeople } from '#data/people'
import { recordSquadCoach } from '#data/squad-coaches'
import { listEvents } from '#data/turn-events'
import { getVersion } from '#data/written-history'
import { gridOfTurns } from '#practice/grid-of-turns'
import { findViewer } from '#server/find-viewer'
import { writePractice } from '#server/session-actions'
import type { PracticeInput } from '#server/session-input'
import { turnsThatStand } from '#server/write-practice'
import { askAsPerson } from './next-request'
import { aClub, enterSession, ownerDatabase, type TestClub } from './test-club'
import { formOf, typedPractice } from './typed-session'

/** Before any form was sent. */
export const idle = { status: 'idle' } as const

/** Two rounds of two turns: two against one with a keeper, sides swapped after the first, one player waiting. */
export const twoRounds = ['A D', 'A D', 'D A', 'W .', 'K K']

/** A coach of the club who has no squad. */
export const otherCoachId = newId()

/** A club, and a practice of it on 8 September 2026 that nobody has written; both new for every test. */
export type Written = { club: TestClub; sessionId: string }

/** Sets the club up anew before each test; the squad's coach asks. */
export function aClubForWriting({ players = 5 } = {}): Written {
  const at = {} as Written
  beforeEach(async () => {
    at.club = await aClub({ players, isDemo: true })
    await standStill(at.club)
    const { squadId, coach } = at.club
    await at.club.run(async (tx) => {
      const { personId } = coach
      await recordSquadCoach(tx, { squadId, personId, kind: 'coach', firstDay: '2020-08-01', lastDay: null })
      await recordPeople(tx, [{ id: otherCoachId, name: 'Nia Ash', role: 'coach' }])
    })
    at.sessionId = await enterSession(at.club)
    askAs(at.club, 'coach')
  })
  return at
}

/** Whatever day the tests are run on, it is 1 October 2026 in the club: the practice has been held. */
function standStill({ club }: TestClub) {
  const data = { calendarDay: new Date('2026-10-01T00:00:00Z') }
  const work = (tx: ClubTx) => tx.db.club.update({ where: { id: club.id }, data })
  return inClub(club.id, work, { database: ownerDatabase() })
}

export type Asker = 'coach' | 'headCoach' | 'otherCoach' | 'guardian'

export function askAs(at: TestClub, who: Asker): void {
  askAsPerson({ clubId: at.club.id, personId: personIdOf(at, who) })
}

export function personIdOf({ coach, headCoachId, guardianId }: TestClub, who: Asker): string {
  return {
    coach: coach.personId,
    headCoach: headCoachId,
    otherCoach: otherCoachId,
    guardian: guardianId,
  }[who]
}

/** Who somebody of the club is as a viewer today. */
export async function viewerOf({ club }: Written, who: Asker): Promise<Viewer> {
  const viewer = await findViewer({ clubId: club.club.id, personId: personIdOf(club, who) })
  if (!viewer) throw new Error(`no ${who}`)
  return viewer
}

export const versionNow = ({ club, sessionId }: Written) => club.run((tx) => getVersion(tx, sessionId))
export const eventsNow = ({ club, sessionId }: Written) => club.run((tx) => listEvents(tx, sessionId))

/** Sends the two rounds through the door of the page, but for what is said. */
export async function write(at: Written, change: Partial<PracticeInput> = {}) {
  const { club, sessionId } = at
  const version = await versionNow(at)
  return writePractice(idle, formOf(typedPractice(club, twoRounds, { sessionId, version, ...change })))
}

/** What the page of correction would send: the turns that stand, opened again, with a change. */
export async function reopened(
  at: Written,
  change: (grid: PracticeInput['grid']) => PracticeInput['grid'],
): Promise<Partial<PracticeInput>> {
  const opened = gridOfTurns(turnsThatStand(await eventsNow(at)), at.club.playerIds)
  return { grid: change(structuredClone(opened) as PracticeInput['grid']) }
}
