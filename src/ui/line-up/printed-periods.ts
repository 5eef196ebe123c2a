import type { PlannedSpell } from '#lineup/match-plan'
import { periodStarts } from '#lineup/problem-of-match'
import { sayClock } from '#lineup/say-clock'
import type { Line } from '#match/match'
import { words } from '#ui/words'

/** A change as it is printed: names, with the line of who comes on or moves. */
export type PrintedChange = {
  readonly clock: string
  readonly off: readonly string[]
  readonly on: readonly string[]
  readonly moves: readonly string[]
}

export type PrintedPeriod = {
  /** From 0. */
  readonly period: number
  readonly start: number
  readonly seconds: number
  readonly begins: Readonly<Record<Line, readonly string[]>>
  readonly changes: readonly PrintedChange[]
  /** When the period begins and whenever something changes in it, in playing time. */
  readonly edges: readonly number[]
}

type Printed = {
  readonly periodSeconds: readonly number[]
  readonly spells: readonly PlannedSpell[]
  readonly players: readonly { readonly id: string; readonly name: string }[]
}

/** A line-up as paper needs it, from its spells alone: short names, times inside each period. */
export function printedPeriods({ periodSeconds, spells, players }: Printed): readonly PrintedPeriod[] {
  const starts = periodStarts(periodSeconds)
  const names = new Map(players.map(({ id, name }) => [id, name]))
  return periodSeconds.map((seconds, period) => {
    const start = starts[period] ?? 0
    const own = spells.filter((spell) => start <= spell.start && spell.start < start + seconds)
    const edges = [...new Set(own.map((spell) => spell.start).concat(start))]
      .concat(own.flatMap(({ end }) => (end < start + seconds ? [end] : [])))
      .filter((edge, index, all) => all.indexOf(edge) === index)
      .sort((one, other) => one - other)
    const nameOf = (id: string) => names.get(id) ?? 'Guest'
    const beginsIn = (line: Line) =>
      own
        .filter((spell) => spell.start === start && spell.line === line)
        .map(({ playerId }) => nameOf(playerId))
    return {
      period,
      start,
      seconds,
      edges,
      begins: {
        keeper: beginsIn('keeper'),
        back: beginsIn('back'),
        middle: beginsIn('middle'),
        forward: beginsIn('forward'),
      },
      changes: edges.filter((edge) => edge > start).map((edge) => changeAt(own, { edge, start, nameOf })),
    }
  })
}

const lineWords: Readonly<Record<Line, string>> = { ...words.line, keeper: 'goal' }

function changeAt(
  spells: readonly PlannedSpell[],
  {
    edge,
    start,
    nameOf,
  }: { readonly edge: number; readonly start: number; readonly nameOf: (id: string) => string },
): PrintedChange {
  const ended = new Set(spells.filter(({ end }) => end === edge).map(({ playerId }) => playerId))
  const begun = spells.filter((spell) => spell.start === edge)
  const placed = ({ playerId, line }: PlannedSpell) => `${nameOf(playerId)} (${lineWords[line]})`
  return {
    clock: sayClock(edge - start),
    off: [...ended].filter((id) => !begun.some(({ playerId }) => playerId === id)).map(nameOf),
    on: begun.filter(({ playerId }) => !ended.has(playerId)).map(placed),
    moves: begun
      .filter(({ playerId }) => ended.has(playerId))
      .map(({ playerId, line }) => `${nameOf(playerId)} to ${lineWords[line]}`),
  }
}
