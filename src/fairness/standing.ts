import { hasDay } from '#common/dated'
import { groupBy } from '#common/group-by'
import type { Day, Seconds } from '#common/time'
import type { Role, Situation } from '#exposure/column'
import type { PresenceAccount, SessionAccount } from '#fairness/account'
import type { AgreedFewerTurns } from '#fairness/agreed-due'
import type { PassedTurn } from '#fairness/passed'
import { type Figures, figuresOfSession, noFigures, type ThemeFigure } from '#fairness/session-figures'
import { addFigures, noFigure, type StandingFigure } from '#fairness/standing-figure'
import type { PlayerId } from '#squad/player'
import type { Term } from '#squad/squad'

export type SessionKind = SessionAccount['kind']

/** What one attended session leaves behind for rules that look at single sessions. */
export type AttendedSession = {
  readonly sessionId: string
  readonly day: Day
  /** Time the player was there for. */
  readonly liveSeconds: Seconds
  readonly playedSeconds: number
  readonly keepSeconds: number
  readonly longestRestTurns: number
  readonly passedTurns: number
}

/** A player's figures in the sessions of one kind up to some session. */
export type KindStanding = Figures & {
  readonly liveSeconds: Seconds
  readonly turnsPresent: number
  /** Written sessions the player belonged to the squad for, there or away. */
  readonly sessionsWritten: number
  /** Written sessions it was there for, in order of time. */
  readonly attended: readonly AttendedSession[]
  readonly passed: Readonly<Record<PassedTurn['role'], { readonly turns: number; readonly seconds: Seconds }>>
}

/** Practice and match are judged apart and never summed into one judgement. */
export type Standing = Readonly<Record<SessionKind, KindStanding>>

/** Standings of a squad after one session. */
export type Standings = ReadonlyMap<PlayerId, Standing>

export type StandingInput = {
  /** Of one squad. Sorted by day here; sessions of one day stay in the order given. */
  readonly accounts: readonly SessionAccount[]
  readonly passed?: readonly PassedTurn[]
  readonly agreements?: readonly AgreedFewerTurns[]
  /** Whose sessions: those in which a player was a member (default), or those in which it was a guest. */
  readonly as?: 'member' | 'guest'
}

const noPassed = { turns: 0, seconds: 0 }

export const emptyKindStanding: KindStanding = {
  ...noFigures,
  liveSeconds: 0,
  turnsPresent: 0,
  sessionsWritten: 0,
  attended: [],
  passed: { attack: noPassed, defend: noPassed, keep: noPassed },
}

export const emptyStanding: Standing = { practice: emptyKindStanding, match: emptyKindStanding }

/** Sessions that were written down, by day; of one day, in the order given. */
export function writtenInOrder(accounts: readonly SessionAccount[]): readonly SessionAccount[] {
  return accounts
    .filter((account) => account.written !== 'notWritten')
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
}

/** Standings after every written session in turn; what a session did not touch is shared with the one before. */
export function* standingsAfterEach(
  input: StandingInput,
): Generator<{ readonly account: SessionAccount; readonly standings: Standings }> {
  const passedIn = groupBy(input.passed ?? [], (one) => one.sessionId)
  const wantsMembers = (input.as ?? 'member') === 'member'
  let standings: Standings = new Map()
  for (const account of writtenInOrder(input.accounts)) {
    const figures = figuresOfSession(account, input.agreements ?? [])
    const next = new Map(standings)
    for (const presence of account.presences) {
      if (presence.isMember !== wantsMembers) continue
      const before = next.get(presence.playerId) ?? emptyStanding
      const passed = (passedIn.get(account.sessionId) ?? []).filter((p) => p.playerId === presence.playerId)
      const after = addSession(before[account.kind], {
        account,
        presence,
        figures: figures.get(presence.playerId) ?? noFigures,
        passed,
      })
      next.set(presence.playerId, { ...before, [account.kind]: after })
    }
    standings = next
    yield { account, standings }
  }
}

/** Standings after the last written session. */
export function standingsNow(input: StandingInput): Standings {
  let last: Standings = new Map()
  for (const step of standingsAfterEach(input)) last = step.standings
  return last
}

type SessionOfPlayer = {
  readonly account: SessionAccount
  readonly presence: PresenceAccount
  readonly figures: Figures
  readonly passed: readonly PassedTurn[]
}

function addSession(before: KindStanding, session: SessionOfPlayer): KindStanding {
  const { presence, figures, passed } = session
  const isThere = presence.liveSeconds > 0
  return {
    roles: addRecords<Role>(before.roles, figures.roles),
    situations: addRecords<Situation>(before.situations, figures.situations),
    themes: addThemes(before.themes, figures.themes),
    liveSeconds: before.liveSeconds + presence.liveSeconds,
    turnsPresent: before.turnsPresent + presence.turnsPresent,
    sessionsWritten: before.sessionsWritten + 1,
    attended: isThere ? [...before.attended, attendedSession(session)] : before.attended,
    passed: passed.reduce(addPassed, before.passed),
  }
}

function attendedSession({ account, presence, figures, passed }: SessionOfPlayer): AttendedSession {
  return {
    sessionId: account.sessionId,
    day: account.day,
    liveSeconds: presence.liveSeconds,
    playedSeconds: playedFigure(figures).seconds,
    keepSeconds: figures.roles.keep.seconds,
    longestRestTurns: presence.longestRestTurns,
    passedTurns: passed.length,
  }
}

function addPassed(sums: KindStanding['passed'], passed: PassedTurn): KindStanding['passed'] {
  const { turns, seconds } = sums[passed.role]
  return { ...sums, [passed.role]: { turns: turns + 1, seconds: seconds + passed.lengthSeconds } }
}

function addRecords<Key extends string>(
  a: Readonly<Record<Key, StandingFigure>>,
  b: Readonly<Record<Key, StandingFigure>>,
): Readonly<Record<Key, StandingFigure>> {
  const sums: Record<Key, StandingFigure> = { ...a }
  for (const key of Object.keys(b) as Key[]) sums[key] = addFigures(a[key], b[key])
  return sums
}

function addThemes(a: Figures['themes'], b: Figures['themes']): Figures['themes'] {
  if (b.size === 0) return a
  const sums = new Map(a)
  for (const [themeId, figure] of b) sums.set(themeId, addTheme(a.get(themeId), figure))
  return sums
}

function addTheme(a: ThemeFigure | undefined, b: ThemeFigure): ThemeFigure {
  return { ...addFigures(a ?? noFigure, b), turnsPresent: (a?.turnsPresent ?? 0) + b.turnsPresent }
}

/** Time on the ball's side of things: attack, defence and goal together, without waiting. */
export function playedFigure(figures: Pick<Figures, 'roles'>): StandingFigure {
  return addFigures(addFigures(figures.roles.attack, figures.roles.defend), figures.roles.keep)
}

/** A player's time in a term, and how much of it was in goal. */
export function timeInTerm(
  standing: KindStanding,
  term: Pick<Term, 'firstDay' | 'lastDay'>,
): { readonly liveSeconds: Seconds; readonly keepSeconds: number } {
  return standing.attended
    .filter((session) => hasDay(term, session.day))
    .reduce(
      (sum, session) => ({
        liveSeconds: sum.liveSeconds + session.liveSeconds,
        keepSeconds: sum.keepSeconds + session.keepSeconds,
      }),
      { liveSeconds: 0, keepSeconds: 0 },
    )
}
