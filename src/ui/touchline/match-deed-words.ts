import type { PlayerId } from '#squad/player'
import type { MatchDeed } from '#touchline/match-deed'
import { words } from '#ui/words'

type NameOf = (id: PlayerId) => string

/** What was tapped beside a match, in a few words, for the button that takes it back. */
export function matchDeedWords(deed: MatchDeed, nameOf: NameOf): string {
  switch (deed.kind) {
    case 'kickOff':
      return 'kick-off'
    case 'periodEnd':
      return 'whistle'
    case 'clockStops':
      return 'clock stopped'
    case 'clockGoesOn':
      return 'clock went on'
    case 'changeMade':
      return 'change done'
    case 'changeDropped':
      return 'change not made'
    case 'places':
      return 'places changed'
    case 'replan':
      return 'new plan'
    case 'register':
      return `${nameOf(deed.playerId)} ${deed.state === 'gone' ? 'gone' : words.register[deed.state]}`
    case 'guest':
      return `+ ${deed.name}`
    case 'sentOff':
      return `${nameOf(deed.playerId)} sent off`
    case 'goal':
      return deed.side === 'ours' ? 'goal for us' : 'goal for them'
    case 'fullTime':
      return 'full time'
    case 'undo':
      return 'undo'
  }
}

/**
 * What one tap brought about, the last deed first, by the name of what was tapped: a plan that came with something goes
 * without saying, and so do the names of all who were here at the kick-off.
 */
export function matchStepWords(deeds: readonly MatchDeed[], nameOf: NameOf): string {
  const here = deeds.filter((deed) => deed.kind === 'register' && deed.state === 'here')
  const named =
    deeds.find(({ kind }) => kind === 'kickOff' || kind === 'fullTime') ??
    deeds.findLast(({ kind }) => kind !== 'replan') ??
    deeds.at(-1)
  if (!named) return ''
  return here.length > 1 && named.kind === 'register' ? `${here.length} here` : matchDeedWords(named, nameOf)
}
