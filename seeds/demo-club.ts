import type { Day } from '#common/time'
import type { DesignSheet } from '#practice/design-sheet'
import type { ClosedDays } from '#squad/closed-days'
import type { Ground } from '#squad/ground'
import type { Player } from '#squad/player'
import type { PlayerAway } from '#squad/player-away'
import { defaultPolicy, type PolicyVersion } from '#squad/policy'
import type { Season, Squad } from '#squad/squad'
import type { ProgrammeRule } from '#themes/programme-rule'
import {
  autumnId,
  calendarDay,
  clubId,
  type DemoMembership,
  type DemoSquadCoach,
  demoAdjustments,
  demoCoaches,
  demoGuardianships,
  demoMemberships,
  demoPeople,
  demoSeason,
  demoSquads,
  personId,
  springId,
} from './club'
import type { DemoSession } from './demo-session'
import { demoDesigns } from './designs'
import { demoId } from './ids'
import { demoLineWishes } from './line-wishes'
import { demoPlayers, playerId } from './names'
import { autumnProgramme, type DemoTheme, demoThemes, springProgramme } from './programme'
import { buildSessions } from './sessions'
import { demoFormats } from './squad-formats'
import { stories } from './stories'
import { demoAway, demoBlocks, demoClosedDays, demoGrounds, demoThemeDesigns } from './weeks-ahead'

export type DemoReview = {
  readonly squadId: string
  readonly termId: string
  readonly openedOn: Day
  readonly openedById: string
  readonly answer: { readonly text: string; readonly byId: string; readonly at: string } | null
}

/** A flag that a coach has answered; it names the flag, which the rules raise from the sessions. */
export type DemoAcknowledgement = {
  readonly squadId: string
  readonly playerId: string
  readonly rule: string
  readonly scope: 'practice' | 'match'
  readonly byId: string
  readonly at: string
  readonly reason: string
}

/** An invented club and its whole season as plain values: what the loader writes into a database. */
export type DemoClub = {
  readonly club: {
    readonly id: string
    readonly name: string
    readonly timeZone: string
    readonly calendarDay: Day
  }
  readonly people: typeof demoPeople
  readonly season: Season
  readonly squads: readonly Squad[]
  /** How each squad plays its matches. */
  readonly formats: typeof demoFormats
  readonly coaches: readonly DemoSquadCoach[]
  readonly players: readonly Player[]
  readonly memberships: readonly DemoMembership[]
  readonly guardianships: typeof demoGuardianships
  readonly adjustments: typeof demoAdjustments
  readonly lineWishes: typeof demoLineWishes
  /** Parents before their children. */
  readonly themes: readonly DemoTheme[]
  readonly programme: readonly (ProgrammeRule & { readonly squadId: string; readonly termId: string })[]
  readonly blocks: typeof demoBlocks
  readonly themeDesigns: typeof demoThemeDesigns
  readonly closedDays: readonly ClosedDays[]
  readonly grounds: readonly Ground[]
  readonly away: readonly PlayerAway[]
  readonly designs: readonly DesignSheet[]
  readonly policies: readonly (PolicyVersion & { readonly madeById: string })[]
  /** In order of days; those after the calendar day are planned. */
  readonly sessions: readonly DemoSession[]
  readonly reviews: readonly DemoReview[]
  readonly acknowledgements: readonly DemoAcknowledgement[]
}

/** The same club, to the last id, every time. `today`: the day on which its calendar stands still, instead of its own. */
export function buildDemoClub({ today = calendarDay }: { readonly today?: Day } = {}): DemoClub {
  return {
    club: { id: clubId, name: 'Quillhaven Otters', timeZone: 'Europe/London', calendarDay: today },
    people: demoPeople,
    season: demoSeason,
    squads: Object.values(demoSquads),
    formats: demoFormats,
    coaches: demoCoaches,
    players: demoPlayers,
    memberships: demoMemberships,
    guardianships: demoGuardianships,
    adjustments: demoAdjustments,
    lineWishes: demoLineWishes,
    themes: demoThemes,
    programme: Object.values(demoSquads).flatMap(({ id: squadId }) => [
      ...autumnProgramme.map((entry) => ({ ...entry, squadId, termId: autumnId })),
      ...springProgramme.map((entry) => ({ ...entry, squadId, termId: springId })),
    ]),
    blocks: demoBlocks,
    themeDesigns: demoThemeDesigns,
    closedDays: demoClosedDays,
    grounds: demoGrounds,
    away: demoAway,
    designs: demoDesigns,
    policies,
    sessions: buildSessions(today),
    reviews: reviews.filter(({ openedOn }) => openedOn <= today),
    acknowledgements: acknowledgements.filter(({ at }) => at < today),
  }
}

const policies = [
  {
    id: demoId('policy/first'),
    ageLimit: null,
    effectiveFrom: '2025-09-01',
    policy: { ...defaultPolicy, toleranceShare: 0.2, restLimitTurns: 3 },
    madeById: personId('maren'),
  },
  {
    id: demoId('policy/second'),
    ageLimit: null,
    effectiveFrom: '2026-01-05',
    policy: defaultPolicy,
    madeById: personId('maren'),
  },
]

const reviews: readonly DemoReview[] = [
  {
    squadId: demoSquads.underTen.id,
    termId: autumnId,
    openedOn: '2026-01-02',
    openedById: personId('maren'),
    answer: {
      text: 'Two practices in the wet weeks were not written down. From January on I write each round as it ends.',
      byId: personId('idris'),
      at: '2026-01-05T19:40:00.000Z',
    },
  },
  {
    squadId: demoSquads.underTwelve.id,
    termId: autumnId,
    openedOn: '2026-01-02',
    openedById: personId('maren'),
    answer: {
      text: 'Handed over on the fifth. Too little of the autumn is written to say much; Samir writes from now on.',
      byId: personId('samir'),
      at: '2026-01-07T20:15:00.000Z',
    },
  },
]

const acknowledgements: readonly DemoAcknowledgement[] = [
  {
    squadId: demoSquads.underTen.id,
    playerId: playerId('goran'),
    rule: 'goalShareOver',
    scope: 'match',
    byId: personId('idris'),
    at: '2026-06-03T20:30:00.000Z',
    reason: 'Kept in two matches running because Kiri was away. Out of goal in the next two.',
  },
  {
    squadId: demoSquads.underTwelve.id,
    playerId: playerId(stories.soleKeeper),
    rule: 'goalShareOver',
    scope: 'practice',
    byId: personId('samir'),
    at: '2026-06-04T18:05:00.000Z',
    reason: 'Likes it in goal. From June one round of every practice is played out of goal all the same.',
  },
]
