type Failed = { readonly kind: 'failed'; readonly message: string }

/** The side of a worker that sees its page; the types of pages know only the other one. */
type WorkerScope<Call, Word> = {
  onmessage: ((event: { readonly data: Call }) => void) | null
  readonly postMessage: (word: Word | Failed) => void
}

/** Makes this thread a worker: it does what it is asked for and says so, word by word; never throws. */
export function serveCalls<Call, Word>(
  answer: (call: Call, say: (word: Word) => void) => Promise<Word>,
): void {
  const scope = globalThis as unknown as WorkerScope<Call, Word>
  scope.onmessage = async ({ data }) => {
    try {
      scope.postMessage(await answer(data, (word) => scope.postMessage(word)))
    } catch (error) {
      scope.postMessage({ kind: 'failed', message: error instanceof Error ? error.message : String(error) })
    }
  }
}
