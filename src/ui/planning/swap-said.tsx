import { Button } from '#ui/page/button'

/** What a swap would do, in sentences; null: there is nothing to swap. */
export function SwapSaid({
  said,
  onSwap,
  onClose,
}: {
  readonly said: { readonly isAllowed: boolean; readonly sentences: readonly string[] } | null
  readonly onSwap: () => void
  readonly onClose: () => void
}) {
  return (
    <>
      <ul aria-live="polite" className="mt-1">
        {said ? (
          said.sentences.map((sentence) => (
            <li key={sentence} className={said.isAllowed ? '' : 'font-medium text-warn'}>
              {sentence}
            </li>
          ))
        ) : (
          <li>They have the same place: there is nothing to swap.</li>
        )}
      </ul>
      <div className="mt-2 flex flex-wrap gap-2">
        <Button type="button" disabled={!said?.isAllowed} onClick={onSwap}>
          Swap them
        </Button>
        <Button type="button" weight="plain" onClick={onClose}>
          Leave it
        </Button>
      </div>
    </>
  )
}
