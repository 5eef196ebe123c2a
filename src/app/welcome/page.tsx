import type { Metadata } from 'next'
import { LeaveForm } from '#app/leave-form'
import { deadLink } from '#server/spend-link'
import { chooseNewPassword, signInOnTheWay, takeAsSignedIn, takeWithNewSignIn } from '#server/welcome-actions'
import { loadWelcome } from '#server/welcome-views'
import { WholePage } from '#ui/page/whole-page'
import { WelcomeBody } from '#ui/welcome/welcome-body'

const title = 'Welcome'

export const metadata: Metadata = { title, robots: { index: false, follow: false } }

type WelcomePageProps = { readonly searchParams: Promise<{ readonly with?: string | readonly string[] }> }

export default async function WelcomePage({ searchParams }: WelcomePageProps) {
  const page = await loadWelcome()
  const hasSignIn = page?.hasSignIn || (await searchParams).with === 'sign-in'
  return (
    <WholePage title={title}>
      {page ? (
        <WelcomeBody
          {...page}
          hasSignIn={hasSignIn}
          takeAsSignedIn={takeAsSignedIn}
          takeWithNewSignIn={takeWithNewSignIn}
          signInOnTheWay={signInOnTheWay}
          chooseNewPassword={chooseNewPassword}
          signOut={<LeaveForm />}
        />
      ) : (
        <p>{deadLink}</p>
      )}
    </WholePage>
  )
}
