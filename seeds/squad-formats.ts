import { readPublishedFormats } from '#exchange/published-formats-json'
import type { ClubFormat } from '#match/format/club-format'
import { placesInAll } from '#match/format/places-in-all'
import { textOfShape } from '#match/format/shape-text'
import type { SquadId } from '#squad/squad'
import { demoSquads } from './club'
import { formats } from './formats'
import { demoId } from './ids'
import file from './published/match-formats.json'

type DemoFormat = Omit<ClubFormat, 'isPutAway'> & { readonly squadId: SquadId }

/** How each squad plays: one of those to begin with, by the lines and the lengths of the season that is written. */
export const demoFormats: readonly DemoFormat[] = [
  formatOf('underTen', 'ours-7-halves'),
  formatOf('underTwelve', 'ours-9-halves'),
]

function formatOf(squad: keyof typeof formats, key: string): DemoFormat {
  const published = readPublishedFormats(file).formats.find((one) => one.key === key)
  if (!published) throw new Error(`No format ${key} to begin with.`)
  const { lines, periods } = formats[squad]
  const [first, second] = periods
  const own = { name: textOfShape({ name: '', places: lines }), places: lines }
  const others = published.format.shapes.filter(({ name }) => name !== own.name)
  return {
    id: demoId(`format/${squad}`),
    takenFrom: key,
    squadId: demoSquads[squad].id,
    format: {
      ...published.format,
      aSide: placesInAll(lines),
      periodSeconds: periods.map(({ start, end }) => end - start),
      breakSeconds: second.start - first.end,
      shapes: [own, ...others],
    },
  }
}
