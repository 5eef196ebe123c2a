import type { Membership, Season, Squad, SquadId } from '#squad/squad'
import { demoId } from './ids'
import { type PlayerKey, playerId, underTenKeys, underTwelveKeys } from './names'

export const clubId = demoId('club')

/** Late in the spring term, on a Monday: one squad has an extra practice, the next are in the days after. */
export const calendarDay = '2026-06-08'

export const autumnId = demoId('term/autumn')
export const springId = demoId('term/spring')

export const demoSeason: Season = {
  id: demoId('season/2025-26'),
  name: '2025/26',
  firstDay: '2025-09-01',
  lastDay: '2026-06-30',
  terms: [
    { id: autumnId, name: 'Autumn term', firstDay: '2025-09-01', lastDay: '2025-12-31' },
    { id: springId, name: 'Spring term', firstDay: '2026-01-01', lastDay: '2026-06-30' },
  ],
}

export type SquadKey = 'underTen' | 'underTwelve'

export const demoSquads: Readonly<Record<SquadKey, Squad>> = {
  underTen: { id: demoId('squad/under-ten'), name: 'Under-10s', ageLimit: 10 },
  underTwelve: { id: demoId('squad/under-twelve'), name: 'Under-12s', ageLimit: 12 },
}

export type AdultKey =
  | 'odile'
  | 'maren'
  | 'idris'
  | 'petra'
  | 'samir'
  | 'bea'
  | 'tobiah'
  | 'chinwe'
  | 'uchenna'
  | 'tamsin'

export function personId(key: AdultKey): string {
  return demoId(`person/${key}`)
}

/** The adults of the club; names invented. */
export const demoPeople = [
  { id: personId('odile'), name: 'Odile Harthaven', role: 'administrator' },
  { id: personId('maren'), name: 'Maren Oakenshade', role: 'headCoach' },
  { id: personId('idris'), name: 'Idris Fallowmere', role: 'coach' },
  { id: personId('samir'), name: 'Samir Goldenreed', role: 'coach' },
  { id: personId('petra'), name: 'Petra Lindwhistle', role: 'coach' },
  { id: personId('bea'), name: 'Bea Tidewell', role: 'coach' },
  { id: personId('tobiah'), name: 'Tobiah Sandthistle', role: 'helper' },
  { id: personId('chinwe'), name: 'Chinwe Fernhollow', role: 'guardian' },
  { id: personId('uchenna'), name: 'Uchenna Fernhollow', role: 'guardian' },
  { id: personId('tamsin'), name: 'Tamsin Hollowbeck', role: 'guardian' },
] as const

export type DemoMembership = Membership & { readonly squadId: SquadId }

/** Chiara joined in January; everyone else was there from the first day. */
const joinedLater: Partial<Record<PlayerKey, string>> = { chiara: '2026-01-05' }

export const membersOf: Readonly<Record<SquadKey, readonly PlayerKey[]>> = {
  underTen: underTenKeys,
  underTwelve: underTwelveKeys,
}

export function joinedOn(key: PlayerKey): string {
  return joinedLater[key] ?? demoSeason.firstDay
}

export const demoMemberships: readonly DemoMembership[] = (['underTen', 'underTwelve'] as const).flatMap(
  (squad) =>
    membersOf[squad].map((key) => ({
      squadId: demoSquads[squad].id,
      playerId: playerId(key),
      firstDay: joinedOn(key),
      lastDay: null,
    })),
)

export type DemoSquadCoach = {
  readonly squadId: SquadId
  readonly personId: string
  readonly kind: 'coach' | 'cover' | 'helps'
  readonly firstDay: string
  readonly lastDay: string | null
}

const coaching = (
  squad: SquadKey,
  adult: AdultKey,
  line: Pick<DemoSquadCoach, 'kind' | 'firstDay' | 'lastDay'>,
): DemoSquadCoach => ({
  squadId: demoSquads[squad].id,
  personId: personId(adult),
  ...line,
})

/** Tobiah taps for the under-10s since the winter. Petra handed the under-12s over to Samir in January; Bea covered two weeks of the under-10s in March. */
export const demoCoaches: readonly DemoSquadCoach[] = [
  coaching('underTen', 'idris', { kind: 'coach', firstDay: '2025-09-01', lastDay: null }),
  coaching('underTen', 'bea', { kind: 'cover', firstDay: '2026-03-02', lastDay: '2026-03-15' }),
  coaching('underTen', 'tobiah', { kind: 'helps', firstDay: '2026-01-12', lastDay: null }),
  coaching('underTwelve', 'petra', { kind: 'coach', firstDay: '2025-09-01', lastDay: '2026-01-04' }),
  coaching('underTwelve', 'samir', { kind: 'coach', firstDay: '2026-01-05', lastDay: null }),
]

/** The day's coach of a squad: the cover coach while there is one. */
export function leaderOn(squad: SquadKey, day: string): string {
  const lines = demoCoaches.filter(
    (line) =>
      line.squadId === demoSquads[squad].id &&
      line.kind !== 'helps' &&
      line.firstDay <= day &&
      (line.lastDay === null || day <= line.lastDay),
  )
  const leader = lines.find((line) => line.kind === 'cover') ?? lines[0]
  if (!leader) throw new Error(`Nobody coaches ${squad} on ${day}.`)
  return leader.personId
}

/** Fewer turns agreed with one family from the start of March on. */
export const demoAdjustments = [
  {
    id: demoId('adjustment/dev'),
    playerId: playerId('dev'),
    kind: 'fewerTurns',
    dueShare: 0.7,
    firstDay: '2026-03-01',
    lastDay: null,
  },
] as const

const guarding = (adult: AdultKey, child: PlayerKey, claimedAt: string | null) => ({
  personId: personId(adult),
  playerId: playerId(child),
  claimedAt: claimedAt === null ? null : new Date(claimedAt),
  recordedById: personId('odile'),
})

/** Both of Adaeze's; Samir, whose own child plays in the other squad; and Tamsin, of two, who has not used her links yet. */
export const demoGuardianships = [
  guarding('chinwe', 'adaeze', '2025-09-08T18:00:00Z'),
  guarding('uchenna', 'adaeze', '2025-10-02T06:30:00Z'),
  guarding('samir', 'jiho', '2026-01-12T20:10:00Z'),
  guarding('tamsin', 'kiri', null),
  guarding('tamsin', 'gwen', null),
]
