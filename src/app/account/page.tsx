import type { Metadata } from 'next'
import {
  askToConfirmAddress,
  changeOwnAddress,
  changeOwnPassword,
  endOtherSessions,
  endOwnSession,
} from '#server/account-actions'
import { viewAccount } from '#server/account-views'
import { makeOwnCalendar, takeBackOwnCalendar } from '#server/calendar-actions'
import { viewOwnCalendar } from '#server/calendar-views'
import { keepOwnPasskey, offerOwnPasskey, removeOwnPasskey } from '#server/passkey-actions'
import { AccountBody } from '#ui/account/account-body'
import { CalendarPart } from '#ui/account/calendar-part'
import { WholePage } from '#ui/page/whole-page'

const title = 'Your sign-in'
export const metadata: Metadata = { title }

export default async function AccountPage() {
  const account = await viewAccount()
  const calendar = await viewOwnCalendar()
  return (
    <WholePage title={title}>
      <AccountBody
        account={account}
        changePassword={changeOwnPassword}
        changeAddress={changeOwnAddress}
        passkeyForms={{ offer: offerOwnPasskey, keep: keepOwnPasskey, remove: removeOwnPasskey }}
        confirmAddress={askToConfirmAddress}
        endOne={endOwnSession}
        endOthers={endOtherSessions}
      />
      {calendar ? (
        <CalendarPart calendar={calendar} make={makeOwnCalendar} takeBack={takeBackOwnCalendar} />
      ) : null}
    </WholePage>
  )
}
