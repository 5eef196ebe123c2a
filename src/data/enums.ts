import 'server-only'
import type { ViewerRole } from '#access/viewer'
import type * as rows from '#data/generated/enums'
import type { MatchLine, Role, Situation } from '#exposure/column'
import type { Attendance } from '#fairness/account'
import type { Line } from '#match/match'
import type { RegisterState } from '#squad/register'
import type { Written } from '#squad/written'

// Each list of the database is tied to the trade's own here and nowhere else: a value added on one side alone does not
// compile. The records are also what schemas of hand-written queries are made of.

export const sessionKindOf = {
  practice: 'practice',
  match: 'match',
} as const satisfies Record<rows.SessionKind, 'practice' | 'match'>

export const writtenOf = {
  tapped: 'tapped',
  roundByRound: 'roundByRound',
  asPlanned: 'asPlanned',
  typedLater: 'typedLater',
  notWritten: 'notWritten',
} as const satisfies Record<rows.Written, Written>

export const registerStateOf = {
  here: 'here',
  notPlaying: 'notPlaying',
  out: 'out',
} as const satisfies Record<rows.RegisterState, RegisterState>

export const seatRoleOf = {
  attack: 'attack',
  defend: 'defend',
  keep: 'keep',
} as const satisfies Record<rows.SeatRole, Exclude<Role, 'rest'>>

export const sideOf = { attack: 'attack', defend: 'defend' } as const satisfies Record<
  rows.Side,
  'attack' | 'defend'
>

export const lineOf = {
  keeper: 'keeper',
  back: 'back',
  middle: 'middle',
  forward: 'forward',
} as const satisfies Record<rows.SpellLine, Line>

export const roleOf = {
  attack: 'attack',
  defend: 'defend',
  keep: 'keep',
  rest: 'rest',
} as const satisfies Record<rows.Role, Role>

export const situationOf = {
  none: null,
  outnumbering: 'outnumbering',
  level: 'level',
  outnumbered: 'outnumbered',
} as const satisfies Record<rows.ColumnSituation, Situation | null>

export const columnLineOf = {
  none: null,
  back: 'back',
  middle: 'middle',
  forward: 'forward',
} as const satisfies Record<rows.ColumnLine, MatchLine | null>

export const attendanceOf = {
  here: 'here',
  late: 'late',
  left: 'left',
  notPlaying: 'notPlaying',
  out: 'out',
  away: 'away',
} as const satisfies Record<rows.Attendance, Attendance>

export const personRoleOf = {
  administrator: 'administrator',
  headCoach: 'headCoach',
  coach: 'coach',
  helper: 'helper',
  guardian: 'guardian',
} as const satisfies Record<rows.PersonRole, ViewerRole>

/** The database's names of a list that the trade has other values for. */
export function namesOf<Name extends string>(list: Readonly<Record<Name, unknown>>): readonly Name[] {
  return Object.keys(list) as Name[]
}
