import { InvariantError } from '#common/result'
import type { Seconds } from '#common/time'
import { checkBooks, livePresent } from '#exposure/balance'
import { ColumnTally, keyOfColumn } from '#exposure/column-tally'
import { exposuresOf } from '#exposure/exposures'
import { longestRestRun } from '#exposure/rest-run'
import { type Span, spanLength } from '#exposure/span'
import { wholeTurns } from '#exposure/whole-turns'
import type { AccountLine, Figure, PresenceAccount } from '#fairness/account'
import { attendanceOf } from '#fairness/attendance'
import { type DueRules, duesOf } from '#fairness/dues'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'
import type { Written } from '#squad/written'

/** What an account depends on beside what was written of the session. */
export type AccountRules = DueRules & { readonly written: Written }

type Mutable<T> = { -readonly [K in keyof T]: T[K] }

const nothing = (): Mutable<Figure> => ({
  seconds: 0,
  turns: 0,
  fairSeconds: 0,
  fairTurns: 0,
  fullFairSeconds: 0,
  openGoalFairSeconds: 0,
})

/**
 * What everyone got and was due in each column of the spans; rows of nothing at all are left out.
 * @throws InvariantError when the books do not balance.
 */
export function accountLines(spans: readonly Span[], rules: DueRules): readonly AccountLine[] {
  const got = exposuresOf(spans, rules)
  checkBooks(spans, got, rules)
  const tally = new ColumnTally(nothing)
  for (const { playerId, column, sums } of got) {
    const figure = tally.at(playerId, column)
    figure.seconds += sums.seconds
    figure.turns += sums.turns
  }
  for (const { playerId, column, sums } of duesOf(spans, rules))
    Object.assign(tally.at(playerId, column), sums)
  const lines = tally.rows().map(({ playerId, column, sums }) => ({ playerId, ...column, ...sums }))
  checkGaps(lines)
  return lines
}

/** Shares and fair shares have equal totals, so the gaps of a column sum to zero. */
function checkGaps(lines: readonly AccountLine[]): void {
  const sums = new Map<string, { got: number; due: number }>()
  for (const line of lines) {
    const key = keyOfColumn(line)
    const sum = sums.get(key) ?? { got: 0, due: 0 }
    sum.got += line.seconds
    sum.due += line.fairSeconds
    sums.set(key, sum)
  }
  for (const [column, { got, due }] of sums) {
    if (Math.abs(got - due) > 1e-9 * Math.max(1, got)) {
      throw new InvariantError('Shares and fair shares of a column differ.', { column, got, due })
    }
  }
}

/** How everyone who was there, and every member who was not, was at the session. In order of the register, then members. */
export function accountPresences(
  spans: readonly Span[],
  register: readonly RegisterLine[],
  members: ReadonlySet<PlayerId>,
): readonly PresenceAccount[] {
  const live = livePresent(spans)
  const first = spans.at(0)
  const last = spans.at(-1)
  const played = first && last ? { from: first.start, to: last.end } : null
  const turns = spans.filter((span) => span.turnCount === 1)
  const whole = wholeTurns(turns)
  const playerIds = new Set([...register.map((line) => line.playerId), ...members])
  return [...playerIds].map((playerId) => ({
    playerId,
    isMember: members.has(playerId),
    attendance: attendanceOf(
      register.filter((line) => line.playerId === playerId),
      played,
    ),
    liveSeconds: live.get(playerId) ?? 0,
    turnsPresent: whole.filter((parts) => parts.some((part) => part.present.includes(playerId))).length,
    longestRestTurns: longestRestRun(turns, playerId, { freeGameIsOneWait: true }),
  }))
}

export function liveSecondsOf(spans: readonly Span[]): Seconds {
  return spans.reduce((sum, span) => sum + spanLength(span), 0)
}
