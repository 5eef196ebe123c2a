import { PlayerButtons, type PlayerButtonsProps } from '#ui/touchline/player-buttons'

/** Who is not on, in the order given. */
export function OffList({ title, ...players }: PlayerButtonsProps & { readonly title: string }) {
  if (players.playerIds.length === 0) return null
  return (
    <section aria-label={title} className="space-y-2">
      <h3 className="text-lg font-bold">{title}</h3>
      <PlayerButtons {...players} />
    </section>
  )
}
