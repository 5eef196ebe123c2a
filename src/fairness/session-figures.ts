import { type Role, roles, type Situation, situations } from '#exposure/column'
import type { SessionAccount } from '#fairness/account'
import { type AgreedFewerTurns, agreedDue, agreedShareOn } from '#fairness/agreed-due'
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

type Draft = { -readonly [Key in keyof ThemeFigure]: number }
type Drafts = {
  roles: Record<Role, Draft>
  situations: Record<Situation, Draft>
  themes: Map<ThemeId, Draft>
}

/**
 * One session's figures of every player in its account, members' means included.
 * Guests: what they got and what was due; no means.
 */
export function figuresOfSession(
  account: SessionAccount,
  agreements: readonly AgreedFewerTurns[],
): ReadonlyMap<PlayerId, Figures> {
  const drafts = new Map<PlayerId, Drafts>(account.presences.map((p) => [p.playerId, emptyDrafts()]))
  const members = new Set(account.presences.filter((p) => p.isMember).map((p) => p.playerId))
  const memberTotals = emptyDrafts()
  const shares = new Map<PlayerId, number>()

  for (const line of account.lines) {
    const of = drafts.get(line.playerId) ?? emptyDrafts()
    drafts.set(line.playerId, of)
    let share = shares.get(line.playerId)
    if (share === undefined) {
      share = agreedShareOn(agreements, { playerId: line.playerId, day: account.day })
      shares.set(line.playerId, share)
    }
    const due = agreedDue(line, share)
    for (const draft of draftsOfLine(of, line)) addLine(draft, line, due)
    of.roles.rest.dueSeconds += due.waitSeconds
    of.roles.rest.dueTurns += due.waitTurns
    if (line.themeId !== null) themeDraft(of, line.themeId).turnsPresent += line.turns
    if (members.has(line.playerId)) {
      for (const draft of draftsOfLine(memberTotals, line)) draft.fullFairSeconds += line.fullFairSeconds
    }
  }
  for (const playerId of members) addMeans(drafts.get(playerId) as Drafts, memberTotals, members.size)
  return drafts
}

function draftsOfLine(of: Drafts, line: SessionAccount['lines'][number]): Draft[] {
  const touched = [of.roles[line.role]]
  if (line.situation !== null) touched.push(of.situations[line.situation])
  if (line.themeId !== null && line.role !== 'rest') touched.push(themeDraft(of, line.themeId))
  return touched
}

function addLine(draft: Draft, line: SessionAccount['lines'][number], due: ReturnType<typeof agreedDue>) {
  draft.seconds += line.seconds
  draft.turns += line.turns
  draft.fairSeconds += line.fairSeconds
  draft.fairTurns += line.fairTurns
  draft.fullFairSeconds += line.fullFairSeconds
  draft.openGoalFairSeconds += line.openGoalFairSeconds
  draft.dueSeconds += due.dueSeconds
  draft.dueTurns += due.dueTurns
}

function addMeans(of: Drafts, totals: Drafts, memberCount: number) {
  for (const role of roles)
    of.roles[role].membersMeanSeconds += totals.roles[role].fullFairSeconds / memberCount
  for (const situation of situations) {
    of.situations[situation].membersMeanSeconds += totals.situations[situation].fullFairSeconds / memberCount
  }
  for (const [themeId, total] of totals.themes) {
    themeDraft(of, themeId).membersMeanSeconds += total.fullFairSeconds / memberCount
  }
}

function themeDraft(of: Drafts, themeId: ThemeId): Draft {
  const known = of.themes.get(themeId)
  if (known) return known
  const draft = emptyDraft()
  of.themes.set(themeId, draft)
  return draft
}

const emptyDraft = (): Draft => ({ ...noFigure, turnsPresent: 0 })

const emptyDrafts = (): Drafts => ({
  roles: { attack: emptyDraft(), defend: emptyDraft(), keep: emptyDraft(), rest: emptyDraft() },
  situations: { outnumbering: emptyDraft(), level: emptyDraft(), outnumbered: emptyDraft() },
  themes: new Map(),
})
