import type { Deed } from '#pitch/pitch-event'
import type { Cast } from '#ui/pitch/cast'
import { swapSentence } from '#ui/pitch/round-deeds'
import { words } from '#ui/words'

/** What was tapped, in a few words, for the button that takes it back. */
export function deedWords(deed: Deed, { nameOf }: Pick<Cast, 'nameOf'>): string {
  switch (deed.kind) {
    case 'begin':
      return 'Begin'
    case 'register':
      return `${nameOf(deed.playerId)} ${deed.state === 'gone' ? 'gone' : words.register[deed.state]}`
    case 'guest':
      return `+ ${deed.name}`
    case 'replan':
      return deed.sentence === swapSentence ? 'swap' : 'new rotation'
    case 'roundDone':
      return `round ${deed.round + 1} done`
    case 'turnStart':
      return 'ball started'
    case 'change':
      return 'places changed'
    case 'turnEnd':
      return 'ball over'
    case 'points':
      return 'points'
    case 'choice':
      return 'choice'
    case 'passed':
      return `${nameOf(deed.playerId)} passed`
    case 'asPlanned':
      return 'as planned'
    case 'stop':
      return 'stop'
    case 'undo':
      return 'undo'
  }
}

/**
 * What one tap brought about, the last deed first, by the name of what the coach tapped: a rotation that came with
 * something goes without saying, and so do the names of all who were here when it began.
 */
export function stepWords(deeds: readonly Deed[], cast: Pick<Cast, 'nameOf'>): string {
  const here = deeds.filter((deed) => deed.kind === 'register' && deed.state === 'here')
  const named =
    deeds.find(({ kind }) => kind === 'begin') ??
    deeds.findLast(({ kind }) => kind !== 'replan') ??
    deeds.at(-1)
  if (!named) return ''
  return here.length > 1 && named.kind === 'register' ? `${here.length} here` : deedWords(named, cast)
}
