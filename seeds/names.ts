import type { Player, PlayerId } from '#squad/player'
import { demoId } from './ids'

/** Every name is invented; the surnames are made-up compounds so that they are nobody's. */
type Entry = {
  readonly key: string
  readonly name: string
  readonly keeps?: boolean
  readonly wantsToKeep?: boolean
}

const underTen = [
  { key: 'adaeze', name: 'Adaeze Fernhollow' },
  { key: 'bao', name: 'Bao Quillstone', keeps: true, wantsToKeep: true },
  { key: 'cosmo', name: 'Cosmo Brackenlight' },
  { key: 'dilnoza', name: 'Dilnoza Marlwick', keeps: true, wantsToKeep: true },
  { key: 'elif', name: 'Elif Copperdene' },
  { key: 'freya', name: 'Freya Ottermere' },
  { key: 'goran', name: 'Goran Pellbrook', keeps: true },
  { key: 'hana', name: 'Hana Saltmarrow' },
  { key: 'ines', name: 'Inês Larkspindle' },
  { key: 'jiho', name: 'Jiho Umberfield' },
  { key: 'kiri', name: 'Kiri Wrenfold', keeps: true },
  { key: 'luca', name: 'Luca Sandthistle' },
  { key: 'mina', name: "Mina O'Thornwillow" },
  { key: 'noor', name: 'Noor Applemoor' },
] as const satisfies readonly Entry[]

const underTwelve = [
  { key: 'amara', name: 'Amara Silverfen', keeps: true },
  { key: 'bogdan', name: 'Bogdan Reedwhistle' },
  { key: 'chiara', name: 'Chiara Mossbridle' },
  { key: 'dev', name: 'Dev Larchgate' },
  { key: 'eilidh', name: 'Eilidh Stormpetal' },
  { key: 'farid', name: 'Farid Cinderlow' },
  { key: 'gwen', name: 'Gwen Hollowbeck' },
  { key: 'hugo', name: 'Hugo Amberstile' },
  { key: 'isla', name: 'Isla Tarnfeather' },
  { key: 'jamal', name: 'Jamal Rookmeadow' },
  { key: 'katya', name: 'Katya Plumwater' },
  { key: 'leandro', name: 'Leandro Finchcastle' },
  { key: 'meilin', name: 'Meilin Hazelspoon' },
  { key: 'noorB', name: 'Noor Bellhazel' },
  { key: 'oskar', name: 'Oskar Wildersea' },
  { key: 'priya', name: 'Priya Quartzley' },
] as const satisfies readonly Entry[]

/** Came to two practices to see what it is like; belongs to no squad. */
const visitors = [{ key: 'pia', name: 'Pia Cloudberry' }] as const satisfies readonly Entry[]

export type PlayerKey =
  | (typeof underTen)[number]['key']
  | (typeof underTwelve)[number]['key']
  | (typeof visitors)[number]['key']

export function playerId(key: PlayerKey): PlayerId {
  return demoId(`player/${key}`)
}

export const underTenKeys: readonly PlayerKey[] = underTen.map((entry) => entry.key)
export const underTwelveKeys: readonly PlayerKey[] = underTwelve.map((entry) => entry.key)

export const demoPlayers: readonly Player[] = [...underTen, ...underTwelve, ...visitors].map(
  (entry: Entry) => ({
    id: demoId(`player/${entry.key}`),
    name: entry.name,
    keeps: entry.keeps ?? false,
    wantsToKeep: entry.wantsToKeep ?? false,
  }),
)

/** Who may keep goal. */
export const ableIds: ReadonlySet<PlayerId> = new Set(
  demoPlayers.filter((player) => player.keeps).map((player) => player.id),
)

const keys = new Map([...underTen, ...underTwelve, ...visitors].map(({ key }) => [playerId(key), key]))

/** The short key of a player of the demo. */
export function keyOfPlayer(id: PlayerId): string {
  return keys.get(id) ?? id
}
