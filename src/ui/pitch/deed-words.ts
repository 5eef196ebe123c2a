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
