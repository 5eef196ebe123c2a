import type { Metadata } from 'next'
import {
  askToConfirmAddress,
  changeOwnPassword,
  endOtherSessions,
  endOwnSession,
} from '#server/account-actions'
import { viewAccount } from '#server/account-views'
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
        confirmAddress={askToConfirmAddress}
        endOne={endOwnSession}
        endOthers={endOtherSessions}
      />
    </WholePage>
  )
}
