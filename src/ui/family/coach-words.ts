import { andList } from '#common/and-list'
import type { FamilyChange } from '#family/page-changes'
import type { Waiting } from '#family/what-waits'
import { capital } from '#ui/capital'

const changeWords: Readonly<Record<FamilyChange, string>> = {
  first: 'nothing confirmed before',
  sessions: 'practices or matches',
  sentences: 'what is said',
  minutes: 'times and turns',
  themes: 'themes',
  attendance: 'days there and away',
  note: 'your note',
}

/** "Changed: what is said, times and turns"; for a coach. */
export function changesText(changes: readonly FamilyChange[]): string {
  if (changes.length === 0) return 'Nothing new since you last confirmed.'
  if (changes.includes('first')) return 'Not confirmed yet.'
  return `${capital('changed')}: ${andList(changes.map((change) => changeWords[change]))}.`
}

/** `isOwnPage`: the coach stands on the child's page already. */
export function waitingText(waiting: Waiting, { isOwnPage }: { readonly isOwnPage: boolean }): string {
  if (waiting.what === 'nextStep') return 'Waits for your next step.'
  const next = isOwnPage
    ? 'Families read only about their own child.'
    : 'Look at it and confirm this page by itself.'
  return `The note names ${andList(waiting.names)}. ${next}`
}

/** Who can read the page. */
export function readersText({ recorded, claimed }: { recorded: number; claimed: number }): string {
  if (recorded === 0) return 'No guardian is recorded: nobody can read it.'
  if (claimed === 0)
    return recorded === 1 ? 'The guardian has not used the link yet.' : 'No guardian has used the link yet.'
  return claimed === 1 ? '1 guardian can read it.' : `${claimed} guardians can read it.`
}
