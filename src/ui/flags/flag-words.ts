import type { FlagCause } from '#fairness/flags/flag-causes'
import type { CureGroup } from '#fairness/flags/flag-rule'
import { words } from '#ui/words'

/** What flags are about, for switches and headings. */
export const flagGroupWords: Readonly<Record<CureGroup, string>> = {
  attack: 'attacking',
  defend: 'defending',
  situation: 'numbers',
  theme: 'theme',
  waiting: 'waiting',
  goal: 'goal',
  match: 'time in matches',
  note: 'notes',
}

export function flagCauseWord(cause: FlagCause): string {
  return cause in words.cause
    ? words.cause[cause as keyof typeof words.cause]
    : flagGroupWords[cause as CureGroup]
}

export const flagStatusWords = { open: 'Open', acknowledged: 'Answered', cleared: 'Cleared' } as const
