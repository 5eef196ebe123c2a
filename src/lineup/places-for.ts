import { type FieldLine, fieldLines } from '#match/format/line-wish'
import type { LinePlaces } from '#match/format/match-format'
import { placesInAll } from '#match/format/places-in-all'

/** The same places for fewer players: the line with most gives one up, the foremost of several; goal goes last. */
export function placesFor(places: LinePlaces, players: number): LinePlaces {
  if (players >= placesInAll(places)) return places
  const largest = fieldLines.reduce<FieldLine>(
    (most, line) => (places[line] >= places[most] ? line : most),
    'back',
  )
  const fewer =
    places[largest] > 0
      ? { ...places, [largest]: places[largest] - 1 }
      : { ...places, keeper: Math.max(0, places.keeper - 1) }
  return placesInAll(fewer) === 0 ? fewer : placesFor(fewer, players)
}
