import type { RegisterLine } from '#squad/register'
import { entriesOfLines } from '#squad/register-segments'
import { segmentsText } from '#ui/entry/register-text'

type RegisterReadProps = {
  readonly register: readonly RegisterLine[]
  readonly players: readonly { readonly id: string; readonly name: string }[]
}

export function RegisterRead({ register, players }: RegisterReadProps) {
  const end = Math.max(0, ...register.map((line) => line.to))
  const entries = entriesOfLines(register, { end, playerIds: players.map(({ id }) => id) })
  return (
    <ul className="grid gap-x-8 sm:grid-cols-2 lg:grid-cols-3">
      {entries.map(({ playerId, segments }) => (
        <li key={playerId} className="border-b border-rule py-2">
          <span className="font-medium">{players.find(({ id }) => id === playerId)?.name}</span>
          <span className="text-soft"> · {segmentsText(segments)}</span>
        </li>
      ))}
    </ul>
  )
}
