import { laidTurns } from '#pitch/laid-turns'
import type { SetAside } from '#pitch/set-aside'
import { tappedTurns } from '#pitch/tapped-turns'
import type { TimedTurns, TimingSetting } from '#pitch/timed-turn'

/** All turns that were played, in order of time and not overlapping; the last may still be going on. */
export function timedTurns(setting: TimingSetting): TimedTurns {
  if (setting.times.beganAt === null) return { turns: [], setAside: [] }
  const setAside: SetAside[] = []
  const tapped = tappedTurns(setting, setAside)
  const laid = laidTurns(setting, tapped, setAside)
  const turns = [...tapped, ...laid].sort((a, b) => a.start - b.start || a.index - b.index)
  return { turns, setAside }
}
