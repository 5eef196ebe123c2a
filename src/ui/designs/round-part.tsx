import { areaPerChild } from '#practice/area-per-child'
import type { DesignRound } from '#practice/design'
import { roundEffect } from '#practice/design-effects'
import type { DesignSheet } from '#practice/design-sheet'
import { kindOfRound } from '#practice/round-kind'
import { placesOfAll } from '#practice/round-places'
import { shapesText, shapeText } from '#practice/shape-text'
import { AreaDrawing } from '#ui/designs/area-drawing'
import { endingText, kindWords, squareText, turnsText } from '#ui/designs/design-words'
import { durationText } from '#ui/duration-text'
import { counted } from '#ui/plural'

type RoundPartProps = {
  readonly sheet: DesignSheet
  readonly round: DesignRound
  readonly number: number
  /** How many children it is reckoned for. */
  readonly turnout: number
}

/** One round: how it lies on the ground, and how it is played. */
export function RoundPart({ sheet, round, number, turnout }: RoundPartProps) {
  const { all, keep } = placesOfAll(round.stations)
  const area = areaPerChild(sheet, round)
  const facts: readonly (readonly [string, string])[] = [
    ['Turns', turnsText(round)],
    [
      'Places',
      `${counted(all, 'child', 'children')} at a time${keep > 0 ? `, ${keep} of them in goal` : ''}`,
    ],
    ['Space', spaceText(area, sheet)],
    ...(round.isFreeGame ? [] : [[`With ${turnout}`, sharesText(sheet, { round, turnout })] as const]),
    ...(keep > 0 ? [['Keepers', keepersText(round)] as const] : []),
    ...(round.choice ? [['Choice', choiceText(round.choice)] as const] : []),
    ...(round.endings ?? []).map((ending) => ['Ending', endingText(ending)] as const),
    ...(round.conditions ?? []).map((words) => ['Rule', words] as const),
  ]
  return (
    <li className="grid gap-x-8 gap-y-2 border-b border-rule py-4 md:grid-cols-[minmax(0,24rem)_1fr]">
      <AreaDrawing sheet={sheet} round={round} />
      <div>
        <h3 className="font-semibold">
          {number}. {round.title}
        </h3>
        <p className="text-soft">
          {shapesText(round.stations)}: {kindWords[kindOfRound(round)]}
        </p>
        <dl className="mt-2 grid grid-cols-[5rem_1fr] gap-x-3 gap-y-1">
          {facts.map(([name, text], index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: facts never move
            <div key={index} className="contents">
              <dt className="text-sm leading-6 text-soft">{facts[index - 1]?.[0] === name ? '' : name}</dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
      </div>
    </li>
  )
}

function spaceText(area: ReturnType<typeof areaPerChild>, { areaUnit }: DesignSheet): string {
  if (!area) return '–'
  const each = `${squareText(area.all, areaUnit)} for each child`
  return area.withoutKeepers === null || area.withoutKeepers === area.all
    ? each
    : `${each}, ${squareText(area.withoutKeepers, areaUnit)} without keepers`
}

function sharesText(
  sheet: DesignSheet,
  { round, turnout }: { readonly round: DesignRound; readonly turnout: number },
): string {
  const { placesTooMany, workSeconds, waitSeconds } = roundEffect(sheet, { round, children: turnout })
  if (placesTooMany > 0) return `${counted(placesTooMany, 'place')} too many: see below`
  if (waitSeconds === 0) return `everybody plays all ${durationText(workSeconds)}`
  return `each plays about ${durationText(workSeconds)} and waits ${durationText(waitSeconds)}`
}

function keepersText({ keepersStay, isFreeGame }: DesignRound): string {
  return keepersStay || isFreeGame ? 'stay for the whole round' : 'change with the turns'
}

function choiceText({ by, sizes }: NonNullable<DesignRound['choice']>): string {
  const each = sizes.map(({ shape, points }) => `${shapeText(shape)} for ${counted(points, 'point')}`)
  return `${by === 'attack' ? 'the attackers pick' : 'the coach picks'} ${each.join(', ')}`
}
