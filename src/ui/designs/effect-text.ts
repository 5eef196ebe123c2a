import type { AdaptationEffect, RoundEffect } from '#practice/design-effects'
import { durationText } from '#ui/duration-text'
import { counted } from '#ui/plural'

/** What changes in some rounds alike, in short pieces. */
export type EffectLines = { readonly rounds: readonly string[]; readonly pieces: readonly string[] }

/** The effects of an adaptation, rounds that change alike together. */
export function effectLines(effects: readonly AdaptationEffect[]): readonly EffectLines[] {
  const groups = new Map<string, { rounds: string[]; pieces: readonly string[] }>()
  for (const effect of effects) {
    const pieces = effectPieces(effect)
    const key = pieces.join('|')
    const group = groups.get(key) ?? { rounds: [], pieces }
    group.rounds.push(effect.title)
    groups.set(key, group)
  }
  return [...groups.values()]
}

function effectPieces({ before, after, conditions }: AdaptationEffect): readonly string[] {
  const measured = measures.flatMap(({ text, say }) => {
    const [was, is] = [text(before), text(after)]
    return was === is ? [] : [say(was, is)]
  })
  const tooMany =
    after.placesTooMany > before.placesTooMany
      ? [`${counted(after.placesTooMany, 'place')} more than children`]
      : []
  return [...measured, ...tooMany, ...conditions.map((words) => `“${words}”`)]
}

type Measure = {
  readonly text: (effect: RoundEffect) => string
  readonly say: (was: string, is: string) => string
}

const measures: readonly Measure[] = [
  {
    text: ({ areaPerChild }) => (areaPerChild === null ? '–' : String(Math.round(areaPerChild))),
    say: (was, is) => `${was} → ${is} m² for each child`,
  },
  { text: ({ places }) => String(places), say: (was, is) => `${was} → ${is} places` },
  {
    text: workToWait,
    say: (was, is) => `playing to waiting ${was} → ${is}`,
  },
  {
    text: ({ wholeSeconds }) => durationText(wholeSeconds),
    say: (was, is) => `${was} → ${is} altogether`,
  },
  {
    text: ({ mostPoints }) => String(mostPoints),
    say: (was, is) => `${was} → ${is} points at most`,
  },
]

/** "3 : 1" of a child's time; "all the time" when nobody waits. */
export function workToWait({ workSeconds, waitSeconds }: RoundEffect): string {
  if (waitSeconds === 0) return 'all the time'
  const ratio = workSeconds / waitSeconds
  return ratio >= 1 ? `${short(ratio)} : 1` : `1 : ${short(1 / ratio)}`
}

function short(ratio: number): string {
  return String(Math.round(ratio * 10) / 10)
}
