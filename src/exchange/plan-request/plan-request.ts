import { gentleBounds } from '#ahead/gentle-bounds'
import type { AheadRequest, DaySpan, RequestedDesign, RequestedPlayer } from '#ahead/request'
import type { Problem } from '#common/problem'
import { accept, type Result } from '#common/result'
import type { SearchSettings } from '#common/search-settings'
import { planRequestProblems } from '#exchange/plan-request/plan-request-problems'
import { type PlanRequestJson, planRequestShape } from '#exchange/plan-request/plan-request-shape'
import { readRequest } from '#exchange/read-request'
import { noSeconds } from '#rotation/fair-seconds'
import { defaultPolicy } from '#squad/policy'
import type { ProgrammeRule } from '#themes/programme-rule'

/** How long and how the weeks ahead may be searched for, and what is worked out beside the plan. */
export type PlanSettings = SearchSettings & {
  readonly alternatives: boolean
  /** Terms drawn to say how likely each player ends inside; null: not asked. */
  readonly draws: number | null
}

export type PlanRequest = {
  readonly request: AheadRequest
  readonly settings: PlanSettings
  /** As it was sent. */
  readonly json: PlanRequestJson
}

/** Reads a request for the weeks ahead (`turnbook/plan-request@1`) from parsed JSON; refused with every problem found. */
export function readPlanRequest(json: unknown): Result<PlanRequest, Problem> {
  const read = readRequest(json, { shape: planRequestShape, problemsOf: planRequestProblems })
  if (!read.ok) return read
  return accept({
    request: aheadRequestOf(read.value),
    settings: planSettingsOf(read.value),
    json: read.value,
  })
}

/** With what holds where nothing is said. */
export function planSettingsOf({
  alternatives = true,
  draws = null,
  seed = 1,
  timeLimitMs = 10_000,
  workLimit = null,
}: Partial<PlanSettings>): PlanSettings {
  return { alternatives, draws, seed, timeLimitMs, workLimit }
}

/** What a request without faults asks, in the words of the trade. */
export function aheadRequestOf(json: PlanRequestJson): AheadRequest {
  const { toleranceSeconds, toleranceShare } = defaultPolicy
  return {
    term: spanOf(json.term),
    policy: { toleranceSeconds, toleranceShare, ...json.policy },
    practices: json.practices.map(({ id, date, lengthSeconds = null, ground = null, held = null }) => ({
      id,
      day: date,
      lengthSeconds,
      ground,
      held: held && { themeId: held.theme, designId: held.design ?? null },
    })),
    closed: (json.closed ?? []).map(spanOf),
    themes: json.themes.map(({ id, name, parent }, order) => ({
      id,
      name: name ?? id,
      parentId: parent ?? null,
      order,
    })),
    programme: json.themes.flatMap(programmeRuleOf),
    blocks: (json.blocks ?? []).map(({ theme, ...weeks }) => ({ themeId: theme, ...weeks })),
    designs: json.designs.map(designOf),
    met: (json.met ?? []).map(({ date, themes, design }) => ({
      day: date,
      themeIds: themes,
      designId: design ?? null,
    })),
    players: json.players.map(playerOf),
    designRest: json.designRest ?? 0,
    gentle: { ...gentleBounds, ...json.gentle },
  }
}

function spanOf({ from, to }: PlanRequestJson['term']): DaySpan {
  return { firstDay: from, lastDay: to }
}

/** A theme of which only its name and place are said is not of the programme. */
function programmeRuleOf(theme: PlanRequestJson['themes'][number]): readonly ProgrammeRule[] {
  const { id, name: _, parent: __, ...rule } = theme
  if (Object.values(rule).every((said) => said === undefined)) return []
  return [
    {
      themeId: id,
      wishedShare: rule.share ?? 0,
      firstWeek: rule.firstWeek ?? null,
      lastWeek: rule.lastWeek ?? null,
      afterThemeId: rule.after ?? null,
      leastWeeksBetween: rule.leastWeeksBetween ?? null,
      mostWeeksBetween: rule.mostWeeksBetween ?? null,
    },
  ]
}

function designOf(json: PlanRequestJson['designs'][number]): RequestedDesign {
  const { id, name, themes, lengthM, widthM, rounds } = json
  return {
    id,
    name: name ?? id,
    themeIds: themes,
    lengthM,
    widthM,
    rounds: rounds.map(({ turnCount, turnSeconds, gapSeconds = 0, stations, freeGame = false }) => ({
      turnCount,
      turnSeconds,
      gapSeconds,
      stations: stations.map(({ attack = 0, defend = 0, keep = 0 }) => ({ attack, defend, keep })),
      isFreeGame: freeGame,
    })),
  }
}

function playerOf(json: PlanRequestJson['players'][number]): RequestedPlayer {
  return {
    id: json.id,
    keeps: json.keeps ?? true,
    came: json.came ?? 0,
    held: json.held ?? 0,
    away: (json.away ?? []).map(spanOf),
    gap: { ...noSeconds, ...json.gap },
    fair: { ...noSeconds, ...json.fair },
    playedSeconds: json.playedSeconds ?? 0,
    themeSeconds: new Map(Object.entries(json.themeSeconds ?? {})),
  }
}
