import type { Day } from '#common/time'
import type { PlayerId } from '#squad/player'
import { demoCalendar } from './calendar'
import { type DemoSession, sessionOf } from './demo-session'
import { matched } from './match-session'
import { practised } from './practice-session'
import { randomFor } from './random'
import { Tally } from './tally'

/** Every session of the season in order of days, each squad's coach remembering what was before; from `today` on they are to come. */
export function buildSessions(today: Day): readonly DemoSession[] {
  const memory = {
    underTen: { practice: new Tally(), match: new Tally(), calls: new Map<PlayerId, number>() },
    underTwelve: { practice: new Tally(), match: new Tally(), calls: new Map<PlayerId, number>() },
  }
  return demoCalendar.map((entry) => {
    const random = randomFor(entry.key)
    const session = sessionOf(entry, { today })
    if (entry.isCancelled || entry.day >= today) return session
    return entry.kind === 'practice'
      ? practised(session, entry, { tally: memory[entry.squad].practice, random })
      : matched(session, entry, {
          tally: memory[entry.squad].match,
          calls: memory[entry.squad].calls,
          random,
        })
  })
}
