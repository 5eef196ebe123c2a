import type { Day } from '#common/time'
import { formatDay } from '#ui/format-day'

type AgreedKind = 'fewerTurns' | 'sameSide' | 'sameFirstPartner' | 'planShownEarly' | 'neverWaitsAlone'

export type Agreed = {
  readonly id: string
  readonly kind: AgreedKind
  readonly dueShare?: number
  readonly firstDay: Day
  readonly lastDay: Day | null
}

export const agreedWords: Readonly<Record<AgreedKind, string>> = {
  fewerTurns: 'Fewer or shorter turns',
  sameSide: 'Stays on the same side all practice',
  sameFirstPartner: 'Same first partner',
  planShownEarly: 'Sees the plan early, and it is not changed',
  neverWaitsAlone: 'Never waits alone',
}

/** What was agreed with the player and its family. No reason is kept. */
export function AgreedList({ agreed }: { readonly agreed: readonly Agreed[] }) {
  return (
    <ul className="list-disc space-y-1 pl-5">
      {agreed.map(({ id, kind, dueShare, firstDay, lastDay }) => (
        <li key={id}>
          {agreedWords[kind]}
          {kind === 'fewerTurns' && dueShare !== undefined
            ? `: ${Math.round(dueShare * 100)} % of an even share is due`
            : ''}{' '}
          <span className="text-soft">
            from {formatDay(firstDay)}
            {lastDay ? ` to ${formatDay(lastDay)}` : ' on'}
          </span>
        </li>
      ))}
    </ul>
  )
}
