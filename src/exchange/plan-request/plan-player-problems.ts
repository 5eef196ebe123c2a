import type { Problem } from '#common/problem'
import { type JsonPath, problemAt } from '#exchange/json-path'
import { planLimits } from '#exchange/plan-request/plan-limits'
import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import { betweenProblems, spanProblems } from '#exchange/plan-request/plan-value-problems'
import { type KnownIds, tooManyProblems, unknownIdProblems, wholeProblems } from '#exchange/value-problems'
import { rotationColumns } from '#rotation/problem'

type PlayerJson = PlanRequestJson['players'][number]

/** What is wrong with one player of a request and with its record. */
export function planPlayerProblems(player: PlayerJson, themes: KnownIds, at: JsonPath): readonly Problem[] {
  const { away = [], gap, fair, playedSeconds } = player
  const most = planLimits.seconds
  const had = { least: 0, most, what: 'seconds' }
  return [
    ...attendanceProblems(player, at),
    ...tooManyProblems(away.length, planLimits.spans, [...at, 'away']),
    ...away.flatMap((span, index) => spanProblems(span, [...at, 'away', index])),
    ...rotationColumns.flatMap((column) => [
      ...betweenProblems(gap?.[column], { least: -most, most, what: 'seconds' }, [...at, 'gap', column]),
      ...betweenProblems(fair?.[column], had, [...at, 'fair', column]),
    ]),
    ...betweenProblems(playedSeconds, had, [...at, 'playedSeconds']),
    ...themeSecondsProblems(player, themes, [...at, 'themeSeconds']),
  ]
}

function attendanceProblems({ came, held }: PlayerJson, at: JsonPath): readonly Problem[] {
  const each = [
    ...wholeProblems(came, 0, [...at, 'came'], 'a whole number of practices'),
    ...wholeProblems(held, 0, [...at, 'held'], 'a whole number of practices'),
  ]
  if (each.length > 0 || (came ?? 0) <= (held ?? 0)) return each
  return [
    problemAt([...at, 'came'], `is ${came}; no more than the ${held ?? 0} that were held would be right`),
  ]
}

/** Sums of what was played may be off by a little. */
const slack = 0.5

function themeSecondsProblems(
  { themeSeconds = {}, playedSeconds = 0 }: PlayerJson,
  themes: KnownIds,
  at: JsonPath,
): readonly Problem[] {
  return Object.entries(themeSeconds).flatMap(([theme, seconds]) => {
    const unknown = unknownIdProblems(theme, [...at, theme], themes)
    if (unknown.length > 0 || (seconds >= 0 && seconds <= playedSeconds + slack)) return unknown
    const message = `is ${seconds}; from 0 to the ${playedSeconds} seconds played would be right`
    return [problemAt([...at, theme], message)]
  })
}
