import type { Day } from '#common/time'
import type { Squad } from '#squad/squad'
import { formatDay } from '#ui/format-day'
import { PageLink } from '#ui/page/page-link'
import { paths } from '#ui/paths'
import { words } from '#ui/words'

type DesignLeadProps = {
  readonly squad: Squad
  readonly sheet: { readonly isPutAway: boolean }
  readonly themeName: string | null
  readonly copiedFrom: { readonly id: string; readonly name: string } | null
  readonly usedOn: readonly Day[]
}

/** What it is for, where it comes from, and how often this squad played it. */
export function DesignLead({ squad, sheet, themeName, copiedFrom, usedOn }: DesignLeadProps) {
  const [latest] = usedOn
  return (
    <>
      {sheet.isPutAway ? <strong className="font-semibold">Put away. </strong> : null}
      {themeName ? `Theme: ${themeName}. ` : 'No theme. '}
      {latest
        ? `${squad.name} has used it in ${words.practices(usedOn.length)}, last on ${formatDay(latest)}. `
        : `${squad.name} has not used it this season. `}
      {copiedFrom ? (
        <>
          A copy of{' '}
          <PageLink href={paths.design(squad.id, { designId: copiedFrom.id })}>{copiedFrom.name}</PageLink>.
        </>
      ) : null}
    </>
  )
}
