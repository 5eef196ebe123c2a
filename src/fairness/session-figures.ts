import { type Role, roles, type Situation, situations } from '#exposure/column'
import type { AccountLine, SessionAccount } from '#fairness/account'
import { type AgreedFewerTurns, agreedDue, agreedShareOn } from '#fairness/agreed-due'
import { FigureTally } from '#fairness/figure-tally'
import { noFigure, type StandingFigure } from '#fairness/standing-figure'
import type { PlayerId } from '#squad/player'
import type { ThemeId } from '#themes/theme'

/** A player's playing time in turns of one theme; `turnsPresent` counts the turns it waited as well. */
export type ThemeFigure = StandingFigure & { readonly turnsPresent: number }

/** A player's figures by every way of reading them. Roles add up to the time there; situations and themes are parts of it. */
export type Figures = {
  readonly roles: Readonly<Record<Role, StandingFigure>>
  readonly situations: Readonly<Record<Situation, StandingFigure>>
  /** Themes that any turn carried while the player was of the squad. */
  readonly themes: ReadonlyMap<ThemeId, ThemeFigure>
}

export const noFigures: Figures = {
  roles: { attack: noFigure, defend: noFigure, keep: noFigure, rest: noFigure },
  situations: { outnumbering: noFigure, level: noFigure, outnumbered: noFigure },
  themes: new Map(),
}

type Tallies = {
  readonly roles: Readonly<Record<Role, FigureTally>>
  readonly situations: Readonly<Record<Situation, FigureTally>>
  readonly themes: Map<ThemeId, FigureTally>
}

/**
 * One session's figures of every player in its account, members' means included.
 * Guests: what they got and what was due; no means.
 */
export function figuresOfSession(
  account: SessionAccount,
  agreements: readonly AgreedFewerTurns[],
): ReadonlyMap<PlayerId, Figures> {
  const tallies = new Map<PlayerId, Tallies>(account.presences.map((p) => [p.playerId, emptyTallies()]))
  const members = new Set(account.presences.filter((p) => p.isMember).map((p) => p.playerId))
  const memberTotals = emptyTallies()
  const agreedShares = agreedSharesAt(account, agreements)
  for (const line of account.lines) {
    const of = tallies.get(line.playerId) ?? emptyTallies()
    tallies.set(line.playerId, of)
    addLine(of, line, agreedShares.get(line.playerId) ?? 1)
    if (!members.has(line.playerId)) continue
    forEachTally(memberTotals, line, (tally) => tally.addFull(line.fullFairSeconds))
  }
  for (const playerId of members) addMeans(tallies.get(playerId) as Tallies, memberTotals, members.size)
  return new Map([...tallies].map(([playerId, of]) => [playerId, toFigures(of)]))
}

function agreedSharesAt(
  account: SessionAccount,
  agreements: readonly AgreedFewerTurns[],
): ReadonlyMap<PlayerId, number> {
  const concerned = new Set(agreements.map((agreement) => agreement.playerId))
  return new Map(
    [...concerned].map((playerId) => [playerId, agreedShareOn(agreements, { playerId, day: account.day })]),
  )
}

function addLine(of: Tallies, line: AccountLine, agreedShare: number): void {
  const due = agreedDue(line, agreedShare)
  forEachTally(of, line, (tally) => {
    tally.addFigure(line, due)
  })
  of.roles.rest.addDue({ dueSeconds: due.waitSeconds, dueTurns: due.waitTurns })
  if (line.themeId !== null) themeTally(of, line.themeId).addTurnsPresent(line.turns)
}

function forEachTally(of: Tallies, line: AccountLine, visit: (tally: FigureTally) => void): void {
  visit(of.roles[line.role])
  if (line.situation !== null) visit(of.situations[line.situation])
  if (line.themeId !== null && line.role !== 'rest') visit(themeTally(of, line.themeId))
}

function addMeans(of: Tallies, totals: Tallies, memberCount: number): void {
  for (const role of roles) of.roles[role].addMean(totals.roles[role], memberCount)
  for (const situation of situations)
    of.situations[situation].addMean(totals.situations[situation], memberCount)
  for (const [themeId, total] of totals.themes) themeTally(of, themeId).addMean(total, memberCount)
}

function themeTally(of: Tallies, themeId: ThemeId): FigureTally {
  const known = of.themes.get(themeId)
  if (known) return known
  const [tally] = FigureTally.many(1) as [FigureTally]
  of.themes.set(themeId, tally)
  return tally
}

function toFigures(of: Tallies): Figures {
  const role = (name: Role) => of.roles[name].toFigure()
  const situation = (name: Situation) => of.situations[name].toFigure()
  return {
    roles: { attack: role('attack'), defend: role('defend'), keep: role('keep'), rest: role('rest') },
    situations: {
      outnumbering: situation('outnumbering'),
      level: situation('level'),
      outnumbered: situation('outnumbered'),
    },
    themes: new Map(
      [...of.themes].map(([id, tally]) => [id, { ...tally.toFigure(), turnsPresent: tally.turnsPresent }]),
    ),
  }
}

type Seven = [FigureTally, FigureTally, FigureTally, FigureTally, FigureTally, FigureTally, FigureTally]

function emptyTallies(): Tallies {
  const [attack, defend, keep, rest, outnumbering, level, outnumbered] = FigureTally.many(
    7,
  ) as unknown as Seven
  return {
    roles: { attack, defend, keep, rest },
    situations: { outnumbering, level, outnumbered },
    themes: new Map(),
  }
}
