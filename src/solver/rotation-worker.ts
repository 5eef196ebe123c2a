import type { WorkerCall, WorkerWord } from '#solver/rotation-messages'
import { serveRotation } from '#solver/serve-rotation'

/** The side of a worker that sees its page; the types of pages know only the other one. */
type WorkerScope = {
  onmessage: ((event: { readonly data: WorkerCall }) => void) | null
  readonly postMessage: (word: WorkerWord) => void
}

const scope = globalThis as unknown as WorkerScope

scope.onmessage = ({ data }) => {
  void serveRotation(data, (word) => scope.postMessage(word))
}
