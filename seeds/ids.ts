import { v5 } from 'uuid'

/** Namespace of the demo club's ids; drawn once. */
const namespace = '6f1c0c52-9a3e-4c57-8f0e-2f6c2a6f9b11'

/** The id that a thing of the demo club has on every machine, made from its path in words, e.g. `player/fernhollow`. */
export function demoId(path: string): string {
  return v5(path, namespace)
}
