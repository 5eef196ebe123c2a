import type { ToldFlag } from '#fairness/book/told-flag'
import type { CureToday } from '#fairness/flags/group-by-cure'
import { cureWords } from '#ui/today/cure-words'

export type TodayCure = {
  readonly cure: CureToday
  /** The flags it answers, whose they are first. */
  readonly flags: readonly { readonly playerId: string; readonly told: ToldFlag }[]
}

type CuresProps = { readonly cures: readonly TodayCure[]; readonly nameOf: (playerId: string) => string }

/** Who needs what: at most three things, each with the flags behind it. */
export function Cures({ cures, nameOf }: CuresProps) {
  return (
    <ol className="space-y-4">
      {cures.map(({ cure, flags }) => (
        <li key={cureWords(cure, nameOf)} className="border-l-4 border-accent py-1 pl-4">
          <p className="max-w-prose font-semibold">{cureWords(cure, nameOf)}</p>
          <ul className="mt-1 text-sm text-soft">
            {flags.map(({ playerId, told }) => (
              <li key={`${playerId} ${told.rule} ${told.sentence}`} className="max-w-prose py-0.5">
                {nameOf(playerId)}: {told.sentence}
              </li>
            ))}
          </ul>
        </li>
      ))}
    </ol>
  )
}
