import type { Day } from '#common/time'
import { formatDay } from '#ui/format-day'

export type ListedLink = {
  readonly id: string
  readonly kind: 'join' | 'family' | 'recover'
  readonly playerName: string | null
  readonly madeByName: string | null
  readonly madeOn: Day
  readonly state: 'open' | 'used' | 'revoked' | 'over'
  readonly on: Day
}

/** What a link is for. */
export function linkText({ kind, playerName }: Pick<ListedLink, 'kind' | 'playerName'>): string {
  if (kind === 'family') return `To the page of ${playerName ?? 'a child'}`
  return kind === 'join' ? 'To join' : 'To set a new password'
}

/** How a link stands: "can be used until Thu, 10 Dec 2026". */
export function linkStateText({ state, on }: Pick<ListedLink, 'state' | 'on'>): string {
  const day = formatDay(on)
  const texts = {
    open: `can be used until ${day}`,
    used: `was used on ${day}`,
    revoked: `was taken back on ${day}`,
    over: `was not used; it ended on ${day}`,
  }
  return texts[state]
}

export function linkMadeText({ madeOn, madeByName }: Pick<ListedLink, 'madeOn' | 'madeByName'>): string {
  return `Made on ${formatDay(madeOn)}${madeByName ? ` by ${madeByName}` : ''}`
}
