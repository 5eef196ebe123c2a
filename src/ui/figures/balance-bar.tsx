import { balanceGeometry } from '#ui/figures/balance-geometry'
import { judgedDifferenceText } from '#ui/figures/difference'
import type { ShownFigure } from '#ui/figures/shown-figure'

const width = 180
const height = 24
const middle = height / 2
const inset = 8

type BalanceBarProps = {
  /** What it is a bar of, e.g. "Attack". */
  readonly label: string
  readonly shown: ShownFigure
  /** What half the bar stands for, the same for all bars of the page. */
  readonly spanSeconds: number
  /** Drawn hatched: written as planned for the most part, which is even by construction. */
  readonly isMostlyAsPlanned?: boolean
}

/** A line with the even share in its middle, the "about even" band behind it, and the share as a dot on a stem: left is short, right is over. */
export function BalanceBar({ label, shown, spanSeconds, isMostlyAsPlanned = false }: BalanceBarProps) {
  const { centre, bandFrom, bandTo, dot, beyond } = balanceGeometry(shown.figure, {
    spanSeconds,
    width,
    inset,
  })
  const isOutside = shown.figure.status !== 'within'
  const ink = shown.figure.isConcern ? 'var(--color-accent)' : 'var(--color-ink)'
  const fill = isMostlyAsPlanned ? 'url(#hatch-ink)' : ink
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      preserveAspectRatio="xMinYMid"
      role="img"
      aria-label={`${label}: ${balanceInWords(shown, isMostlyAsPlanned)}`}
      className="block h-6 w-full min-w-32 max-w-72"
    >
      <rect x={bandFrom} y={4} width={bandTo - bandFrom} height={height - 8} fill="var(--color-band)" />
      <line x1={inset} x2={width - inset} y1={middle} y2={middle} stroke="var(--color-rule-strong)" />
      <line x1={centre} x2={centre} y1={1} y2={height - 1} stroke="var(--color-ink)" strokeWidth={1.5} />
      <rect
        x={Math.min(centre, dot)}
        y={middle - 2}
        width={Math.abs(dot - centre)}
        height={4}
        fill={fill}
        stroke={ink}
        strokeWidth={isMostlyAsPlanned ? 0.6 : 0}
      />
      {beyond ? (
        <path d={arrowAt({ x: dot, towards: beyond })} fill={ink} />
      ) : (
        <circle cx={dot} cy={middle} r={isOutside ? 6.5 : 5} fill={fill} stroke={ink} strokeWidth={1.5} />
      )}
    </svg>
  )
}

/** The bar read out. */
export function balanceInWords(shown: ShownFigure, isMostlyAsPlanned: boolean): string {
  const { minutes, dueMinutes, differenceMinutes, figure } = shown
  const judged = judgedDifferenceText(differenceMinutes, figure.status)
  const said = `had ${minutes} min, even share ${dueMinutes} min, ${judged}`
  return isMostlyAsPlanned ? `${said}; mostly as planned` : said
}

function arrowAt({ x, towards }: { readonly x: number; readonly towards: 'left' | 'right' }): string {
  const back = towards === 'left' ? x + 10 : x - 10
  return `M ${x} ${middle} L ${back} ${middle - 7} L ${back} ${middle + 7} Z`
}
