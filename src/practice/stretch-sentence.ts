import { countWord } from '#common/count-word'
import type { AreaShape } from '#practice/design'
import { kindOfShape } from '#practice/round-kind'
import type { AreaProposal } from '#practice/stretch-areas'

const kindWords = {
  outnumbering: 'more of us',
  level: 'even',
  outnumbered: 'fewer of us',
  alone: 'nobody against us',
}

/** What a proposal changes, as a coach would say it to another. */
export function sayStretch(before: readonly AreaShape[], proposal: AreaProposal): string {
  return [...sayAreas(before, proposal), ...sayEach(before, proposal), sayWaiting(proposal.waiting)].join(' ')
}

function sayAreas(before: readonly AreaShape[], { stations, from }: AreaProposal): readonly string[] {
  if (stations.length > before.length) {
    const own = stations[from.indexOf(null)]
    const areas = `${countWord(stations.length)} areas instead of ${countWord(before.length)}`
    return [`${capital(areas)}${own ? `, the new of ${sayShape(own)}` : ''}.`]
  }
  if (stations.length === before.length) return []
  const left = `${countWord(stations.length)} area${stations.length === 1 ? '' : 's'} instead of ${countWord(before.length)}`
  return [`${capital(left)}.`]
}

/** Changed areas by what becomes of them: those that change alike are said together. */
function sayEach(before: readonly AreaShape[], { stations, from }: AreaProposal): readonly string[] {
  const groups = new Map<string, { readonly areas: number[]; readonly words: string }>()
  stations.forEach((after, index) => {
    const own = before[from[index] ?? -1]
    if (!own || JSON.stringify(own) === JSON.stringify(after)) return
    const words = sayChange(own, after)
    const group = groups.get(words) ?? { areas: [], words }
    group.areas.push(index + 1)
    groups.set(words, group)
  })
  return [...groups.values()].map(({ areas, words }) => `${sayWhich(areas, stations.length)} ${words}.`)
}

function sayWhich(areas: readonly number[], all: number): string {
  if (all === 1) return 'Play'
  if (areas.length === all) return all === 2 ? 'Both areas:' : 'Every area:'
  return `Area${areas.length === 1 ? '' : 's'} ${areas.join(' and ')}:`
}

function sayChange(before: AreaShape, after: AreaShape): string {
  const kind = kindOfShape(after)
  const sides =
    before.attack === after.attack && before.defend === after.defend
      ? saySides(after)
      : `${saySides(after)} instead of ${saySides(before)}`
  const keeper =
    before.keep === after.keep
      ? ''
      : after.keep === 0
        ? ', without a goalkeeper'
        : `, ${countWord(after.keep)} in goal instead of ${countWord(before.keep)}`
  const other = kind === kindOfShape(before) ? '' : ` (${kindWords[kind]} now)`
  return `${sides}${keeper}${other}`
}

function saySides({ attack, defend }: AreaShape): string {
  if (attack === 0 || defend === 0) return `${attack + defend} alone`
  return `${attack} against ${defend}`
}

function sayShape(shape: AreaShape): string {
  return `${saySides(shape)}${shape.keep > 0 ? ' and a goalkeeper' : ''}`
}

function sayWaiting(waiting: number): string {
  return waiting === 0
    ? 'Nobody waits.'
    : waiting === 1
      ? 'One waits.'
      : `${capital(countWord(waiting))} wait.`
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1)
}
