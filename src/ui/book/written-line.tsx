import type { WrittenCount } from '#fairness/book/written-count'
import { counted } from '#ui/plural'

type WrittenLineProps = { readonly count: WrittenCount; readonly kind: 'practice' | 'match' }

/** What the page rests on: "9 of 14 practices are written down, 3 of them as planned (drawn hatched)." */
export function WrittenLine({ count, kind }: WrittenLineProps) {
  const held = kind === 'practice' ? counted(count.held, 'practice') : counted(count.held, 'match', 'matches')
  if (count.held === 0) return <p>No {kind === 'practice' ? 'practice' : 'match'} was held yet.</p>
  const planned =
    count.asPlanned > 0 ? `, ${count.asPlanned} of them as planned (drawn hatched: even by construction)` : ''
  return (
    <p>
      {count.written} of {held} {count.held === 1 ? 'is' : 'are'} written down{planned}.
    </p>
  )
}
