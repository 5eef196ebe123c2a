import type { Day } from '#common/time'
import { formatDay } from '#ui/format-day'

export type Agreed = {
  readonly id: string
  readonly kind: 'fewerTurns' | 'sameSide' | 'sameFirstPartner' | 'planShownEarly' | 'neverWaitsAlone'
  readonly dueShare?: number
  readonly firstDay: Day
  readonly lastDay: Day | null
}

const text: Readonly<Record<Agreed['kind'], string>> = {
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
          {text[kind]}
          {kind === 'fewerTurns' && dueShare !== undefined
            ? `: ${Math.round(dueShare * 100)} % of an even share is due`
            : ''}{' '}
          <span className="text-soft">
            since {formatDay(firstDay)}
            {lastDay ? `, until ${formatDay(lastDay)}` : ''}
          </span>
        </li>
      ))}
    </ul>
  )
}
