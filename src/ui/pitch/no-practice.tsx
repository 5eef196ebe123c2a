import { paths } from '#ui/paths'
import type { Signal } from '#ui/pitch/saved-line'

/** The practice or match is not on this phone, or not yet. */
export function NoPractice({ signal }: { readonly signal: Signal }) {
  return (
    <main id="content" className="mx-auto max-w-xl space-y-4 p-4">
      <h1 className="text-2xl font-bold">At the pitch</h1>
      <p role="status">{sentenceOf(signal)}</p>
      <p className="flex flex-col font-semibold">
        <a href={paths.pitch()}>What is on this phone</a>
        <a href={paths.start()}>To the book (needs a signal)</a>
      </p>
    </main>
  )
}

function sentenceOf(signal: Signal): string {
  switch (signal.kind) {
    case 'noSignal':
      return 'This is not on this phone yet, and there is no signal to fetch it. Open it once where there is one.'
    case 'refused':
      return signal.why
    case 'notKept':
      return 'This browser keeps nothing on this phone, as in a private window: nothing can be run in it.'
    default:
      return 'It is being fetched.'
  }
}
