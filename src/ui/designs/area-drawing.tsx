import { type LaidArea, layAreas } from '#practice/area-layout'
import type { DesignRound } from '#practice/design'
import type { DesignSheet } from '#practice/design-sheet'
import { shapesText } from '#practice/shape-text'
import type { SeatRole } from '#practice/turn'
import { lengthText, unitWords } from '#ui/designs/design-words'
import { words } from '#ui/words'

type AreaDrawingProps = {
  readonly sheet: Pick<DesignSheet, 'areaLengthM' | 'areaWidthM' | 'areaUnit' | 'isMirrored'>
  readonly round: DesignRound
}

/** The areas of a round to scale, with a letter for each place. Goals and letters are not to scale. */
export function AreaDrawing({ sheet, round }: AreaDrawingProps) {
  const { areaLengthM: length, areaWidthM: width, areaUnit: unit } = sheet
  // Everything but the ground is drawn in parts of its longer side, so that it looks the same on any pitch.
  const part = Math.max(length, width) / 100
  const areas = layAreas(sheet, round.stations)
  const name = `${round.title}: ${shapesText(round.stations)} on ${lengthText(length, unit)} by ${lengthText(width, unit)} ${unitWords[unit]}`
  return (
    <svg
      role="img"
      aria-label={name}
      viewBox={`${-9 * part} ${-2 * part} ${length + 12 * part} ${width + 11 * part}`}
      className="max-h-72 w-full max-w-md"
    >
      <rect width={length} height={width} fill="var(--color-paper)" />
      {areas.map((area) => (
        <AreaGround key={area.station} area={area} part={part} />
      ))}
      {areas.flatMap((area) =>
        area.places.map((place, index) => (
          <PlaceMark
            // biome-ignore lint/suspicious/noArrayIndexKey: places of an area have no other name
            key={`${area.station} ${index}`}
            {...place}
            part={part}
          />
        )),
      )}
      <g fontSize={4 * part} fill="var(--color-soft)" textAnchor="middle">
        <text x={length / 2} y={width + 6.5 * part}>
          {lengthText(length, unit)} {unitWords[unit]}
        </text>
        <text transform={`translate(${-4 * part} ${width / 2}) rotate(-90)`}>
          {lengthText(width, unit)} {unitWords[unit]}
        </text>
      </g>
    </svg>
  )
}

function AreaGround({ area, part }: { readonly area: LaidArea; readonly part: number }) {
  const { x, y, lengthM, widthM, hasGoal, hasGoalBehind } = area
  return (
    <g fill="none">
      <rect
        x={x}
        y={y}
        width={lengthM}
        height={widthM}
        stroke="var(--color-rule-strong)"
        strokeWidth={0.5 * part}
      />
      <DirectionArrow area={area} part={part} />
      {hasGoal ? <GoalMark area={area} part={part} at="end" /> : <LineToReach area={area} part={part} />}
      {hasGoalBehind ? <GoalMark area={area} part={part} at="behind" /> : null}
    </g>
  )
}

type GoalMarkProps = {
  readonly area: LaidArea
  readonly part: number
  readonly at: 'end' | 'behind'
}

function GoalMark({ area, part, at }: GoalMarkProps) {
  const { x, y, lengthM, widthM, to } = area
  const half = Math.min(0.25 * (to === 'up' ? lengthM : widthM), 6 * part)
  // Inside the line: the goals of two halves would lie upon each other.
  const inset = 0.7 * part
  const isFirst = (to === 'right') !== (at === 'end')
  const line =
    to === 'up'
      ? {
          x1: x + lengthM / 2 - half,
          x2: x + lengthM / 2 + half,
          ...sameY(at === 'end' ? y + inset : y + widthM - inset),
        }
      : {
          y1: y + widthM / 2 - half,
          y2: y + widthM / 2 + half,
          ...sameX(isFirst ? x + inset : x + lengthM - inset),
        }
  return <line {...line} stroke="var(--color-ink)" strokeWidth={1.6 * part} />
}

const sameX = (x: number) => ({ x1: x, x2: x })
const sameY = (y: number) => ({ y1: y, y2: y })

function LineToReach({ area, part }: { readonly area: LaidArea; readonly part: number }) {
  const { x, y, lengthM, widthM, to } = area
  const inset = 1.2 * part
  const line =
    to === 'up'
      ? { x1: x + inset, y1: y + inset, x2: x + lengthM - inset, y2: y + inset }
      : to === 'right'
        ? { x1: x + lengthM - inset, y1: y + inset, x2: x + lengthM - inset, y2: y + widthM - inset }
        : { x1: x + inset, y1: y + inset, x2: x + inset, y2: y + widthM - inset }
  return (
    <line
      {...line}
      stroke="var(--color-ink)"
      strokeWidth={0.8 * part}
      strokeDasharray={`${2 * part} ${1.2 * part}`}
    />
  )
}

/** Which way the attackers play. */
function DirectionArrow({ area, part }: { readonly area: LaidArea; readonly part: number }) {
  const { x, y, lengthM, widthM, to } = area
  const turn = { right: 0, left: 180, up: -90 }[to]
  const size = 3.2 * part
  return (
    <path
      transform={`translate(${x + lengthM / 2} ${y + widthM / 2}) rotate(${turn})`}
      d={`M ${-size} 0 H ${size} M ${size / 3} ${-size / 2} L ${size} 0 L ${size / 3} ${size / 2}`}
      stroke="var(--color-rule-strong)"
      strokeWidth={0.6 * part}
    />
  )
}

type PlaceMarkProps = {
  readonly x: number
  readonly y: number
  readonly role: SeatRole
  readonly part: number
}

/** Attack a round mark, defence a square one, goal a dotted one; each with its letter. */
function PlaceMark({ x, y, role, part }: PlaceMarkProps) {
  const r = 3.1 * part
  const look = { fill: 'var(--color-leaf)', stroke: `var(--color-${role})`, strokeWidth: 0.9 * part }
  return (
    <g>
      {role === 'defend' ? (
        <rect x={x - r} y={y - r} width={2 * r} height={2 * r} {...look} />
      ) : (
        <circle
          cx={x}
          cy={y}
          r={r}
          {...look}
          strokeDasharray={role === 'keep' ? `${0.9 * part} ${0.7 * part}` : undefined}
        />
      )}
      <text
        x={x}
        y={y + 1.5 * part}
        fontSize={4.2 * part}
        fontWeight="600"
        textAnchor="middle"
        fill="var(--color-ink)"
      >
        {words.roleLetter[role]}
      </text>
    </g>
  )
}
