import type { SeededRandom } from './seeded-random'

type Spot = { readonly holder: object; readonly key: string | number }

/**
 * Changes one place of a JSON value by chance: a number moved, a text swapped for another, a key dropped or added, an
 * entry doubled, dropped or moved, or something of quite another kind put there. The value itself stays as it was.
 */
export function spoil<Json>(json: Json, random: SeededRandom): Json {
  const copy = structuredClone(json)
  const spots = spotsOf(copy)
  const { holder, key } = random.pick(spots)
  const texts = spots
    .map((spot) => Reflect.get(spot.holder, spot.key))
    .filter((value) => typeof value === 'string')
  Reflect.set(holder, key, spoilt(Reflect.get(holder, key), random, texts))
  return copy
}

function spoilt(value: unknown, random: SeededRandom, texts: readonly string[]): unknown {
  if (random.chance(0.05)) return random.pick([null, '', 0, -1, 1.5, true, [], {}, 1e300])
  if (typeof value === 'number')
    return value + random.pick([-1, 1, -1, 1, -10, 10, -60, 60, 0.5, -value, 1000])
  if (typeof value === 'boolean') return !value
  if (typeof value === 'string') return random.pick([`${value} `, random.pick(texts), random.pick(texts)])
  if (Array.isArray(value)) return respliced(value, random)
  if (typeof value === 'object' && value !== null) return withOtherKeys(value, random)
  return value
}

function respliced(list: readonly unknown[], random: SeededRandom): unknown[] {
  if (list.length === 0) return [random.pick([1, 'p01', {}])]
  const place = random.whole(0, list.length - 1)
  if (random.chance(0.4)) return list.toSpliced(place, 1)
  if (random.chance(0.5)) return list.toSpliced(random.whole(0, list.length), 0, structuredClone(list[place]))
  return random.shuffle(list)
}

function withOtherKeys(value: object, random: SeededRandom): object {
  const entries = Object.entries(value)
  if (entries.length > 0 && random.chance(0.5)) {
    return Object.fromEntries(entries.toSpliced(random.whole(0, entries.length - 1), 1))
  }
  const key = random.pick([
    'x',
    '__proto__',
    'theme',
    'title',
    'name',
    'keeps',
    'keep',
    'line',
    'lengthSeconds',
  ])
  return Object.fromEntries([...entries, [key, random.pick(['t1', 1, [], true])]])
}

function spotsOf(value: unknown): Spot[] {
  if (typeof value !== 'object' || value === null) return []
  const keys: (string | number)[] = Array.isArray(value) ? [...value.keys()] : Object.keys(value)
  return keys.flatMap((key) => [{ holder: value, key }, ...spotsOf(Reflect.get(value, key))])
}
