import { type LineWishes, noWishes } from '#match/format/line-wish'
import type { PlayerId } from '#squad/player'
import { type PlayerKey, playerId } from './names'

/** What a few of the players and their coaches have said of lines in matches. */
export const demoLineWishes: readonly { readonly playerId: PlayerId; readonly wishes: LineWishes }[] = [
  said('adaeze', { forward: 'likes', middle: 'learning' }),
  said('bao', { back: 'likes' }),
  said('elif', { forward: 'learning' }),
  said('hana', { forward: 'notYet', back: 'likes' }),
  said('jiho', { middle: 'likes', back: 'learning' }),
  said('noor', { middle: 'learning' }),
  said('dev', { back: 'likes' }),
  said('gwen', { forward: 'likes', back: 'learning' }),
  said('isla', { middle: 'likes' }),
]

function said(key: PlayerKey, wishes: Partial<LineWishes>) {
  return { playerId: playerId(key), wishes: { ...noWishes, ...wishes } }
}
