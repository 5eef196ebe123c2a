import type { ReplanRefusal } from '#touchline/replan-match'
import { PitchButton } from '#ui/pitch/pitch-button'

/** What came of planning the rest anew. */
export type PlanNews = {
  readonly kind: 'made' | ReplanRefusal
  /** What the new plan comes to; empty: none was made. */
  readonly sentence: string
  readonly isSearching: boolean
  /** What the exact search says of it; null: nothing yet. */
  readonly proof: string | null
}

const refusals: Readonly<Record<ReplanRefusal, string>> = {
  nothingLeft: 'Nothing is left to be planned.',
  nobodyThere: 'Nobody who may play is here: there is nothing to plan.',
  noneFound:
    'No plan for the rest was found that keeps the rules. Change places by hand: tap a name that is on.',
}

type PlanNotesProps = {
  readonly news: PlanNews | null
  /** The plan does not fit who is here; null: it does, or this phone plans nothing. */
  readonly needed: string | null
  readonly onPlan: () => void
  readonly onSeen: () => void
}

/** That the plan does not fit who is here, and what the new one comes to. */
export function PlanNotes({ news, needed, onPlan, onSeen }: PlanNotesProps) {
  if (needed)
    return (
      <div className="space-y-2 border-2 border-ink p-2">
        <p className="font-semibold">{needed}</p>
        <PitchButton weight="main" className="w-full" onClick={onPlan}>
          Plan it for who is here
        </PitchButton>
      </div>
    )
  if (!news) return null
  return (
    <div role="status" className="flex items-start justify-between gap-2 border-2 border-ink p-2">
      <div className="min-w-0">
        <p className="font-semibold">{news.kind === 'made' ? news.sentence : refusals[news.kind]}</p>
        {news.isSearching ? <p className="text-base">Looking whether there is a fairer one …</p> : null}
        {news.proof ? <p className="text-base">{news.proof}</p> : null}
      </div>
      <PitchButton className="shrink-0 text-base" onClick={onSeen}>
        Seen
      </PitchButton>
    </div>
  )
}
