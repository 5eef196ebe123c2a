import { Worker } from 'node:worker_threads'
import type { AheadWorker } from '#solver/ahead-in-worker'
import type { AskedWorker } from '#solver/ask-worker'
import type { LineUpWorker } from '#solver/line-up-in-worker'
import type { RotationWorker } from '#solver/rotation-in-worker'

/** Gives a thread the two names that a page's worker finds, then loads the real module. */
const shim = `
  const { parentPort, workerData } = require('node:worker_threads')
  globalThis.postMessage = (word) => parentPort.postMessage(word)
  const early = []
  parentPort.on('message', (data) => (globalThis.onmessage ? globalThis.onmessage({ data }) : early.push(data)))
  import('tsx/esm/api').then(({ register }) => register())
    .then(() => import(workerData))
    .then(() => early.forEach((data) => globalThis.onmessage({ data })))
`

/** The rotation worker in a thread of Node, with the face of a page's worker. */
export function threadWorker(): RotationWorker {
  return threadOf('rotation-worker')
}

/** The line-up worker likewise. */
export function threadLineUpWorker(): LineUpWorker {
  return threadOf('line-up-worker')
}

/** The weeks ahead's worker likewise. */
export function threadAheadWorker(): AheadWorker {
  return threadOf('ahead-worker')
}

function threadOf<Call, Word>(name: string): AskedWorker<Call, Word> {
  const thread = new Worker(shim, {
    eval: true,
    workerData: new URL(`../../src/solver/${name}.ts`, import.meta.url).href,
  })
  const face: AskedWorker<Call, Word> = {
    onmessage: null,
    onerror: null,
    postMessage: (call) => thread.postMessage(call),
    terminate: () => void thread.terminate(),
  }
  thread.on('message', (data) => face.onmessage?.({ data }))
  thread.on('error', (error) => face.onerror?.({ message: error.message }))
  return face
}
