import { andList } from '#common/and-list'
import { countWord } from '#common/count-word'
import type { Seconds } from '#common/time'
import type { LineUpGoal } from '#lineup/line-up'
import { sayTime } from '#lineup/say-clock'

const evenly = { goal: 'time in goal', starts: 'starts', lines: 'lines' } as const

/** What fewer changes cost, in one sentence: "Two changes fewer: one player is 4 minutes further from its even share." */
export function sayTradeOff(tradeOff: {
  readonly fewer: number
  /** How many are further from what they are due, and by how much at most. */
  readonly players: number
  readonly seconds: Seconds
  /** Missed of the least time beyond what was missed before. */
  readonly short: Seconds
  /** Goals that are met less well than before. */
  readonly worse: readonly LineUpGoal[]
}): string {
  const { fewer, players, seconds, short, worse } = tradeOff
  const others = worse.flatMap((goal) => (goal in evenly ? [evenly[goal as keyof typeof evenly]] : []))
  const parts = [
    sayFurther(players, Math.round(seconds)),
    short > 0 ? `${sayTime(Math.round(short))} of what was promised are missed` : '',
    others.length > 0 ? `${andList(others)} are shared less evenly` : '',
  ].filter(Boolean)
  const changes = `${countWord(fewer)} ${fewer === 1 ? 'change' : 'changes'} fewer`
  return `${changes.charAt(0).toUpperCase()}${changes.slice(1)}: ${parts.join('; ')}.`
}

function sayFurther(players: number, seconds: Seconds): string {
  if (players === 0 || seconds === 0) return 'nobody is further from an even share'
  return players === 1
    ? `one player is ${sayTime(seconds)} further from its even share`
    : `${countWord(players)} players are up to ${sayTime(seconds)} further from their even share`
}
