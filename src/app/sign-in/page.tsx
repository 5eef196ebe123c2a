import type { Metadata } from 'next'
import { redirect } from 'next/navigation'
import { askForAnyPasskey, signInWithPasskey } from '#server/passkey-actions'
import { askForNewPassword, askForSignInLink, signInWithPassword } from '#server/sign-in-actions'
import { findSignedIn } from '#server/viewer'
import { PasskeyForm } from '#ui/account/passkey-form'
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
        passkey={
          <PasskeyForm
            kind="use"
            ask={askForAnyPasskey}
            send={signInWithPasskey}
            button="Sign in with a passkey"
            refusedTitle="Not signed in"
          />
        }
      />
    </WholePage>
  )
}
