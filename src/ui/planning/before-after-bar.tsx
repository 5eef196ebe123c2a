import type { Seconds } from '#common/time'
import { type Balance, balanceGeometry } from '#ui/figures/balance-geometry'

const width = 180
const height = 24
const middle = height / 2
const inset = 8

type BeforeAfterBarProps = {
  /** Read out: the role and what becomes of it. */
  readonly label: string
  readonly before: Balance
  readonly after: Balance
  /** What half the bar stands for, the same for all bars of the page. */
  readonly spanSeconds: Seconds
}

/** The balance bar twice in one: a ring where the player stands before the practice, the dot where it stands after. */
export function BeforeAfterBar({ label, before, after, spanSeconds }: BeforeAfterBarProps) {
  const at = { spanSeconds, width, inset }
  const was = balanceGeometry(before, at)
  const is = balanceGeometry(after, at)
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      preserveAspectRatio="xMinYMid"
      role="img"
      aria-label={label}
      className="block h-6 w-full min-w-28 max-w-64"
    >
      <rect
        x={is.bandFrom}
        y={4}
        width={is.bandTo - is.bandFrom}
        height={height - 8}
        fill="var(--color-band)"
      />
      <line x1={inset} x2={width - inset} y1={middle} y2={middle} stroke="var(--color-rule-strong)" />
      <line
        x1={is.centre}
        x2={is.centre}
        y1={1}
        y2={height - 1}
        stroke="var(--color-ink)"
        strokeWidth={1.5}
      />
      <line x1={was.dot} x2={is.dot} y1={middle} y2={middle} stroke="var(--color-ink)" strokeWidth={3} />
      <circle
        cx={was.dot}
        cy={middle}
        r={5}
        fill="var(--color-leaf)"
        stroke="var(--color-ink)"
        strokeWidth={1.5}
      />
      <circle cx={is.dot} cy={middle} r={5} fill="var(--color-ink)" />
    </svg>
  )
}
