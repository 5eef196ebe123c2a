import type { Seconds } from '#common/time'
import type { PlayerId } from '#squad/player'
import { clockWords } from '#ui/pitch/clock-words'

export type MinutesRow = {
  readonly playerId: PlayerId
  readonly name: string
  readonly playSeconds: Seconds
  readonly keepSeconds: Seconds
  readonly isStarter: boolean
  /** What the plan comes to at the end; null: nothing is planned. */
  readonly atEnd: Seconds | null
  /** What was promised and how it stands; null: nothing to say. */
  readonly promise: string | null
}

/** What everyone has had so far, and what is still to come. */
export function MinutesScreen({ rows }: { readonly rows: readonly MinutesRow[] }) {
  const isPlanned = rows.some(({ atEnd }) => atEnd !== null)
  const said = rows.filter(({ promise }) => promise !== null)
  return (
    <section aria-labelledby="minutes" className="space-y-4">
      <h2 id="minutes" className="text-2xl font-bold">
        Minutes
      </h2>
      {said.length > 0 ? (
        <ul className="space-y-1 border-2 border-ink p-2">
          {said.map(({ playerId, promise }) => (
            <li key={playerId}>{promise}</li>
          ))}
        </ul>
      ) : null}
      <table className="w-full border-collapse tabular-nums">
        <caption className="sr-only">Minutes of play so far, in goal, and at the end as planned</caption>
        <thead>
          <tr className="border-b-2 border-ink text-left text-base leading-tight">
            <th scope="col">Name</th>
            <th scope="col" className="px-1 text-right">
              So far
            </th>
            <th scope="col" className="px-1 text-right">
              In goal
            </th>
            {isPlanned ? (
              <th scope="col" className="px-1 text-right">
                At the end
              </th>
            ) : null}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.playerId} className="border-b border-ink">
              <th scope="row" className="py-1 pr-1 text-left font-bold break-words">
                {row.name}
                {row.isStarter ? <span className="block text-base font-medium">from the start</span> : null}
              </th>
              <td className="px-1 py-1 text-right font-bold">{clockWords(row.playSeconds)}</td>
              <td className="px-1 py-1 text-right">
                {row.keepSeconds > 0 ? clockWords(row.keepSeconds) : ''}
              </td>
              {isPlanned ? (
                <td className="px-1 py-1 text-right">{row.atEnd === null ? '' : clockWords(row.atEnd)}</td>
              ) : null}
            </tr>
          ))}
        </tbody>
      </table>
      <p className="text-base">Time of play, breaks left out.</p>
    </section>
  )
}
