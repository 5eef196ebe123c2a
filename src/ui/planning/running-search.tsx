import { Button } from '#ui/page/button'
import { ProgressBar } from '#ui/planning/progress-bar'

/** How long a search may look, and how long it has. */
export type SearchClock = { readonly elapsedMs: number; readonly limitMs: number }

/** A search for something better that is running, and the way to stop it. */
export function RunningSearch({
  search,
  says,
  label = says,
  onStop,
}: {
  readonly search: SearchClock
  readonly says: string
  /** What the bar is called, where what it says changes as it goes. */
  readonly label?: string
  readonly onStop: () => void
}) {
  return (
    <div className="flex flex-wrap items-center gap-3">
      <ProgressBar label={label} value={search.elapsedMs} max={search.limitMs} />
      <span role="status">{says}</span>
      <span aria-hidden="true" className="figures text-soft">
        {Math.round(search.elapsedMs / 1000)} of {Math.round(search.limitMs / 1000)} s
      </span>
      <Button type="button" weight="plain" onClick={onStop}>
        Stop, keep the best so far
      </Button>
    </div>
  )
}
