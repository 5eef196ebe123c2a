import type { Verb } from '#cli/verb'

/** Every verb by name. Each is loaded only when it is asked for, so that one is quick to start whatever another needs. */
export const verbTable: ReadonlyMap<string, () => Promise<Verb>> = new Map([
  ['backup', async () => (await import('#cli/verbs/backup')).verb],
  ['export', async () => (await import('#cli/verbs/export')).verb],
  ['import', async () => (await import('#cli/verbs/import')).verb],
  ['ledger', async () => (await import('#cli/verbs/ledger')).verb],
  ['match-plan', async () => (await import('#cli/verbs/match-plan')).verb],
  ['plan', async () => (await import('#cli/verbs/plan')).verb],
  ['rebuild', async () => (await import('#cli/verbs/rebuild')).verb],
  ['restore', async () => (await import('#cli/verbs/restore')).verb],
  ['rotation', async () => (await import('#cli/verbs/rotation')).verb],
])
