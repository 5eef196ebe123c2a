import type { Line, Spell } from '#match/match'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'
import type { MatchFormat } from './formats'
import type { Random } from './random'
import { best } from './rotation-by-hand'
import type { Tally } from './tally'

export type MatchToPlay = {
  readonly format: MatchFormat
  readonly register: readonly RegisterLine[]
  /** Who may be named for goal, most willing first; one who is put there all the same stands last. */
  readonly keepers: readonly PlayerId[]
  readonly able: ReadonlySet<PlayerId>
}

type Stint = { readonly period: number; readonly start: number; readonly end: number }
type LineUp = Readonly<Record<Line, readonly PlayerId[]>>

/** Seconds by which a coach misjudges. */
const guessSeconds = 100
/** Nobody is off again before everyone else was. */
const offBeforeSeconds = 1e6

/** Plays a match stint by stint: one keeper a period, everyone off in turn, the front and the back taking turns. */
export function playMatch(match: MatchToPlay, tally: Tally, random: Random): readonly Spell[] {
  const off = new Map<PlayerId, number>()
  let keeper: PlayerId | undefined
  let keepsInPeriod = -1
  const stints = stintsOf(match.format).map((stint) => {
    const present = presentIn(match, stint)
    if (stint.period !== keepsInPeriod) keeper = chooseKeeper(match, present, tally)
    keepsInPeriod = stint.period
    const lineUp = chooseLineUp({ match, present, keeper, off }, tally, random)
    const on = Object.values(lineUp).flat()
    // Whoever comes late has been off, as far as its team-mates are concerned.
    for (const { playerId } of match.register)
      if (!on.includes(playerId)) off.set(playerId, (off.get(playerId) ?? 0) + 1)
    remember({ lineUp, present, able: match.able, seconds: stint.end - stint.start }, tally)
    return { stint, lineUp }
  })
  return joinSpells(
    stints.flatMap(({ stint, lineUp }) =>
      (['keeper', 'back', 'middle', 'forward'] as const).flatMap((line) =>
        lineUp[line].map((playerId) => ({ playerId, line, ...stint })),
      ),
    ),
  )
}

function stintsOf(format: MatchFormat): readonly Stint[] {
  return format.periods.flatMap(({ start, end }, period) => {
    const length = (end - start) / format.stintsInPeriod
    return Array.from({ length: format.stintsInPeriod }, (_, index) => ({
      period,
      start: start + index * length,
      end: start + (index + 1) * length,
    }))
  })
}

function presentIn(match: MatchToPlay, stint: Stint): readonly PlayerId[] {
  return match.register
    .filter((line) => line.state === 'here' && line.from <= stint.start && stint.end <= line.to)
    .map((line) => line.playerId)
}

function chooseKeeper(match: MatchToPlay, present: readonly PlayerId[], tally: Tally): PlayerId | undefined {
  const willing = match.keepers.filter((playerId) => present.includes(playerId))
  const able = willing.filter((playerId) => match.able.has(playerId))
  return best(able.length > 0 ? able : willing, 1, (playerId) => tally.of(playerId).keep)[0]
}

function chooseLineUp(
  at: {
    readonly match: MatchToPlay
    readonly present: readonly PlayerId[]
    readonly keeper: PlayerId | undefined
    readonly off: ReadonlyMap<PlayerId, number>
  },
  tally: Tally,
  random: Random,
): LineUp {
  const guess = () => (random() - 0.5) * 2 * guessSeconds
  const { forward, middle, back } = at.match.format.lines
  const field = at.present.filter((playerId) => playerId !== at.keeper)
  const on = best(
    field,
    forward + middle + back,
    (playerId) => (at.off.get(playerId) ?? 0) * offBeforeSeconds - tally.of(playerId).rest + guess(),
  )
  const forwardFirst = best(
    on,
    on.length,
    (playerId) => tally.of(playerId).attack - tally.of(playerId).defend + guess(),
  )
  return {
    keeper: at.keeper ? [at.keeper] : [],
    forward: forwardFirst.slice(0, forward),
    middle: forwardFirst.slice(forward, forward + middle),
    back: forwardFirst.slice(forward + middle),
  }
}

/** The middle counts half as attack and half as defence: as if the stint were two halves, with the middle up, then back. */
function remember(
  stint: {
    readonly lineUp: LineUp
    readonly present: readonly PlayerId[]
    readonly able: ReadonlySet<PlayerId>
    readonly seconds: number
  },
  tally: Tally,
): void {
  const { keeper: keep, back, middle, forward } = stint.lineUp
  const half = { ...stint, seconds: stint.seconds / 2, inMind: () => ({ attack: 1, playing: 1 }) }
  tally.record({ ...half, stations: [{ attack: [...forward, ...middle], defend: back, keep }] })
  tally.record({ ...half, stations: [{ attack: forward, defend: [...back, ...middle], keep }] })
}

/** A player who stays in a line from one stint to the next has one spell, inside one period. */
function joinSpells(spells: readonly (Spell & Stint)[]): readonly Spell[] {
  const joined: (Spell & Stint)[] = []
  for (const spell of spells) {
    const at = joined.findIndex(
      (one) =>
        one.playerId === spell.playerId &&
        one.line === spell.line &&
        one.period === spell.period &&
        one.end === spell.start,
    )
    const before = joined[at]
    if (before) joined[at] = { ...before, end: spell.end }
    else joined.push(spell)
  }
  return joined.map(({ playerId, line, start, end }) => ({ playerId, line, start, end }))
}
