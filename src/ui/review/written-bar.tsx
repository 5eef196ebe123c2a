import type { WrittenCount } from '#fairness/book/written-count'

type WrittenBarProps = { readonly count: WrittenCount }

const width = 240
const height = 14

/** How much is written down: filled, as planned hatched (even by construction), not written only framed. */
export function WrittenBar({ count }: WrittenBarProps) {
  const { held, written, asPlanned } = count
  const x = (sessions: number) => (held === 0 ? 0 : (sessions / held) * (width - 2))
  return (
    <div className="flex flex-wrap items-center gap-x-4">
      <svg viewBox={`0 0 ${width} ${height}`} className="block h-3.5 w-60 max-w-full" aria-hidden="true">
        <rect x={1} y={1} width={x(written - asPlanned)} height={height - 2} fill="var(--color-ink)" />
        <rect
          x={1 + x(written - asPlanned)}
          y={1}
          width={x(asPlanned)}
          height={height - 2}
          fill="url(#hatch-ink)"
        />
        <rect
          x={1}
          y={1}
          width={width - 2}
          height={height - 2}
          fill="none"
          stroke="var(--color-rule-strong)"
          strokeDasharray={written < held ? '4 2' : undefined}
        />
      </svg>
      <span className="text-sm">
        {writtenText(count)}
        {asPlanned > 0 ? ' (hatched)' : ''}
      </span>
    </div>
  )
}

/** "22 of 26 written down, 5 of them as planned". */
export function writtenText({ held, written, asPlanned }: WrittenCount): string {
  if (held === 0) return 'none held'
  const planned = asPlanned > 0 ? `, ${asPlanned} of them as planned` : ''
  return `${written} of ${held} written down${planned}`
}
