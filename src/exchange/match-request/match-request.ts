import type { Problem } from '#common/problem'
import { accept, type Result } from '#common/result'
import type { SearchSettings } from '#common/search-settings'
import { matchRequestProblems } from '#exchange/match-request/match-request-problems'
import { type MatchRequestJson, matchRequestShape } from '#exchange/match-request/match-request-shape'
import { readRequest } from '#exchange/read-request'
import { defaultMarks } from '#lineup/default-marks'
import { nothingMet } from '#lineup/met-seconds'
import { placesFor } from '#lineup/places-for'
import {
  type FixedPlace,
  type LineUpPlayer,
  type LineUpProblem,
  type LineUpWindow,
  notRunning,
} from '#lineup/problem'
import { secondsThere } from '#lineup/seconds-there'
import { windowsOfPeriods } from '#lineup/windows-of-periods'
import { leastSecondsOf } from '#match/format/least-seconds'
import { noWishes } from '#match/format/line-wish'
import type { LinePlaces } from '#match/format/match-format'
import { placesInAll } from '#match/format/places-in-all'

export type MatchRequest = {
  readonly problem: LineUpProblem
  readonly settings: SearchSettings & { readonly tradeOffs: boolean }
  /** As it was sent. */
  readonly json: MatchRequestJson
}

/** Reads a request for a line-up (`turnbook/match-request@1`) from parsed JSON; refused with every problem found. */
export function readMatchRequest(json: unknown): Result<MatchRequest, Problem> {
  const read = readRequest(json, { shape: matchRequestShape, problemsOf: matchRequestProblems })
  if (!read.ok) return read
  const { seed = 1, timeLimitMs = 2000, workLimit = null, tradeOffs = true } = read.value
  return accept({
    problem: lineUpProblemOf(read.value),
    settings: { seed, timeLimitMs, workLimit, tradeOffs },
    json: read.value,
  })
}

/** The problem that a request without faults asks. */
export function lineUpProblemOf(json: MatchRequestJson): LineUpProblem {
  const windows = windowsOf(json)
  const indexOf = new Map(json.players.map(({ id }, index) => [id, index]))
  const player = (id: string) => indexOf.get(id) ?? -1
  const pairsOf = (pairs: MatchRequestJson['apart'] = []) =>
    pairs.map(([one, other]) => [player(one), player(other)] as const)
  return {
    windows,
    players: json.players.map((own) => playerOf(own, windows, json.leastShare ?? 0)),
    rules: rulesOf(json.rules ?? {}),
    apart: pairsOf(json.apart),
    together: pairsOf(json.together),
    fixed: (json.fixed ?? []).flatMap((held) =>
      windows.flatMap((window, index): FixedPlace[] =>
        held.from < window.end && window.start < held.to
          ? [{ player: player(held.player), window: index, place: held.place }]
          : [],
      ),
    ),
    hasStart: true,
  }
}

type PlayerJson = MatchRequestJson['players'][number]

function windowsOf(json: MatchRequestJson): readonly LineUpWindow[] {
  const places: LinePlaces = { keeper: 0, back: 0, middle: 0, forward: 0, ...json.places }
  const windows = windowsOfPeriods(json.periods, marksOf(json, placesInAll(places)))
  return windows.map((window) => {
    const there = json.players.filter((player) => isThereFor(player, window)).length
    return { ...window, places: json.fewerWhereTooFew ? placesFor(places, there) : places }
  })
}

function marksOf(json: MatchRequestJson, aSide: number): readonly (readonly number[])[] {
  const { periods, changeEvery, marks, players } = json
  if (marks) return marks
  if (changeEvery === undefined)
    return defaultMarks({ periodSeconds: periods, aSide, changesAtBreaksOnly: false }, players.length)
  if (changeEvery === null) return periods.map(() => [])
  return periods.map((seconds) =>
    Array.from({ length: Math.ceil(seconds / changeEvery) - 1 }, (_, index) => (index + 1) * changeEvery),
  )
}

/** There for a window only where there for all of it. */
function isThereFor({ present }: PlayerJson, { start, end }: Pick<LineUpWindow, 'start' | 'end'>): boolean {
  return present === undefined || joined(present).some(([from, to]) => from <= start && end <= to)
}

function joined(spans: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] {
  const whole: [number, number][] = []
  for (const [from, to] of spans) {
    const last = whole.at(-1)
    if (last && last[1] === from) last[1] = to
    else whole.push([from, to])
  }
  return whole
}

function playerOf(own: PlayerJson, windows: readonly LineUpWindow[], leastShare: number): LineUpPlayer {
  const isThere = windows.map((window) => isThereFor(own, window))
  const whole = windows.at(-1)?.end ?? 0
  const present = (own.present ?? [[0, whole] as const]).reduce((sum, [from, to]) => sum + to - from, 0)
  const shared = leastSecondsOf(
    { share: leastShare, periods: null, late: [], wherePossible: false },
    { periodSeconds: [whole], from: 0, to: present, policyShare: null },
  )
  const { play = 0, keep = 0, starts = 0 } = own.gap ?? {}
  return {
    id: own.id,
    keeps: own.keeps ?? true,
    isThere,
    // A gap is what was had less what was due; what is owed is the other way round.
    owed: { playSeconds: 0 - play, keepSeconds: 0 - keep, starts: 0 - starts },
    leastSeconds: own.least ?? Math.min(secondsThere({ isThere }, windows), shared),
    mostSeconds: own.most ?? null,
    wishes: { ...noWishes, ...own.lines },
    metSeconds: { ...nothingMet, ...own.met },
    running: notRunning,
  }
}

function rulesOf(rules: NonNullable<MatchRequestJson['rules']>): LineUpProblem['rules'] {
  return {
    keeperForPeriod: rules.keeperForPeriod ?? false,
    mostKeeperPeriods: rules.mostKeeperPeriods ?? null,
    leastSpellSeconds: rules.leastSpell ?? 0,
    longestSpellSeconds: rules.longestSpell ?? null,
    longestOffSeconds: rules.longestOff ?? null,
    mostChanges: rules.mostChanges ?? null,
    mostSubstitutions: rules.mostSubstitutions ?? null,
    mayReturn: rules.mayReturn ?? true,
  }
}
