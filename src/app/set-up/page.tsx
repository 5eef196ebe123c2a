import type { Metadata } from 'next'
import { notFound } from 'next/navigation'
import { listTimeZones } from '#server/club-views'
import { isSetUpOpen } from '#server/set-up'
import { setUp } from '#server/set-up-actions'
import { WholePage } from '#ui/page/whole-page'
import { SetUpForm } from '#ui/set-up/set-up-form'

const title = 'Set up your club'
export const metadata: Metadata = { title }
/** A build knows no database: whether the page is there is asked each time. */
export const dynamic = 'force-dynamic'

export default async function SetUpPage() {
  if (!(await isSetUpOpen())) notFound()
  const here = new Intl.DateTimeFormat().resolvedOptions().timeZone
  return (
    <WholePage title={title}>
      <p>
        This makes the club and you its administrator, who lets everybody else in. Seasons, squads and people
        follow on the next pages.
      </p>
      <SetUpForm timeZones={listTimeZones(here)} timeZone={here} send={setUp} />
    </WholePage>
  )
}
