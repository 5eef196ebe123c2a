'use client'

import { useState } from 'react'
import type { Seconds } from '#common/time'
import { withMarks } from '#lineup/draft/change-match-request'
import type { MatchPlanRequest } from '#lineup/match-plan'
import { sayClock } from '#lineup/say-clock'
import type { AskLineUp } from '#ui/line-up/line-up-types'
import { Field } from '#ui/page/field'

/** More times than this in one period are a mistake. */
const mostTimes = 20

/** When changes may be made inside a period: minutes, the same in each. */
export function ChangeTimesPart({
  request,
  onAsk,
}: {
  readonly request: MatchPlanRequest
  readonly onAsk: AskLineUp
}) {
  const [typed, setTyped] = useState<string | null>(null)
  const longest = Math.max(0, ...request.format.periodSeconds)
  const marks = request.marks.reduce<readonly Seconds[]>(
    (most, own) => (own.length > most.length ? own : most),
    [],
  )
  const read = typed === null ? null : readTimes(typed, longest)
  return (
    <div className="max-w-md">
      <Field
        name="changeTimes"
        label="Times for changes, in minutes of each period"
        hint="Apart by commas, such as 5, 10, 15 or 6:15, 12:30. Few times make a calm match."
        value={typed ?? marks.map(sayClockShort).join(', ')}
        problem={read && !read.ok ? read.message : undefined}
        inputMode="text"
        autoComplete="off"
        onChange={(event) => {
          setTyped(event.target.value)
          const times = readTimes(event.target.value, longest)
          if (times.ok) onAsk((now) => withMarks(now, times.seconds))
        }}
        onBlur={() => (read === null || read.ok) && setTyped(null)}
      />
    </div>
  )
}

function sayClockShort(seconds: Seconds): string {
  return seconds % 60 === 0 ? String(seconds / 60) : sayClock(seconds)
}

type Read =
  | { readonly ok: true; readonly seconds: readonly Seconds[] }
  | { readonly ok: false; readonly message: string }

/** Times as they are typed; what is none is said, with what would be right. */
export function readTimes(text: string, periodSeconds: Seconds): Read {
  const parts = text
    .split(/[,;]/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
  const seconds = parts.map((part) => {
    const match = /^(\d{1,3})(?::([0-5]\d))?$/.exec(part)
    return match ? Number(match[1]) * 60 + Number(match[2] ?? 0) : null
  })
  const wrong = parts.find((_, index) => {
    const own = seconds[index] ?? null
    return own === null || own <= 0 || own >= periodSeconds
  })
  if (wrong !== undefined)
    return {
      ok: false,
      message: `“${wrong}” is no time inside a period of ${sayClockShort(periodSeconds)} minutes: write minutes above 0 and below ${sayClockShort(periodSeconds)}.`,
    }
  if (parts.length > mostTimes)
    return { ok: false, message: `${parts.length} times are too many: ${mostTimes} or fewer would be right.` }
  return { ok: true, seconds: seconds.flatMap((own) => (own === null ? [] : [own])) }
}
