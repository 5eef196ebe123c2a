import type { LineMark } from '#match/line-mark'
import { lineOf } from '#match/line-mark'
import { type Mark, passedRoleOf, placeOf } from '#practice/grid-mark'
import { words } from '#ui/words'

/** How a mark is shown in a cell: its letters, its words for who cannot see it, and its look. Letter, line and colour differ together. */
export type MarkLook = { readonly text: string; readonly word: string; readonly look: string }

const looks = {
  attack: 'border-b-[5px] border-b-attack border-solid font-bold',
  defend: 'border-b-[6px] border-b-defend [border-bottom-style:double] font-bold',
  keep: 'border-b-[5px] border-b-keep [border-bottom-style:dotted] font-bold',
  rest: 'border-b-2 border-b-rest text-soft',
  none: 'text-soft',
} as const

export function practiceMarkLook(mark: Mark): MarkLook {
  const passed = passedRoleOf(mark)
  if (passed) {
    return {
      text: `p${words.roleLetter[passed]}`,
      word: `${words.passed} (${words.doing[passed]})`,
      look: `${looks.rest} italic`,
    }
  }
  const place = placeOf(mark)
  if (!place)
    return mark === 'W'
      ? { text: 'W', word: words.doing.rest, look: looks.rest }
      : { text: '', word: 'nothing marked', look: looks.none }
  const area = place.area === null ? '' : `, ${words.area.one} ${place.area}`
  return { text: mark, word: `${words.doing[place.role]}${area}`, look: looks[place.role] }
}

const lineLook = {
  keeper: looks.keep,
  back: looks.defend,
  middle: 'border-b-[5px] border-b-ink border-solid font-bold',
  forward: looks.attack,
}

export function matchMarkLook(mark: LineMark): MarkLook {
  const line = lineOf(mark)
  if (line) return { text: mark, word: words.line[line], look: lineLook[line] }
  return mark === 'O'
    ? { text: 'O', word: 'off', look: looks.rest }
    : { text: '', word: 'nothing marked', look: looks.none }
}
