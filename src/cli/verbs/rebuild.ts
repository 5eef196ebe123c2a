import type { Verb } from '#cli/verb'
import { withDatabases } from '#cli/with-databases'
import { rebuildEverything } from '#server/rebuild-everything'

export const verb: Verb = {
  name: 'rebuild',
  summary: 'the kept sums of every club anew from what was written',
  help:
    'Folds every session of every squad again and judges the seasons anew. Pages can be used meanwhile. Ctrl+C stops ' +
    'after the squads that are done; the one at hand is as it was.',
  options: [],
  run: async (call) => {
    const began = Date.now()
    const faults: string[] = []
    await withDatabases(async (databases) => {
      for await (const squad of rebuildEverything({ ...databases, now: new Date() })) {
        const seconds = ((Date.now() - began) / 1000).toFixed(1)
        const what = 'fault' in squad ? `failed: ${squad.fault.message}` : `${squad.sessions} sessions`
        const line = `${squad.clubName}, ${squad.squadName}: ${what}`
        if ('fault' in squad) faults.push(line)
        call.say(`${seconds} s  ${squad.done} of ${squad.of}  ${line}`)
      }
    })
    if (faults.length > 0) {
      throw new Error(
        `${faults.length} squads could not be rebuilt and are as they were:\n${faults.join('\n')}`,
      )
    }
    call.say(`Done in ${((Date.now() - began) / 1000).toFixed(1)} s.`)
    return { kind: 'done', output: null }
  },
}
