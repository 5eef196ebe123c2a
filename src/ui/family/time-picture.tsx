import type { FamilyDoing, TimeDone } from '#family/family-page'
import { aboutText, doingLabel } from '#ui/family/family-words'

const width = 600
const height = 44

/** One colour, told apart by pattern: nothing here is good or bad. */
const fillOf: Readonly<Record<FamilyDoing, string>> = {
  attack: 'var(--color-defend)',
  defend: 'url(#family-defend)',
  keep: 'url(#family-keep)',
  played: 'var(--color-defend)',
  waiting: 'url(#family-waiting)',
}

/** Patterns of the picture; once on a page. */
export function TimePatterns() {
  return (
    <svg width="0" height="0" aria-hidden="true" className="absolute">
      <defs>
        <pattern id="family-defend" width="8" height="8" patternUnits="userSpaceOnUse">
          <rect width="8" height="8" fill="#dbe8f1" />
          <rect width="4" height="8" fill="#5b9bc4" />
        </pattern>
        <pattern id="family-keep" width="9" height="9" patternUnits="userSpaceOnUse">
          <rect width="9" height="9" fill="#dbe8f1" />
          <circle cx="4.5" cy="4.5" r="2.6" fill="#1f4e6b" />
        </pattern>
        <pattern id="family-waiting" width="8" height="8" patternUnits="userSpaceOnUse">
          <rect width="8" height="8" fill="#f3f5f7" />
          <rect width="8" height="1.5" fill="#a9b6c0" />
        </pattern>
      </defs>
    </svg>
  )
}

/** The time of the practices as one bar, each part with its name and minutes under it. What was not written is not in it. */
export function TimePicture({ did }: { readonly did: readonly TimeDone[] }) {
  // Under five minutes is drawn as a sliver, so that it is seen.
  const parts = did.map(({ doing, minutes }) => ({ doing, minutes, drawn: Math.max(minutes, 2.5) }))
  const total = parts.reduce((sum, { drawn }) => sum + drawn, 0)
  const text = parts
    .map(({ doing, minutes }) => `${doingLabel.practice[doing]}: ${aboutText(minutes)}`)
    .join(', ')
  let from = 0
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      className="block h-9 w-full max-w-2xl"
      preserveAspectRatio="none"
      role="img"
      aria-label={`Time in practices. ${text}.`}
    >
      {parts.map(({ doing, drawn }) => {
        const x = from
        from += (drawn / total) * width
        return (
          <rect
            key={doing}
            x={x + 1}
            y="1"
            width={Math.max(1, from - x - 2)}
            height={height - 2}
            fill={fillOf[doing]}
            stroke="#3c6f92"
            vectorEffect="non-scaling-stroke"
          />
        )
      })}
    </svg>
  )
}

/** The same pattern beside the word. */
export function TimeSwatch({ doing }: { readonly doing: FamilyDoing }) {
  return (
    <svg viewBox="0 0 24 24" className="size-5 shrink-0" aria-hidden="true">
      <rect x="1" y="1" width="22" height="22" fill={fillOf[doing]} stroke="#3c6f92" />
    </svg>
  )
}
