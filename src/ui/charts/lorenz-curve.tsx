import { ChartTable } from '#ui/charts/chart-table'

/** A point of the curve: this part of the players had this part of what was due. Both 0-1. */
export type LorenzPoint = { readonly players: number; readonly share: number }

const size = 220
const edge = 30

const percent = (part: number) => `${Math.round(part * 100)} %`

/** How far sharing is from even: the more the curve hangs under the straight line, the less even. */
export function LorenzCurve({
  caption,
  points,
}: {
  readonly caption: string
  readonly points: readonly LorenzPoint[]
}) {
  const x = (part: number) => edge + part * (size - edge - 6)
  const y = (part: number) => size - edge - part * (size - edge - 6)
  const at = points.map(({ players, share }) => `${x(players)},${y(share)}`)
  return (
    <figure>
      <figcaption className="max-w-64 text-sm text-soft">{caption}</figcaption>
      <svg viewBox={`0 0 ${size} ${size}`} className="block w-full max-w-64" role="img" aria-label={caption}>
        <polygon points={at.join(' ')} fill="var(--color-band)" />
        <line x1={x(0)} y1={y(0)} x2={x(1)} y2={y(1)} stroke="var(--color-ink)" />
        <polyline points={at.join(' ')} fill="none" stroke="var(--color-accent)" strokeWidth={2} />
        <path
          d={`M ${x(0)} ${y(1)} L ${x(0)} ${y(0)} L ${x(1)} ${y(0)}`}
          fill="none"
          stroke="var(--color-rule-strong)"
        />
        <text x={x(1)} y={size - 10} textAnchor="end" fontSize="11" fill="var(--color-soft)">
          players →
        </text>
        <text x={x(0) - 4} y={y(1) + 8} textAnchor="end" fontSize="11" fill="var(--color-soft)">
          1
        </text>
      </svg>
      <ChartTable
        caption={caption}
        head={[
          { key: 'players', label: 'Of the players' },
          { key: 'share', label: 'had, of all that was had', isFigure: true },
        ]}
      >
        {points.map(({ players, share }) => (
          <tr key={`${players} ${share}`}>
            <th scope="row">{percent(players)}</th>
            <td className="figure">{percent(share)}</td>
          </tr>
        ))}
      </ChartTable>
    </figure>
  )
}
