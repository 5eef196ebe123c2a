import type { Metadata } from 'next'
import {
  askToConfirmAddress,
  changeOwnAddress,
  changeOwnPassword,
  endOtherSessions,
  endOwnSession,
} from '#server/account-actions'
import { viewAccount } from '#server/account-views'
import { keepOwnPasskey, offerOwnPasskey, removeOwnPasskey } from '#server/passkey-actions'
import { AccountBody } from '#ui/account/account-body'
import { WholePage } from '#ui/page/whole-page'

const title = 'Your sign-in'
export const metadata: Metadata = { title }

export default async function AccountPage() {
  return (
    <WholePage title={title}>
      <AccountBody
        account={await viewAccount()}
        changePassword={changeOwnPassword}
        changeAddress={changeOwnAddress}
        passkeyForms={{ offer: offerOwnPasskey, keep: keepOwnPasskey, remove: removeOwnPasskey }}
        confirmAddress={askToConfirmAddress}
        endOne={endOwnSession}
        endOthers={endOtherSessions}
      />
    </WholePage>
  )
}
