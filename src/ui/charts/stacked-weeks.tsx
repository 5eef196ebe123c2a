import { type Role, roles } from '#exposure/column'
import { ChartTable } from '#ui/charts/chart-table'
import { roundMarks } from '#ui/charts/scale'
import { wholeMinutes } from '#ui/figures/minutes'
import { RoleMark } from '#ui/figures/role-mark'
import { roleFill } from '#ui/figures/role-patterns'
import { roleWord } from '#ui/words'

/** One week of a player's season. */
export type WeekOfRoles = {
  readonly key: string
  /** Short, under the bar: "3 Mar". */
  readonly label: string
  readonly seconds: Readonly<Record<Role, number>>
  /** Drawn hatched when all of it was written as planned. */
  readonly isAsPlanned: boolean
  /** Sessions held that week and not written down: shown as such, never as nothing. */
  readonly notWritten: number
  /** What is to be said of the week beside its figures, e.g. "away once". */
  readonly remark: string
}

type StackedWeeksProps = {
  readonly caption: string
  readonly weeks: readonly WeekOfRoles[]
  readonly kind: 'practice' | 'match'
}

const height = 190
const floor = 160
const left = 40
const step = 26
const barWidth = 18

export function StackedWeeks({ caption, weeks, kind }: StackedWeeksProps) {
  const totals = weeks.map((week) => roles.reduce((sum, role) => sum + week.seconds[role], 0))
  const marks = roundMarks(Math.max(1, ...totals) / 60)
  const top = marks.at(-1) ?? 1
  const width = left + Math.max(6, weeks.length) * step + 4
  const y = (minutes: number) => floor - (minutes / top) * (floor - 10)
  return (
    <figure>
      <figcaption className="mb-2 flex flex-wrap items-center gap-x-4 gap-y-1 text-sm">
        {roles.map((role) => (
          <RoleMark key={role} role={role} kind={kind} />
        ))}
        <span className="text-soft">hatched: as planned · dashed: not written down</span>
      </figcaption>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
      <section className="relative overflow-x-auto" tabIndex={0} aria-label={caption}>
        <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} role="img" aria-label={caption}>
          {marks.map((minutes) => (
            <g key={minutes}>
              <line x1={left} x2={width} y1={y(minutes)} y2={y(minutes)} stroke="var(--color-rule)" />
              <text x={left - 6} y={y(minutes) + 4} textAnchor="end" fontSize="11" fill="var(--color-soft)">
                {minutes}
              </text>
            </g>
          ))}
          {weeks.map((week, index) => (
            <WeekBar
              key={week.key}
              week={week}
              x={left + index * step + 4}
              y={y}
              hasLabel={index % 3 === 0}
            />
          ))}
        </svg>
      </section>
      <ChartTable
        caption={caption}
        head={[
          { key: 'week', label: 'Week of' },
          ...roles.map((role) => ({ key: role, label: `${roleWord(role, kind)}, min`, isFigure: true })),
          { key: 'remark', label: 'Remarks' },
        ]}
      >
        {weeks.map((week) => (
          <tr key={week.key}>
            <th scope="row">{week.label}</th>
            {roles.map((role) => (
              <td key={role} className="figure">
                {wholeMinutes(week.seconds[role])}
              </td>
            ))}
            <td>{remarksOf(week)}</td>
          </tr>
        ))}
      </ChartTable>
    </figure>
  )
}

type WeekBarProps = {
  readonly week: WeekOfRoles
  readonly x: number
  readonly y: (minutes: number) => number
  readonly hasLabel: boolean
}

function WeekBar({ week, x, y, hasLabel }: WeekBarProps) {
  let below = 0
  const parts = roles.map((role) => {
    const from = below
    below += week.seconds[role] / 60
    return { role, from, to: below }
  })
  return (
    <g>
      <title>{`${week.label}: ${remarksOf(week) || 'written down'}`}</title>
      {parts
        .filter(({ from, to }) => to > from)
        .map(({ role, from, to }) => (
          <rect
            key={role}
            x={x}
            y={y(to)}
            width={barWidth}
            height={y(from) - y(to)}
            fill={roleFill(role)}
            stroke={`var(--color-${role})`}
            strokeWidth={0.75}
          />
        ))}
      {week.isAsPlanned && below > 0 ? (
        <rect x={x} y={y(below)} width={barWidth} height={floor - y(below)} fill="url(#hatch-over)" />
      ) : null}
      {week.notWritten > 0 ? (
        <rect
          x={x}
          y={y(below) - 22}
          width={barWidth}
          height={20}
          fill="none"
          stroke="var(--color-soft)"
          strokeDasharray="3 2"
        />
      ) : null}
      {hasLabel ? (
        <text x={x + barWidth / 2} y={floor + 18} textAnchor="middle" fontSize="11" fill="var(--color-soft)">
          {week.label}
        </text>
      ) : null}
    </g>
  )
}

function remarksOf(week: WeekOfRoles): string {
  const parts = [
    week.isAsPlanned ? 'as planned' : '',
    week.notWritten > 0 ? `${week.notWritten} not written down` : '',
    week.remark,
  ]
  return parts.filter(Boolean).join(', ')
}
