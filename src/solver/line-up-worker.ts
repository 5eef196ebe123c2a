import type { LineUpCall, LineUpWord } from '#solver/line-up-messages'
import { serveLineUp } from '#solver/serve-line-up'

/** The side of a worker that sees its page; the types of pages know only the other one. */
type WorkerScope = {
  onmessage: ((event: { readonly data: LineUpCall }) => void) | null
  readonly postMessage: (word: LineUpWord) => void
}

const scope = globalThis as unknown as WorkerScope

scope.onmessage = ({ data }) => {
  void serveLineUp(data, (word) => scope.postMessage(word))
}
