import type { Interval } from '#common/time'
import type { Attendance } from '#fairness/account'
import type { RegisterLine } from '#squad/register'

/**
 * How a player was at a session, from its own register lines. Out for today outweighs everything; whoever was only ever
 * there without playing is not playing; late and left are judged by the time the ball was in play, `live`
 * (null: nothing was played, or nobody wrote it down), and late is said before left.
 */
export function attendanceOf(own: readonly RegisterLine[], live: Interval | null): Attendance {
  if (own.length === 0) return 'away'
  if (own.some((line) => line.state === 'out')) return 'out'
  if (own.every((line) => line.state === 'notPlaying')) return 'notPlaying'
  const came = Math.min(...own.map((line) => line.from))
  const went = Math.max(...own.map((line) => line.to))
  if (came > (live?.from ?? 0)) return 'late'
  return live && went < live.to ? 'left' : 'here'
}
