import type { RegisterLine } from '#squad/register'
import type { CalendarEntry } from './calendar'
import { joinedOn, membersOf } from './club'
import { type PlayerKey, playerId } from './names'
import { type Random, wholeBetween } from './random'
import { comingChance, guestsAt, incidents, mustCome, stories } from './stories'

const lateChance = 0.07
const leavingChance = 0.04

/** Who came to a practice, from when to when: whole seconds, lines in the squad's order, guests last. */
export function registerOfPractice(
  entry: CalendarEntry,
  at: { readonly lengthSeconds: number; readonly random: Random },
): readonly RegisterLine[] {
  const members = membersOf[entry.squad].filter(
    (key) => joinedOn(key) <= entry.day && comes(key, entry, at.random),
  )
  return [...members, ...(guestsAt[entry.key] ?? [])].flatMap((key) => linesOf(key, entry, at))
}

function comes(key: PlayerKey, entry: CalendarEntry, random: Random): boolean {
  const falls = random() < comingChance(key)
  return mustCome(key, entry.key) ?? falls
}

function linesOf(
  key: PlayerKey,
  entry: CalendarEntry,
  at: { readonly lengthSeconds: number; readonly random: Random },
): readonly RegisterLine[] {
  const whole = { playerId: playerId(key), from: 0, to: at.lengthSeconds }
  const incident = incidents.find((one) => one.player === key && one.session === entry.key)
  if (incident) {
    const to = incident.to ?? at.lengthSeconds
    return [
      { ...whole, state: 'here', to: incident.from } as const,
      { ...whole, state: incident.state, from: incident.from, to },
      { ...whole, state: 'here', from: to } as const,
    ].filter((line) => line.from < line.to)
  }
  const from = at.random() < lateChance ? wholeBetween(at.random, { least: 8, most: 18 }) * 60 : 0
  const leaves = at.random() < leavingChance && key !== stories.soleKeeper
  const to = leaves
    ? at.lengthSeconds - wholeBetween(at.random, { least: 15, most: 25 }) * 60
    : at.lengthSeconds
  return [{ ...whole, state: 'here', from, to }]
}
