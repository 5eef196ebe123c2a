/** As much of a worker as is needed here: a page's own, or a thread's that looks like one. */
export type AskedWorker<Call, Word> = {
  onmessage: ((event: { readonly data: Word }) => void) | null
  onerror: ((event: { readonly message?: string }) => void) | null
  readonly postMessage: (call: Call) => void
  readonly terminate: () => void
}

/** A worker says any number of times `progress`, then one word of another kind. */
type AnyWord = { readonly kind: string }
type Progress<Word> = Extract<Word, { readonly kind: 'progress' }>
type LastWord<Word> =
  | Exclude<Word, Progress<Word>>
  | { readonly kind: 'failed'; readonly message: string }
  | { readonly kind: 'stopped' }

export type Asking<Call, Word> = {
  /** Gives the worker; not called where it is stopped beforehand. */
  readonly start: () => AskedWorker<Call, Word>
  readonly signal: AbortSignal | undefined
  readonly hear?: (word: Progress<Word>) => void
  /** Called as soon as the worker has ended. */
  readonly ended?: () => void
}

/**
 * One call to a worker, until its last word or until it is stopped. A running solver hears nothing, so a stop ends its
 * worker; and so does every last word, as the solver's memory only ever grows.
 */
export function askWorker<Call, Word extends AnyWord>(
  call: Call,
  { start, signal, hear, ended }: Asking<Call, Word>,
): Promise<LastWord<Word>> {
  if (signal?.aborted) return Promise.resolve({ kind: 'stopped' })
  const worker = start()
  return new Promise((resolve) => {
    const end = (word: LastWord<Word>) => {
      signal?.removeEventListener('abort', stop)
      worker.onmessage = null
      worker.onerror = null
      worker.terminate()
      ended?.()
      resolve(word)
    }
    const stop = () => end({ kind: 'stopped' })
    signal?.addEventListener('abort', stop)
    worker.onerror = ({ message = '' }) => end({ kind: 'failed', message })
    worker.onmessage = ({ data }) => {
      if (isProgress(data)) hear?.(data)
      else end(data as Exclude<Word, Progress<Word>>)
    }
    worker.postMessage(call)
  })
}

function isProgress<Word extends AnyWord>(word: Word): word is Progress<Word> {
  return word.kind === 'progress'
}
