import type { TestProject } from 'vitest/node'
import { Playground } from './turnbook-process'

declare module 'vitest' {
  export interface ProvidedContext {
    /** A data folder in which the demo club is loaded; nothing runs on it. To be copied, not used. */
    readonly bookToCopy: string
  }
}

/** One start from nothing for the whole run; most tests begin from a copy of what it made. */
export default async function makeBook(project: TestProject) {
  const playground = new Playground()
  try {
    const data = playground.folder()
    const turnbook = await playground.start({ data })
    await turnbook.untilReady()
    await turnbook.stop()
    project.provide('bookToCopy', data)
  } catch (error) {
    await playground.clear()
    throw error
  }
  return () => playground.clear()
}
