import { sessionMinute } from '#common/session-minute'
import type { RegisterSegment } from '#squad/register-segments'
import { words } from '#ui/words'

/** A player's register in a few words: "here", "from minute 12", "here, out for today from minute 30". */
export function segmentsText(segments: readonly RegisterSegment[]): string {
  const [first] = segments
  if (!first) return words.attendance.away
  const parts = segments.map((segment, index) => {
    const from = segment.from === 0 ? '' : ` from minute ${sessionMinute(segment.from)}`
    const after = segments[index + 1]
    const until =
      segment.to === null || after?.from === segment.to ? '' : ` to minute ${sessionMinute(segment.to)}`
    // "here, not playing from minute 30", not "here, here, not playing".
    const word = words.register[segment.state]
    const said = index > 0 ? word.replace(/^here, /, '') : word
    return `${said}${from}${until}`
  })
  return parts.join(', ')
}
