import type { MatchRequest } from '#exchange/match-request/match-request'
import { proofJson } from '#exchange/proof-json'
import { quiet } from '#exchange/quiet'
import { equalTimeChangesOf } from '#lineup/equal-time-changes'
import { explainLineUp } from '#lineup/explain-line-up'
import { type FairLineUp, fairLineUp } from '#lineup/fair-line-up'
import { type LineUp, type LineUpPlan, lineUpGoals } from '#lineup/line-up'
import { secondsOf } from '#lineup/line-up-values'
import type { LineUpProblem } from '#lineup/problem'
import { spellsOfLineUp } from '#lineup/spells-of-line-up'
import { fieldLines } from '#match/format/line-wish'
import { lines } from '#match/match'

export const matchPlanFormat = 'turnbook/match-plan@1'

/** A line-up as the parts of `turnbook/match-plan@1` that it alone decides, ready for JSON. */
export function lineUpAnswer({ problem }: Pick<MatchRequest, 'problem'>, lineUp: LineUp) {
  const fair = fairLineUp(problem)
  const equal = equalTimeChangesOf(problem)
  return {
    windows: windowsJson(problem, lineUp),
    spells: spellsJson(problem, lineUp.plan),
    changes: changesJson(problem, lineUp),
    players: problem.players.map((_, player) => playerJson(problem, lineUp, { player, fair })),
    goals: Object.fromEntries(lineUpGoals.map((goal) => [goal, proofJson(lineUp.proofs[goal])])),
    equalTime: equal === null ? null : { changes: equal },
    sentence: explainLineUp(problem, lineUp, (player) => player),
  }
}

export function spellsJson(problem: LineUpProblem, plan: LineUpPlan) {
  return spellsOfLineUp(problem, plan).map(({ playerId, ...spell }) => ({ player: playerId, ...spell }))
}

function windowsJson(problem: LineUpProblem, { plan }: LineUp) {
  return problem.windows.map(({ period, start, end }, window) => {
    const here = (fits: (player: number) => boolean) =>
      problem.players.flatMap(({ id }, player) => (fits(player) ? [id] : []))
    const inLine = (line: (typeof lines)[number]) => here((player) => plan[player]?.[window] === line)
    return {
      period: period + 1,
      start,
      end,
      ...Object.fromEntries(lines.map((line) => [line, inLine(line)])),
      off: here((player) => !plan[player]?.[window] && problem.players[player]?.isThere[window] === true),
      absent: here((player) => problem.players[player]?.isThere[window] !== true),
    }
  })
}

/** Where others are on than before: at a time inside a period, or between two of them. The first kick-off is none. */
function changesJson(problem: LineUpProblem, { plan }: LineUp) {
  return problem.windows.flatMap(({ period, start }, window) => {
    const before = problem.windows[window - 1]
    if (!before) return []
    const lineAt = (player: number, at: number) => plan[player]?.[at] ?? null
    const off = problem.players.flatMap(({ id }, player) =>
      lineAt(player, window - 1) && !lineAt(player, window) ? [id] : [],
    )
    const on = problem.players.flatMap(({ id }, player) => {
      const line = lineAt(player, window)
      return line && !lineAt(player, window - 1) ? [{ player: id, line }] : []
    })
    const moved = problem.players.flatMap(({ id }, player) => {
      const [from, to] = [lineAt(player, window - 1), lineAt(player, window)]
      return from && to && from !== to ? [{ player: id, from, to }] : []
    })
    return off.length + on.length + moved.length > 0
      ? [{ at: start, period: period + 1, isBreak: before.period !== period, off, on, moved }]
      : []
  })
}

function playerJson(
  problem: LineUpProblem,
  { plan }: LineUp,
  { player, fair }: { readonly player: number; readonly fair: FairLineUp },
) {
  const asked = problem.players[player]
  const own = plan[player]
  const [play, keep] = [secondsOf(problem, own), secondsOf(problem, own, 'keeper')]
  const starts = problem.hasStart && own?.[0] ? 1 : 0
  const due = { play: fair.play[player] ?? 0, keep: fair.keep[player] ?? 0, starts: fair.starts[player] ?? 0 }
  const gap = (had: number, of: 'play' | 'keep' | 'starts', owed: number | undefined) =>
    quiet(had - due[of] - (owed ?? 0))
  return {
    id: asked?.id ?? '',
    seconds: play,
    keepSeconds: keep,
    starts,
    lineSeconds: Object.fromEntries(fieldLines.map((line) => [line, secondsOf(problem, own, line)])),
    fair: { play: quiet(due.play), keep: quiet(due.keep), starts: quiet(due.starts) },
    gapAfter: {
      play: gap(play, 'play', asked?.owed.playSeconds),
      keep: gap(keep, 'keep', asked?.owed.keepSeconds),
      starts: gap(starts, 'starts', asked?.owed.starts),
    },
    least: asked?.leastSeconds ?? 0,
    isLeastKept: play >= (asked?.leastSeconds ?? 0),
  }
}
