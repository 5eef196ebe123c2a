import type { ToldFlag } from '#fairness/book/told-flag'
import { FlagLine } from '#ui/flags/flag-line'
import { SectionTitle } from '#ui/page/section-title'

type PlayerFlagsProps = {
  readonly flags: readonly {
    readonly id: string
    readonly told: ToldFlag
    readonly status: 'open' | 'acknowledged' | 'cleared'
    readonly acknowledged: { readonly by: string; readonly reason: string } | null
  }[]
}

/** What the rules say of the player, with the smallest thing that would put it right, and what was said to it. */
export function PlayerFlags({ flags }: PlayerFlagsProps) {
  return (
    <section>
      <SectionTitle>Flags</SectionTitle>
      {flags.length === 0 ? (
        <p className="text-soft">None.</p>
      ) : (
        <ul>
          {flags.map(({ id, told, status, acknowledged }) => (
            <FlagLine
              key={id}
              flag={told}
              answer={
                status === 'acknowledged' && acknowledged ? (
                  <p className="text-sm">
                    Answered by {acknowledged.by}: {acknowledged.reason}
                  </p>
                ) : null
              }
            />
          ))}
        </ul>
      )}
    </section>
  )
}
