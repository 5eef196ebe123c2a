import { groupBy } from '#common/group-by'
import type { AttendanceMark } from '#exchange/attendance/attendance-entry'
import type { PlannedLine, RegisterTimes } from '#exchange/attendance/attendance-plan'
import type { PlayerMark, SessionGroup } from '#exchange/attendance/session-groups'
import type { RegisterState } from '#squad/register'

export type RegisterReading = {
  readonly lines: readonly PlannedLine[]
  readonly away: readonly number[]
  readonly doubled: readonly { readonly line: number; readonly sameAs: number }[]
  readonly problems: readonly string[]
}

/** The register lines that the marks of a session make. */
export function readRegister(session: SessionGroup, times: RegisterTimes): RegisterReading {
  const lines: PlannedLine[] = []
  const away: number[] = []
  const doubled: { line: number; sameAs: number }[] = []
  const problems: string[] = []
  for (const marks of groupBy(session.marks, ({ player }) => player).values()) {
    const kept = withoutDoubled(marks, doubled)
    const own = kept.flatMap((mark) => lineOf(mark, times))
    const [first] = kept
    if (!first) continue
    if (own.length === 0) away.push(first.player)
    const clash = clashOf(kept, own)
    if (clash) problems.push(clash)
    const wrong = own.find((line) => line.from >= line.to)
    if (wrong)
      problems.push(`Line ${first.line}: it begins at minute ${Math.floor(wrong.from / 60)}, after the end.`)
    lines.push(...own)
  }
  return { lines, away, doubled, problems }
}

function withoutDoubled(
  marks: readonly PlayerMark[],
  doubled: { line: number; sameAs: number }[],
): readonly PlayerMark[] {
  return marks.filter((mark, at) => {
    const earlier = marks.slice(0, at).find((other) => sameMark(other.mark, mark.mark))
    if (earlier) doubled.push({ line: mark.line, sameAs: earlier.line })
    return !earlier
  })
}

function sameMark(one: AttendanceMark, other: AttendanceMark): boolean {
  const fields = ['meaning', 'lateMinutes', 'fromSecond', 'toSecond'] as const
  return fields.every((field) => one[field] === other[field])
}

/** Several rows of a player in one session stand together only when each has its times and they do not overlap. */
function clashOf(marks: readonly PlayerMark[], own: readonly PlannedLine[]): string | null {
  const [first, second] = marks
  if (!first || !second) return null
  const where = `Lines ${first.line} and ${second.line} are the same player on the same day`
  const isTimed = marks.every(({ mark }) => mark.fromSecond !== null && mark.toSecond !== null)
  if (!isTimed) return `${where} with different marks. Take one out.`
  const sorted = [...own].sort((a, b) => a.from - b.from)
  const overlaps = sorted.some((line, at) => line.from < (sorted[at - 1]?.to ?? 0))
  return overlaps ? `${where} at overlapping times. Correct one of the two.` : null
}

function lineOf({ player, mark }: PlayerMark, times: RegisterTimes): readonly PlannedLine[] {
  if (mark.meaning === 'away') return []
  const state: RegisterState = mark.meaning === 'notPlaying' || mark.meaning === 'out' ? mark.meaning : 'here'
  const said = mark.lateMinutes === null ? null : mark.lateMinutes * 60
  const from = mark.meaning === 'late' ? (said ?? times.lateSeconds) : 0
  // Behind `left` stands the minute at which it went.
  const to = mark.meaning === 'left' ? (said ?? times.lengthSeconds - times.lateSeconds) : times.lengthSeconds
  return [{ player, state, from: mark.fromSecond ?? from, to: mark.toSecond ?? to }]
}
