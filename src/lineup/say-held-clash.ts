import { andList } from '#common/and-list'
import { countWord } from '#common/count-word'
import type { Problem } from '#common/problem'
import type { LineUpClash } from '#lineup/line-up-clash'
import type { NameOf } from '#lineup/line-up-figures'
import type { LineUpProblem } from '#lineup/problem'
import { sayClock, sayTime } from '#lineup/say-clock'
import type { Line } from '#match/match'

type HeldClash = Extract<LineUpClash, { kind: 'held' | 'heldTooMany' | 'tooSoon' }>

/** Held places that cannot be, in one sentence with what would work. */
export function sayHeldClash(problem: LineUpProblem, clash: HeldClash, nameOf: NameOf): Problem {
  const name = (player: number) => nameOf(problem.players[player]?.id ?? '')
  const at = sayClock(problem.windows[clash.window]?.start ?? 0)
  if (clash.kind === 'tooSoon') {
    return {
      path: `held.${clash.player}.${clash.window}`,
      message: `${name(clash.player)} is held off at ${at}, after ${sayTime(clash.played)} on at most; everyone is to stay on for ${sayTime(clash.least)}: take this player off later, or lower that time.`,
    }
  }
  if (clash.kind === 'heldTooMany') {
    const { players, place, room, window } = clash
    const held = players.length > 4 ? `${countWord(players.length)} players` : andList(players.map(name))
    const why =
      place === 'off' || place === 'on'
        ? `only ${countWord(room)} can be ${place}`
        : `there ${room === 1 ? 'is' : 'are'} ${room === 0 ? 'no' : countWord(room)} such ${room === 1 ? 'place' : 'places'}`
    return {
      path: `held.${players.at(-1) ?? 0}.${window}`,
      message: `${held} ${players.length === 1 ? 'is' : 'are'} held ${placeWords[place]} at ${at}, and ${why}: let one of them go.`,
    }
  }
  const place = problem.fixed.find(
    (fixed) => fixed.player === clash.player && fixed.window === clash.window,
  )?.place
  const held = `${name(clash.player)} is held ${placeWords[place ?? 'on']} at ${at}`
  return { path: `held.${clash.player}.${clash.window}`, message: `${held}${whyWords[clash.why]}` }
}

const placeWords: Readonly<Record<Line | 'on' | 'off', string>> = {
  keeper: 'in goal',
  back: 'at the back',
  middle: 'in the middle',
  forward: 'up front',
  on: 'on',
  off: 'off',
}

const whyWords: Readonly<Record<Extract<HeldClash, { kind: 'held' }>['why'], string>> = {
  absent: ', and is not there then: let the place go, or change from when to when the player is there.',
  keeper: ', and is not down for goal: let the place go, or put the player down for goal.',
  notYet: ', and does not play that line yet: let the place go, or change what is said of the line.',
  twice: ', and in another place as well: keep one of the two.',
  comesBack: ', and came off before, where nobody may come back: let one of the two places go.',
}
