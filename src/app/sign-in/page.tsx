import type { Metadata } from 'next'
import { redirect } from 'next/navigation'
import { askForNewPassword, askForSignInLink, signInWithPassword } from '#server/sign-in-actions'
import { findSignedIn } from '#server/viewer'
import { WholePage } from '#ui/page/whole-page'
import { SignInBody } from '#ui/sign-in/sign-in-body'

const title = 'Sign in'
export const metadata: Metadata = { title }

export default async function SignInPage() {
  if (await findSignedIn()) redirect('/')
  return (
    <WholePage title={title}>
      <SignInBody
        send={signInWithPassword}
        askForLink={askForSignInLink}
        askForNewPassword={askForNewPassword}
      />
    </WholePage>
  )
}
