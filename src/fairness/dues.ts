import { bookColumns, restColumn } from '#exposure/book-columns'
import type { Column } from '#exposure/column'
import { ColumnTally, keyOfColumn, type TallyRow } from '#exposure/column-tally'
import { exposuresOf } from '#exposure/exposures'
import { type Span, spanLength } from '#exposure/span'
import { wholeTurns } from '#exposure/whole-turns'
import { fairKeepShare, fairSeatShare, type Places, withOneMore, withOpenGoal } from '#fairness/fair-share'
import type { PlayerId } from '#squad/player'

/** What a player was due; see the fields of the same name of an account's figure. */
export type Due = {
  fairSeconds: number
  fairTurns: number
  fullFairSeconds: number
  openGoalFairSeconds: number
}

export type DueRules = {
  /** Who may keep goal; whoever in fact kept counts as able in that span. */
  readonly able: ReadonlySet<PlayerId>
  /** Who is due a share of what it missed. */
  readonly members: ReadonlySet<PlayerId>
  readonly middleAttackShare: number
}

/** A column of a span with its seats; of the middle, the part that goes into this column of the book. */
type OpenColumn = {
  readonly column: Column
  readonly key: string
  readonly seats: number
  readonly weight: number
}

/** What everyone was due in each column over the spans: those present, and the members who were away for a span. */
export function duesOf(spans: readonly Span[], rules: DueRules): readonly TallyRow<Due>[] {
  const tally = new ColumnTally<Due>(() => ({
    fairSeconds: 0,
    fairTurns: 0,
    fullFairSeconds: 0,
    openGoalFairSeconds: 0,
  }))
  for (const whole of wholeTurns(spans)) {
    if (whole.length === 1) addDuesOfSpan(tally, whole[0], rules)
    else addDuesOfParts(tally, whole, rules)
  }
  return tally.rows()
}

/**
 * Parts of one turn: seconds as of spans by themselves; of the turns that a column counts in all (see `turnCount`), as
 * large a part as of its seconds.
 */
function addDuesOfParts(tally: ColumnTally<Due>, whole: readonly Span[], rules: DueRules): void {
  const own = new ColumnTally<Due>(tally.nothing)
  for (const span of whole) addDuesOfSpan(own, span, rules)
  const counted = sumByColumn(exposuresOf(whole, rules), ({ turns }) => turns)
  const dueSeconds = sumByColumn(own.rows(), ({ fairSeconds }) => fairSeconds)
  for (const { playerId, column, sums } of own.rows()) {
    const key = keyOfColumn(column)
    const due = tally.at(playerId, column, key)
    const seconds = dueSeconds.get(key) ?? 0
    due.fairSeconds += sums.fairSeconds
    due.fairTurns += seconds > 0 ? ((counted.get(key) ?? 0) * sums.fairSeconds) / seconds : 0
    due.fullFairSeconds += sums.fullFairSeconds
    due.openGoalFairSeconds += sums.openGoalFairSeconds
  }
}

function sumByColumn<Sums>(rows: readonly TallyRow<Sums>[], figure: (sums: Sums) => number) {
  const sums = new Map<string, number>()
  for (const { column, sums: own } of rows) {
    const key = keyOfColumn(column)
    sums.set(key, (sums.get(key) ?? 0) + figure(own))
  }
  return sums
}

function addDuesOfSpan(tally: ColumnTally<Due>, span: Span, rules: DueRules): void {
  const length = spanLength(span)
  const kept = new Set(span.seats.filter((s) => s.column.role === 'keep').flatMap((s) => s.playerIds))
  const isAble = (playerId: PlayerId) => rules.able.has(playerId) || kept.has(playerId)
  const places = {
    present: span.present.length,
    keeperSeats: kept.size,
    able: span.present.filter(isAble).length,
  }
  const columns = openColumns(span, rules.middleAttackShare)
  const openGoal = withOpenGoal(places)
  for (const playerId of span.present) {
    const able = isAble(playerId)
    const isMember = rules.members.has(playerId)
    for (const open of columns) {
      const share = shareOf(open, places, able)
      if (share === 0 && open.seats === 0) continue
      const due = tally.at(playerId, open.column, open.key)
      due.fairSeconds += length * share
      due.fairTurns += span.turnCount * share
      due.fullFairSeconds += isMember ? length * share : 0
      due.openGoalFairSeconds += length * shareOf(open, openGoal, true)
    }
  }
  addDuesOfAbsent(tally, span, { rules, places, columns })
}

function addDuesOfAbsent(
  tally: ColumnTally<Due>,
  span: Span,
  at: { readonly rules: DueRules; readonly places: Places; readonly columns: readonly OpenColumn[] },
): void {
  const present = new Set(span.present)
  for (const playerId of at.rules.members) {
    if (present.has(playerId)) continue
    const able = at.rules.able.has(playerId)
    const places = withOneMore(at.places, able)
    for (const open of at.columns) {
      const seats = open.column.role === 'rest' ? open.seats + 1 : open.seats
      const share = shareOf({ ...open, seats }, places, able)
      if (share > 0) tally.at(playerId, open.column, open.key).fullFairSeconds += spanLength(span) * share
    }
  }
}

function openColumns(span: Span, middleAttackShare: number): readonly OpenColumn[] {
  const seated = span.seats.flatMap(({ column: seat, playerIds }) =>
    bookColumns(seat, { themeId: span.themeId, middleAttackShare }).map(({ column, weight }) => ({
      column,
      key: keyOfColumn(column),
      seats: playerIds.length,
      weight,
    })),
  )
  const rest = restColumn(span)
  return [...seated, { column: rest, key: keyOfColumn(rest), seats: span.resting.length, weight: 1 }]
}

function shareOf(open: OpenColumn, places: Places, isAble: boolean): number {
  if (open.column.role === 'keep') return fairKeepShare(places, isAble)
  return open.weight * fairSeatShare(places, { seats: open.seats, isAble })
}
